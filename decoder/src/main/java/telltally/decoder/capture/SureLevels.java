package telltally.decoder.capture;

/**
 * Takes back what was only noise: through a long pause the lowest and the highest value nearby may lie so far apart that
 * a first look parts them in two levels. All is there as it was when the levels were sure.
 */
final class SureLevels {
    private SureLevels() {}

    /** @param high a first look, {@link LocalSwing}'s */
    static boolean[] of(Series series, boolean[] high, Windows windows) {
        LocalFits fits = new LocalFits(series, high, windows);
        double usual = fits.usualSwing();
        int first = 0;
        while (first < high.length && !fits.near(first).hasBoth(usual)) {
            first++;
        }
        if (first == high.length) {
            return high;
        }
        boolean[] sure = high.clone();
        boolean last = high[first];
        for (int i = 0; i < sure.length; i++) {
            LocalFits.Fit fit = fits.near(i);
            if (fit.isNoise(usual)) {
                sure[i] = last;
            } else if (fit.hasBoth(usual)) {
                last = high[i];
            }
        }
        return sure;
    }
}
