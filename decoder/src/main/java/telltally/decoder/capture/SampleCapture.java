package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.signal.Seconds;

/** From samples in any unit at any rising instants (light level, volts, current) to pulses. */
public final class SampleCapture {
    private static final int FEWEST_SAMPLES = 8;
    /** A flash and its gap need six samples to be told from chance. */
    private static final double MOST_EDGES_PER_SAMPLE = 1.0 / 3;

    private static final double MUCH_CLIPPED = 0.2;

    private SampleCapture() {}

    /** Every signal is answered; none raises an exception. */
    public static CaptureResult of(SampledSignal signal, Polarity polarity) {
        int size = signal.size();
        if (size < FEWEST_SAMPLES) {
            return new NoPulses(
                    Reason.TOO_FEW_SAMPLES,
                    "there are " + size + " samples; at least " + FEWEST_SAMPLES + " are needed");
        }
        if (signal.atNanos(0) < -Seconds.MAX_NANOS || signal.atNanos(size - 1) > Seconds.MAX_NANOS) {
            return new NoPulses(Reason.TIMES_OUT_OF_RANGE, "the times are more than 31 years from 0");
        }
        Series series = Series.of(signal);
        if (series.steady()) {
            return new NoPulses(Reason.NO_BLINKING, "all " + size + " samples have the same value");
        }
        LevelFit fit = LevelFit.best(series, new Windows(series.atNanos));
        if (!fit.twoLevels() || fit.edgeCount() == 0) {
            return noLevels(series, fit);
        }
        if (fit.edgeCount() > MOST_EDGES_PER_SAMPLE * size) {
            return new NoPulses(
                    Reason.TOO_FAST, "the level changes at nearly every sample; sample at least three times as often");
        }
        return pulses(series, fit, polarity);
    }

    private static CaptureResult noLevels(Series series, LevelFit fit) {
        if (clippedShare(series) > MUCH_CLIPPED) {
            return new NoPulses(
                    Reason.CLIPPED,
                    "no two levels stand out, and much of the recording lies at the end of its range; record it less loud or bright");
        }
        return new NoPulses(
                Reason.NO_BLINKING,
                "no two levels stand out of the noise: they would be " + tenths(fit.contrast())
                        + " times the noise apart, and " + tenths(fit.neededContrast()) + " is the least");
    }

    /** Share of the samples that have exactly the greatest or the least value. */
    private static double clippedShare(Series series) {
        Quantiles quantiles = new Quantiles(series.values);
        double low = quantiles.at(0);
        double high = quantiles.at(1);
        int clipped = 0;
        for (double value : series.values) {
            if (value <= low || value >= high) {
                clipped++;
            }
        }
        // One of each there must be.
        return (clipped - 2.0) / series.size();
    }

    private static Pulses pulses(Series series, LevelFit fit, Polarity polarity) {
        PulseTrain high = fit.train();
        boolean highIsLit = polarity.highIsLit(high);
        List<String> remarks = new ArrayList<>();
        if (polarity == Polarity.AUTO) {
            remarks.add(
                    highIsLit
                            ? "the higher level is taken as lit"
                            : "the lower level is taken as lit, since the higher is held for far longer, as pauses are");
        }
        if (fit.contrast() < LevelFit.AMPLE_CONTRAST) {
            remarks.add("the levels are only " + tenths(fit.contrast()) + " times the noise apart; edges may be false");
        }
        holes(series, remarks);
        return new Pulses(highIsLit ? high : high.inverted(), fit.quality(highIsLit), remarks);
    }

    private static void holes(Series series, List<String> remarks) {
        long much = Math.max(250_000_000L, 5 * series.spacingNanos());
        int widest = 0;
        for (int i = 1; i < series.size(); i++) {
            if (gap(series, i) > much && gap(series, i) > gap(series, widest)) {
                widest = i;
            }
        }
        if (widest > 0) {
            remarks.add("no samples for " + Seconds.text(gap(series, widest)) + " s from "
                    + Seconds.text(series.atNanos[widest - 1]) + " s on; flashes there are lost");
        }
    }

    private static long gap(Series series, int index) {
        return index == 0 ? 0 : series.atNanos[index] - series.atNanos[index - 1];
    }

    static String tenths(double value) {
        long tenths = Math.round(value * 10);
        return tenths / 10 + "." + tenths % 10;
    }
}
