package telltally.decoder.score;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.scenario.ScenarioReader;

/** The lessons that a seed set names, relative to itself. Problems inside a lesson are kept apart: their places are its. */
final class ScenarioFiles {
    private final Path seedFile;
    private final Problems own;
    private final List<Problem> inLessons = new ArrayList<>();

    ScenarioFiles(Path seedFile, Problems own) {
        this.seedFile = seedFile;
        this.own = own;
    }

    List<Scenario> read(List<PlacedText> names) {
        ScenarioReader reader = ScenarioReader.shipped();
        List<Scenario> scenarios = new ArrayList<>();
        for (PlacedText named : names) {
            Optional<Scenario> scenario = read(named, reader);
            if (scenario.isPresent()
                    && scenarios.stream()
                            .anyMatch(each -> each.id().equals(scenario.get().id()))) {
                tell(
                        named,
                        "the id " + Problem.quoted(scenario.get().id())
                                + " stands twice; lessons with the same id would share their chance");
            }
            scenario.ifPresent(scenarios::add);
        }
        return scenarios;
    }

    /** What is wrong with the lessons themselves. */
    List<Problem> inLessons() {
        return inLessons;
    }

    private Optional<Scenario> read(PlacedText named, ScenarioReader reader) {
        Path path;
        byte[] bytes;
        try {
            path = seedFile.resolveSibling(named.text()).normalize();
            bytes = TextFile.bytes(path, TextFile.DOCUMENT_BYTES);
        } catch (InvalidPathException e) {
            tell(named, Problem.quoted(named.text()) + " cannot be the name of a file");
            return Optional.empty();
        } catch (ProblemException e) {
            e.problems().forEach(each -> tell(named, Problem.quoted(named.text()) + ": " + each.text()));
            return Optional.empty();
        }
        try {
            TextFile text = TextFile.decode(path.toString(), bytes);
            return Optional.of(reader.read(text, Optional.ofNullable(path.getParent())));
        } catch (ProblemException e) {
            inLessons.addAll(e.problems());
            return Optional.empty();
        }
    }

    private void tell(PlacedText at, String text) {
        own.add(at.place(), at.pointer(), text);
    }
}
