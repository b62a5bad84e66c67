package telltally.decoder.plain;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** What spoils a clean train, in the simplest form that can be written down. */
enum Impairment {
    CLEAN,
    SCALED {
        @Override
        PulseTrain spoil(PulseTrain train, Chance chance) {
            return slowed(train, chance.between(0.85, 1.18));
        }
    },
    JITTERED {
        @Override
        PulseTrain spoil(PulseTrain train, Chance chance) {
            PulseTrain.Builder spoiled = PulseTrain.builder();
            for (Interval each : train.intervals()) {
                spoiled.stay(each.lit(), times(each.lengthNanos(), 1 + 0.06 * chance.nextNormal()));
            }
            return spoiled.build();
        }
    },
    BOUNCED {
        @Override
        PulseTrain spoil(PulseTrain train, Chance chance) {
            PulseTrain.Builder spoiled = PulseTrain.builder();
            boolean first = true;
            for (Interval each : train.intervals()) {
                long leftNanos = each.lengthNanos();
                if (!first) {
                    // Where pulses follow each other faster than contacts come to rest, the bounce gets what room there
                    // is.
                    long roomNanos = Math.min(15_000_000, leftNanos / 2);
                    int times = chance.below(4);
                    for (int i = 0; i < times; i++) {
                        long madeNanos = times(roomNanos, chance.nextUnit() / times / 2);
                        long openNanos = times(roomNanos, chance.nextUnit() / times / 2);
                        spoiled.stay(each.lit(), madeNanos).stay(!each.lit(), openNanos);
                        leftNanos -= madeNanos + openNanos;
                    }
                }
                spoiled.stay(each.lit(), leftNanos);
                first = false;
            }
            return spoiled.build();
        }
    },
    ALL {
        @Override
        PulseTrain spoil(PulseTrain train, Chance chance) {
            return BOUNCED.spoil(JITTERED.spoil(SCALED.spoil(train, chance), chance), chance);
        }
    };

    PulseTrain spoil(PulseTrain train, Chance chance) {
        return train;
    }

    /** The same train from a sender whose clock is slower by a factor. */
    static PulseTrain slowed(PulseTrain train, double factor) {
        PulseTrain.Builder slowed = PulseTrain.builder();
        train.intervals().forEach(each -> slowed.stay(each.lit(), times(each.lengthNanos(), factor)));
        return slowed.build();
    }

    private static long times(long nanos, double factor) {
        return Math.max(1, Math.round(nanos * factor));
    }
}
