package telltally.decoder.score;

import telltally.simulator.chance.Chance;
import telltally.simulator.channel.Strength;
import telltally.simulator.channel.StrengthDraw;
import telltally.simulator.format.Transmission;
import telltally.simulator.signal.PulseTrain;

/** A train in which nobody sent anything that a candidate could read: the right answer is nothing. */
public sealed interface Decoy {
    /** As files write it. */
    String kind();

    Shown drawnFrom(Chance chance);

    record Shown(PulseTrain lamp, PulseTrain pin) {}

    /** Light or darkness without end. */
    record Steady(boolean lit, Strength lengthNanos) implements Decoy {
        @Override
        public String kind() {
            return "steady";
        }

        @Override
        public Shown drawnFrom(Chance chance) {
            PulseTrain train = PulseTrain.of(lit, nanos(chance, "length", lengthNanos));
            return new Shown(train, train);
        }
    }

    /**
     * Levels that change at random: stretches of exponential length, none shorter than a millisecond. Lamp and pin are
     * the same.
     */
    record RandomEdges(Strength meanNanos, Strength lengthNanos) implements Decoy {
        private static final long SHORTEST_NANOS = 1_000_000L;

        @Override
        public String kind() {
            return "random-edges";
        }

        @Override
        public Shown drawnFrom(Chance chance) {
            long mean = nanos(chance, "mean", meanNanos);
            long length = nanos(chance, "length", lengthNanos);
            Chance edges = chance.stream("edges");
            PulseTrain.Builder train = PulseTrain.builder();
            boolean lit = edges.happens(0.5);
            while (train.nowNanos() < length) {
                long stretch = Math.max(SHORTEST_NANOS, StrictMath.round(mean * edges.nextExponential()));
                train.stay(lit, Math.min(stretch, length - train.nowNanos()));
                lit = !lit;
            }
            PulseTrain built = train.build();
            return new Shown(built, built);
        }
    }

    /** Messages of a format that is not among the candidates. */
    record Foreign(MessageRecipe recipe) implements Decoy {
        @Override
        public String kind() {
            return "foreign";
        }

        @Override
        public Shown drawnFrom(Chance chance) {
            Transmission sent = recipe.drawnFrom(chance).sent();
            return new Shown(sent.lamp(), sent.wire());
        }
    }

    private static long nanos(Chance chance, String name, Strength strength) {
        return Math.max(1, StrictMath.round(new StrengthDraw(chance).of(name, strength)));
    }
}
