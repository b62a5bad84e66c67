package telltally.decoder.capture;

import java.util.Arrays;

/**
 * A first look at which samples are high, whatever the ambient light does meanwhile: the middle between the lowest and
 * the highest value nearby is crossed by a clear share of the usual swing. Through long steady stretches, where nearby
 * is one level only, the last answer stands.
 */
final class LocalSwing {
    private static final double CLEAR_SHARE = 0.15;

    private final double[] lowest;
    private final double[] highest;
    private final double usual;

    LocalSwing(Series series, Windows windows) {
        double[] values = series.despiked().values;
        lowest = windows.lowest(values);
        highest = windows.highest(values);
        usual = usual();
    }

    /** The median of the swings that are at least half of the greatest: where something blinks, not where all rests. */
    private double usual() {
        double greatest = 0;
        for (int i = 0; i < lowest.length; i++) {
            greatest = Math.max(greatest, highest[i] - lowest[i]);
        }
        double[] wide = new double[lowest.length];
        int count = 0;
        for (int i = 0; i < lowest.length; i++) {
            if (highest[i] - lowest[i] >= greatest / 2) {
                wide[count++] = highest[i] - lowest[i];
            }
        }
        return new Quantiles(wide, count).median();
    }

    /** Whether both levels are to be seen near this sample. */
    boolean blinksNear(int index) {
        return highest[index] - lowest[index] > usual / 2;
    }

    /** @return for each value whether it is high; before the first clear one as that is */
    boolean[] high(double[] values) {
        boolean[] high = new boolean[values.length];
        double margin = CLEAR_SHARE * usual;
        boolean known = false;
        for (int i = 0; i < values.length; i++) {
            double off = values[i] - (lowest[i] + highest[i]) / 2;
            boolean clear = blinksNear(i) && Math.abs(off) > margin;
            high[i] = clear ? off > 0 : i > 0 && high[i - 1];
            if (clear && !known) {
                known = true;
                // Nothing had changed by then, or a clear one would have come before.
                Arrays.fill(high, 0, i, high[i]);
            }
        }
        return high;
    }
}
