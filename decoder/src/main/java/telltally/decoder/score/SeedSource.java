package telltally.decoder.score;

import java.util.List;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.scenario.Scenario;

/** What the cases of a seed set are recordings of. */
public sealed interface SeedSource {
    /** The formats that its cases are sent in, each once; none where nothing is sent. */
    List<FlashFormat> formats();

    /** Lessons: each seed plays every one of them. */
    record Scenarios(List<Scenario> scenarios) implements SeedSource {
        public Scenarios {
            scenarios = List.copyOf(scenarios);
        }

        @Override
        public List<FlashFormat> formats() {
            return scenarios.stream().map(Scenario::format).distinct().toList();
        }
    }

    /** Random messages: each seed draws one. */
    record Messages(MessageRecipe recipe) implements SeedSource {
        @Override
        public List<FlashFormat> formats() {
            return recipe.formats();
        }
    }
}
