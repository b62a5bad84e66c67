package telltally.decoder.capture;

import java.util.Arrays;
import telltally.simulator.signal.PulseTrain;

/**
 * Two levels found in a series: Otsu's threshold parts them once drift is out, medians say where they lie, and edges
 * are taken half-way between, with hysteresis against noise.
 */
final class LevelFit {
    /** From here on more averaging would buy nothing: a false edge needs noise of more than six deviations. */
    static final double AMPLE_CONTRAST = 8;
    /** Pure noise, parted in two, reaches 2.7; a sine 3.5. */
    private static final double LEAST_CONTRAST = 4;

    /** Samples too few for a deviation of their own. */
    private static final int FEW = 8;

    private static final double MOST_CONTRAST = 1000;
    /** Less than half of the shortest flash or gap of any flash format. */
    private static final long LONGEST_FILTER_NANOS = 120_000_000L;
    /** Samples far off both levels, as a share of those on the rarer one, from which two levels are not the truth. */
    private static final double MOST_STRAY = 0.3;

    private final Series series;
    private final double[] level;
    private final int width;
    private final double low;
    private final double high;
    private final double noise;
    private final int rarer;
    private final double strayShare;

    private LevelFit(Series series, int width, double[] level, double threshold) {
        this.series = series;
        this.level = level;
        this.width = width;
        double[] lows = Arrays.stream(level).filter(value -> value < threshold).toArray();
        double[] highs =
                Arrays.stream(level).filter(value -> value >= threshold).toArray();
        if (lows.length == 0 || highs.length == 0) {
            low = high = threshold;
            noise = strayShare = 0;
            rarer = 0;
            return;
        }
        Quantiles lowQuantiles = new Quantiles(lows);
        Quantiles highQuantiles = new Quantiles(highs);
        low = lowQuantiles.median();
        high = highQuantiles.median();
        noise = noise(lowQuantiles, lows.length, highQuantiles, highs.length);
        rarer = Math.min(lows.length, highs.length);
        strayShare = (double) stray() / rarer;
    }

    /** The fit with as little averaging as gives ample contrast, or else the one with most contrast. */
    static LevelFit best(Series series, Windows windows) {
        LevelFit best = of(series, 1, windows);
        if (best.crossings().hasSpikes()) {
            best = of(series.despiked(), 1, windows);
        }
        long spacing = series.spacingNanos();
        for (int w = 3; best.contrast() < AMPLE_CONTRAST && w <= LONGEST_FILTER_NANOS / spacing; w = 2 * w + 1) {
            LevelFit next = of(series.despiked().averaged(w), w, windows);
            best = next.contrast() > best.contrast() ? next : best;
        }
        return best;
    }

    private static LevelFit of(Series series, int width, Windows windows) {
        LocalSwing swing = new LocalSwing(series, windows);
        boolean[] high = SureLevels.of(series, swing.high(series.values), windows);
        double[] level = Drift.removed(series, high, windows);
        // Where nothing blinks there is one level only, and too much of it would pull the threshold into its noise.
        double[] blinking = new double[level.length];
        int count = 0;
        for (int i = 0; i < level.length; i++) {
            if (swing.blinksNear(i)) {
                blinking[count++] = level[i];
            }
        }
        return new LevelFit(series, width, level, Otsu.threshold(blinking, count));
    }

    /** The rarer level may scatter more, as a filament's light does: it counts as much as the other, unless too rare. */
    private static double noise(Quantiles low, int lows, Quantiles high, int highs) {
        if (Math.min(lows, highs) < FEW) {
            return (lows < highs ? high : low).deviation();
        }
        return Math.sqrt((square(low.deviation()) + square(high.deviation())) / 2);
    }

    private int stray() {
        double margin = Math.max(0.35 * (high - low), 4 * noise);
        int stray = 0;
        for (double value : level) {
            if (value < low - margin || value > high + margin) {
                stray++;
            }
        }
        return stray;
    }

    boolean twoLevels() {
        return contrast() >= neededContrast() && strayShare <= MOST_STRAY;
    }

    /** More for a level that was hardly ever seen, and for few samples at all: some of noise lie far out by chance. */
    double neededContrast() {
        return LEAST_CONTRAST + (rarer == 0 ? 0 : 12.0 * width / rarer) + 60.0 * width / level.length;
    }

    double contrast() {
        double swing = high - low;
        return swing <= 0 ? 0 : swing / Math.max(noise, swing / MOST_CONTRAST);
    }

    /** In units of the recording, as are the next. */
    double swing() {
        return (high - low) * series.unit;
    }

    /** From 1, if every sample is near one of the levels, down towards 0 for slow changes: edges per sample of an edge. */
    double suddenness() {
        int between = 0;
        for (double value : level) {
            double place = (value - low) / (high - low);
            if (place > 0.25 && place < 0.75) {
                between++;
            }
        }
        double edges = edgeCount();
        return edges / (edges + between);
    }

    int edgeCount() {
        return crossings().count();
    }

    /** Lit where the value is high, from the first sample to one after the last. */
    PulseTrain train() {
        Crossings crossings = crossings();
        long end = series.atNanos[series.size() - 1] + series.spacingNanos();
        return PulseTrain.of(crossings.aboveAtStart(), end, crossings.instants(series.atNanos));
    }

    Quality quality(boolean highIsLit) {
        double[] removed = new double[level.length];
        for (int i = 0; i < removed.length; i++) {
            removed[i] = series.values[i] - level[i];
        }
        double ambient = new Quantiles(removed).median();
        double lowLevel = (ambient + low) * series.unit;
        double highLevel = (ambient + high) * series.unit;
        double spacing = series.spacingNanos();
        double error = StrictMath.hypot(spacing / Math.sqrt(12), width * spacing / contrast());
        return new Quality(
                highIsLit ? lowLevel : highLevel,
                highIsLit ? highLevel : lowLevel,
                noise * series.unit,
                contrast(),
                width,
                (long) error);
    }

    private Crossings crossings() {
        double swing = high - low;
        double margin = Math.max(0.1 * swing, Math.min(0.3 * swing, 3 * noise));
        return new Crossings(level, (low + high) / 2, margin);
    }

    private static double square(double value) {
        return value * value;
    }
}
