package telltally.decoder.capture;

/**
 * Takes out what moves both levels slowly, or them apart and together again as a camera that adapts to the light does,
 * once it is known which samples are high.
 */
final class Drift {
    private Drift() {}

    /**
     * @return the values with the low level moved to 0 and the high one to the usual swing throughout; the values as
     *     they are if never both are nearby
     */
    static double[] removed(Series series, boolean[] high, Windows windows) {
        LocalFits fits = new LocalFits(series, high, windows);
        double usual = fits.usualSwing();
        double[] values = series.values;
        if (Double.isNaN(usual)) {
            return values;
        }
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            LocalFits.Fit fit = fits.near(i);
            boolean both = fit.hasBoth(usual);
            // Where only one level is nearby, the usual swing stands: the last one may be that of a few samples.
            double swing = both
                    ? Math.max(usual / LocalFits.MOST_GAIN, Math.min(usual * LocalFits.MOST_GAIN, fit.swing()))
                    : usual;
            out[i] = (values[i] - fit.low(swing, both)) * (usual / swing);
        }
        return out;
    }
}
