package telltally.decoder.capture;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/** Trains as lamps blink them, and what spoils samples. */
final class Trains {
    static final long MILLI = 1_000_000L;

    private Trains() {}

    /** Flashes of 0.25 to 1.2 s, gaps of 0.25 to 6 s, dark at both ends: the lengths that the formats have. */
    static Arbitrary<PulseTrain> lampLike() {
        Arbitrary<List<Integer>> flashes =
                Arbitraries.integers().between(250, 1200).list().ofMinSize(3).ofMaxSize(30);
        Arbitrary<Long> seeds = Arbitraries.longs();
        return Combinators.combine(flashes, seeds).as(Trains::of);
    }

    private static PulseTrain of(List<Integer> flashesMillis, long seed) {
        Chance chance = Chance.of(seed);
        PulseTrain.Builder train = PulseTrain.builder().dark(gapNanos(chance));
        for (int millis : flashesMillis) {
            train.lit(millis * MILLI).dark(gapNanos(chance));
        }
        return train.build();
    }

    private static long gapNanos(Chance chance) {
        double millis = chance.happens(0.7) ? chance.between(250, 700) : chance.between(1000, 6000);
        return (long) (millis * MILLI);
    }

    /** Code 34, some times, as the first format sends it. */
    static PulseTrain code34(int times) {
        PulseTrain.Builder train = PulseTrain.builder().dark(3000 * MILLI);
        for (int repeat = 0; repeat < times; repeat++) {
            for (int flash = 0; flash < 3; flash++) {
                train.lit(500 * MILLI).dark(500 * MILLI);
            }
            train.dark(1500 * MILLI);
            for (int flash = 0; flash < 4; flash++) {
                train.lit(500 * MILLI).dark(500 * MILLI);
            }
            train.dark(3500 * MILLI);
        }
        return train.build();
    }

    /** Times and values changed sample by sample. */
    static SampledSignal changed(SampledSignal signal, Change change) {
        long[] atNanos = new long[signal.size()];
        double[] values = new double[signal.size()];
        for (int i = 0; i < values.length; i++) {
            atNanos[i] = signal.atNanos(i);
            values[i] = change.of(atNanos[i] / 1e9, signal.value(i));
        }
        return SampledSignal.of(atNanos, values);
    }

    interface Change {
        double of(double second, double value);
    }

    /** The greatest distance of an edge from its twin; without end if their number or the first level differs. */
    static double worstSeconds(PulseTrain truth, PulseTrain found) {
        if (truth.edgeCount() != found.edgeCount() || truth.litAtStart() != found.litAtStart()) {
            return Double.POSITIVE_INFINITY;
        }
        long worst = 0;
        for (int i = 0; i < truth.edgeCount(); i++) {
            worst = Math.max(worst, Math.abs(truth.edgeNanos(i) - found.edgeNanos(i)));
        }
        return worst / 1e9;
    }
}
