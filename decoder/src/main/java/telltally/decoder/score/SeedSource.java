package telltally.decoder.score;

import java.util.List;
import telltally.simulator.scenario.Scenario;

/** What the cases of a seed set are recordings of. */
public sealed interface SeedSource {
    /** Lessons: each seed plays every one of them. */
    record Scenarios(List<Scenario> scenarios) implements SeedSource {
        public Scenarios {
            scenarios = List.copyOf(scenarios);
        }
    }

    /** Random messages: each seed draws one. */
    record Messages(MessageRecipe recipe) implements SeedSource {}
}
