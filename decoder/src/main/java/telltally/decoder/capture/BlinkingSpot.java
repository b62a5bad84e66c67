package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * The cells of a clip that blink together. Every cell is taken with its eight neighbours, so that a spot that the shaking
 * hand moves from cell to cell stays whole. The one that blinks most clearly leads; cells farther off whose brightness
 * goes with it are added.
 */
final class BlinkingSpot {
    /** Steps of brightness: pictures are coded anew now and then, which shifts a dark cell by about one. */
    private static final double LEAST_SWING = 3;

    /** Beyond this the picture is clean, and more says nothing about what blinks. */
    private static final double AMPLE_CONTRAST = 20;

    private static final int AMPLE_EDGES = 20;
    /** What is dark for short and bright for long is rather someone walking by than a lamp. */
    private static final double INVERTED = 0.3;

    /** Frames on the way from level to level, at most six for each edge: a filament takes a tenth of a second. */
    private static final double LEAST_SUDDENNESS = 0.15;

    private static final double GOES_ALONG = 0.7;

    private record Candidate(int cell, double score) {}

    private final List<ClipFrames.Frame> frames;
    private final long[] atNanos;
    private final Windows windows;
    private final int columns;
    private final int cells;

    private BlinkingSpot(ClipFrames clip) {
        frames = clip.frames;
        columns = clip.columns;
        cells = frames.get(0).cells.length;
        atNanos = frames.stream().mapToLong(frame -> frame.atNanos).toArray();
        windows = new Windows(atNanos);
    }

    /** Its brightness over time, the sum over its cells; empty where nothing blinks. Needs at least eight frames. */
    static Optional<Found> in(ClipFrames clip) {
        return new BlinkingSpot(clip).found();
    }

    /** @param leader the cell that leads, counted row by row */
    record Found(SampledSignal brightness, int leader, int cells) {}

    private Optional<Found> found() {
        List<Candidate> candidates = new ArrayList<>();
        for (int cell = 0; cell < cells; cell++) {
            double score = score(cell);
            if (score > 0) {
                candidates.add(new Candidate(cell, score));
            }
        }
        return candidates.stream()
                .max(Comparator.comparingDouble(Candidate::score))
                .map(best -> together(best.cell()));
    }

    /**
     * Blinks clearly, often, and suddenly. Who walks by darkens a cell once or twice, and takes time to; so does the
     * edge of a bright window in a shaking hand.
     */
    private double score(int cell) {
        LevelFit fit = LevelFit.best(new Series(atNanos, around(cell), 1), windows);
        if (fit.swing() < LEAST_SWING || !fit.twoLevels() || fit.edgeCount() < 2) {
            return 0;
        }
        double suddenness = fit.suddenness();
        if (suddenness < LEAST_SUDDENNESS || !holdsWholeFlash(fit.train())) {
            return 0;
        }
        double often = Math.sqrt(Math.min(fit.edgeCount(), AMPLE_EDGES));
        double likely = Polarity.looksInverted(fit.train()) ? INVERTED : 1;
        return Math.min(fit.contrast(), AMPLE_CONTRAST) * often * suddenness * likely;
    }

    /** One that begins and ends in the clip. What darkens a lit cell once is no lamp. */
    private static boolean holdsWholeFlash(PulseTrain train) {
        return train.intervals().stream()
                .anyMatch(each -> each.lit() && each.startNanos() > 0 && each.endNanos() < train.endNanos());
    }

    private double[] around(int cell) {
        double[] values = new double[atNanos.length];
        for (int neighbour : neighbours(cell)) {
            for (int i = 0; i < values.length; i++) {
                values[i] += frames.get(i).cells[neighbour];
            }
        }
        return values;
    }

    /** The cell itself among them. */
    private List<Integer> neighbours(int cell) {
        List<Integer> all = new ArrayList<>();
        for (int row = cell / columns - 1; row <= cell / columns + 1; row++) {
            for (int column = cell % columns - 1; column <= cell % columns + 1; column++) {
                if (row >= 0 && row < cells / columns && column >= 0 && column < columns) {
                    all.add(row * columns + column);
                }
            }
        }
        return all;
    }

    private Found together(int leader) {
        double[] sum = around(leader);
        double[] lead = withoutSlowChanges(sum);
        Set<Integer> near = new HashSet<>(neighbours(leader));
        int count = near.size();
        for (int cell = 0; cell < cells; cell++) {
            double[] values = alone(cell);
            if (!near.contains(cell) && correlation(lead, withoutSlowChanges(values)) >= GOES_ALONG) {
                count++;
                Arrays.setAll(sum, i -> sum[i] + values[i]);
            }
        }
        return new Found(SampledSignal.of(atNanos, sum), leader, count);
    }

    private double[] alone(int cell) {
        double[] values = new double[atNanos.length];
        Arrays.setAll(values, i -> frames.get(i).cells[cell]);
        return values;
    }

    /** The mean of the frames within three seconds taken out. */
    private double[] withoutSlowChanges(double[] values) {
        double[] sums = new double[values.length + 1];
        for (int i = 0; i < values.length; i++) {
            sums[i + 1] = sums[i] + values[i];
        }
        double[] quick = new double[values.length];
        for (int i = 0; i < quick.length; i++) {
            int from = windows.from(i);
            int to = windows.to(i);
            quick[i] = values[i] - (sums[to] - sums[from]) / (to - from);
        }
        return quick;
    }

    /** Pearson's; both have a mean of about 0 already. */
    private static double correlation(double[] a, double[] b) {
        double both = 0;
        double ofA = 0;
        double ofB = 0;
        for (int i = 0; i < a.length; i++) {
            both += a[i] * b[i];
            ofA += a[i] * a[i];
            ofB += b[i] * b[i];
        }
        return ofA == 0 || ofB == 0 ? 0 : both / Math.sqrt(ofA * ofB);
    }
}
