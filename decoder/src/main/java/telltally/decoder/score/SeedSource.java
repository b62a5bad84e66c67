package telltally.decoder.score;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.recording.Truth;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.signal.PulseTrain;

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

    /** Trains that hold no codes: each seed draws one kind. */
    record Decoys(List<Decoy> kinds) implements SeedSource {
        public Decoys {
            kinds = List.copyOf(kinds);
        }

        /** None: what a decoy is sent in is not among the candidates. */
        @Override
        public List<FlashFormat> formats() {
            return List.of();
        }
    }

    /** Frozen pulse trains with their truth, whatever the generator does today: the first has the seed 1. */
    record Recordings(List<Frozen> frozen) implements SeedSource {
        public Recordings {
            frozen = List.copyOf(frozen);
        }

        @Override
        public List<FlashFormat> formats() {
            return frozen.stream()
                    .flatMap(each -> each.format().stream())
                    .distinct()
                    .toList();
        }
    }

    /**
     * A pulse train as it was once.
     *
     * @param name its file, as the set names it
     * @param format empty where the right answer is nothing
     * @param why what it was
     */
    record Frozen(String name, PulseTrain train, Optional<FlashFormat> format, Truth truth, String why) {}
}
