package telltally.decoder.capture;

/**
 * The power of a stretch of sound by frequency: discrete Fourier transform by halving (J. W. Cooley and J. W. Tukey, "An
 * algorithm for the machine calculation of complex Fourier series", Mathematics of Computation 19, 1965), after Hann's
 * window.
 */
final class Spectrum {
    private final int size;
    private final double[] cos;
    private final double[] sin;

    /** @param size of a stretch, a power of two */
    Spectrum(int size) {
        if (Integer.bitCount(size) != 1) {
            throw new IllegalArgumentException(size + " is no power of two");
        }
        this.size = size;
        cos = new double[size];
        sin = new double[size];
        for (int i = 0; i < size; i++) {
            cos[i] = StrictMath.cos(2 * Math.PI * i / size);
            sin[i] = StrictMath.sin(2 * Math.PI * i / size);
        }
    }

    /** @return for bins 0 to half of the size, squared magnitudes of the transform of the windowed samples */
    double[] power(double[] samples) {
        double[] re = new double[size];
        double[] im = new double[size];
        int bits = Integer.numberOfTrailingZeros(size);
        for (int i = 0; i < size; i++) {
            int place = bits == 0 ? 0 : Integer.reverse(i) >>> (32 - bits);
            re[place] = samples[i] * (0.5 - 0.5 * cos[i]);
        }
        for (int half = 1; half < size; half *= 2) {
            join(re, im, half);
        }
        double[] power = new double[size / 2 + 1];
        for (int bin = 0; bin < power.length; bin++) {
            power[bin] = re[bin] * re[bin] + im[bin] * im[bin];
        }
        return power;
    }

    /** Makes transforms of twice the length from pairs of this length. */
    private void join(double[] re, double[] im, int half) {
        int stride = size / (2 * half);
        for (int start = 0; start < size; start += 2 * half) {
            for (int k = 0; k < half; k++) {
                int even = start + k;
                int odd = even + half;
                double c = cos[k * stride];
                double s = sin[k * stride];
                double turnedRe = re[odd] * c + im[odd] * s;
                double turnedIm = im[odd] * c - re[odd] * s;
                re[odd] = re[even] - turnedRe;
                im[odd] = im[even] - turnedIm;
                re[even] += turnedRe;
                im[even] += turnedIm;
            }
        }
    }
}
