package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.TextFile;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.scenario.ScenarioReader;

/** Reads the lessons of a seed set. */
final class ScenarioFields {
    private ScenarioFields() {}

    static SeedSource.Scenarios read(Fields set, NamedFiles files) {
        int before = set.problems().count();
        List<PlacedText> names = set.texts("scenarios");
        if (names.isEmpty() && set.problems().count() == before) {
            set.problem("scenarios", "is empty; at least one lesson was expected");
        }
        ScenarioReader reader = ScenarioReader.shipped();
        List<Scenario> scenarios = new ArrayList<>();
        for (PlacedText named : names) {
            Optional<Scenario> scenario = files.read(
                    named,
                    TextFile.DOCUMENT_BYTES,
                    (source, path) -> reader.read(source, Optional.ofNullable(path.getParent())));
            if (scenario.isPresent()
                    && scenarios.stream()
                            .anyMatch(each -> each.id().equals(scenario.get().id()))) {
                files.tell(
                        named,
                        "the id " + Problem.quoted(scenario.get().id())
                                + " stands twice; lessons with the same id would share their chance");
            }
            scenario.ifPresent(scenarios::add);
        }
        return new SeedSource.Scenarios(scenarios);
    }
}
