package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.List;

/**
 * A voltage through an input that lets no steady voltage pass: what is left are sudden steps from which the signal
 * creeps back. The direction of each step tells the level after it.
 */
final class VoltageSteps {
    /** Blocks over which a step is measured: an input smooths it over a few milliseconds. */
    private static final int SPAN = 4;

    private static final double NOISE_MULTIPLE = 6;
    /** Steps are alike; what creeps back after one is slower and stays below this share of it. */
    private static final double LEAST_SHARE = 0.5;

    /** Blocks after which a step is, and whether each goes up. */
    final int[] blocks;

    final boolean[] up;
    final double noise;
    final double usual;
    /** How many steps went the same way as the one before; such were left out. */
    final int repeated;

    private final double[] slow;

    VoltageSteps(double[] slow) {
        this.slow = slow;
        double[] rise = new double[Math.max(1, slow.length - SPAN)];
        for (int i = 0; i < slow.length - SPAN; i++) {
            rise[i] = slow[i + SPAN] - slow[i];
        }
        noise = new Quantiles(rise).deviation();
        double most = 0;
        for (double value : rise) {
            most = Math.max(most, Math.abs(value));
        }
        usual = median(sizes(rise, peaks(rise, Math.max(NOISE_MULTIPLE * noise, LEAST_SHARE * most))));
        List<Integer> peaks = peaks(rise, Math.max(NOISE_MULTIPLE * noise, LEAST_SHARE * usual));
        List<Integer> kept = new ArrayList<>();
        for (int peak : peaks) {
            if (kept.isEmpty() || rise[peak] > 0 != rise[kept.get(kept.size() - 1)] > 0) {
                kept.add(peak);
            }
        }
        repeated = peaks.size() - kept.size();
        blocks = new int[kept.size()];
        up = new boolean[kept.size()];
        for (int i = 0; i < blocks.length; i++) {
            blocks[i] = kept.get(i) + SPAN / 2;
            up[i] = rise[kept.get(i)] > 0;
        }
    }

    boolean clear() {
        return blocks.length >= 2 && repeated * 5 <= blocks.length;
    }

    /** What is left of a step when the next one comes, in the median: 1 where steady voltages pass. */
    double heldShare() {
        double[] held = new double[Math.max(0, blocks.length - 1)];
        int count = 0;
        for (int i = 0; i < held.length; i++) {
            if (blocks[i + 1] - blocks[i] <= 4 * SPAN) {
                continue;
            }
            double before = slow[Math.max(0, blocks[i] - SPAN)];
            double after = slow[blocks[i] + SPAN];
            double last = slow[blocks[i + 1] - SPAN];
            if (after != before) {
                held[count++] = (last - before) / (after - before);
            }
        }
        return count == 0 ? 1 : new Quantiles(held, count).median();
    }

    private static double[] sizes(double[] rise, List<Integer> peaks) {
        return peaks.stream().mapToDouble(peak -> Math.abs(rise[peak])).toArray();
    }

    private static double median(double[] values) {
        return values.length == 0 ? 0 : new Quantiles(values).median();
    }

    /** Local peaks of either sign, at least a span apart. */
    private static List<Integer> peaks(double[] rise, double threshold) {
        List<Integer> peaks = new ArrayList<>();
        for (int i = 0; i < rise.length; i++) {
            double size = Math.abs(rise[i]);
            if (size < threshold || size == 0) {
                continue;
            }
            int before = peaks.isEmpty() ? -1 : peaks.get(peaks.size() - 1);
            boolean same = before >= 0 && i - before <= SPAN && rise[i] > 0 == rise[before] > 0;
            if (!same) {
                peaks.add(i);
            } else if (size > Math.abs(rise[before])) {
                peaks.set(peaks.size() - 1, i);
            }
        }
        return peaks;
    }
}
