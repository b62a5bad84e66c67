package telltally.trainer.view;

import java.util.ArrayList;
import java.util.List;

/**
 * Counts general flashes as the Web Content Accessibility Guidelines define them (w3c/wcag
 * {@code guidelines/terms/20/general-flash-and-red-flash-thresholds.html}): a pair of opposing changes in relative
 * luminance of 10 % or more of the maximum, where the darker image is below 0.80.
 */
final class GeneralFlashes {
    private static final double CHANGE = 0.1;
    private static final double DARKER_BELOW = 0.8;
    private static final long SECOND = 1_000_000_000L;

    private final List<Long> flashesNanos = new ArrayList<>();
    private double low = Double.NaN;
    private double high = Double.NaN;
    private boolean risen;

    /** The luminance of the next frame, 0 to 1. */
    void see(long atNanos, double luminance) {
        if (Double.isNaN(low)) {
            low = luminance;
            high = luminance;
        }
        if (risen) {
            high = Math.max(high, luminance);
            if (high - luminance >= CHANGE && luminance < DARKER_BELOW) {
                risen = false;
                low = luminance;
                flashesNanos.add(atNanos);
            }
        } else {
            low = Math.min(low, luminance);
            if (luminance - low >= CHANGE && low < DARKER_BELOW) {
                risen = true;
                high = luminance;
            }
        }
    }

    int all() {
        return flashesNanos.size();
    }

    /** The most flashes that end within any second. */
    int mostInAnySecond() {
        int most = 0;
        int first = 0;
        for (int last = 0; last < flashesNanos.size(); last++) {
            while (flashesNanos.get(last) - flashesNanos.get(first) >= SECOND) {
                first++;
            }
            most = Math.max(most, last - first + 1);
        }
        return most;
    }
}
