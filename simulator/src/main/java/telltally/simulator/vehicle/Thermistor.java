package telltally.simulator.vehicle;

/**
 * A resistor that falls as it warms, by 1/T = A + B ln R + C (ln R)^3 with T in kelvin and R in ohms (J. S. Steinhart
 * and S. R. Hart, "Calibration curves for thermistors", Deep-Sea Research 15, 1968).
 */
public record Thermistor(double a, double b, double c) {
    /** A set printed in many public firmware files for the common curve of 10 kilohms at 25 degrees. */
    public static final Thermistor TEN_KILOHM = new Thermistor(1.129241e-3, 2.341077e-4, 8.775468e-8);

    private static final double ZERO_CELSIUS_KELVIN = 273.15;

    public Thermistor {
        if (!(b > 0 && c > 0)) {
            throw new IllegalArgumentException("a curve that cannot be inverted: b " + b + ", c " + c);
        }
    }

    /** The curve through three points, each further up in temperature than the one before. */
    public static Thermistor through(double[] celsius, double[] ohms) {
        double[] log = new double[3];
        double[] inverse = new double[3];
        for (int i = 0; i < 3; i++) {
            log[i] = StrictMath.log(ohms[i]);
            inverse[i] = 1 / (celsius[i] + ZERO_CELSIUS_KELVIN);
        }
        // Divided differences of the inverse temperature over the logarithm; those of the cube are
        // x^2 + xy + y^2, and theirs the sum of all three.
        double near = (inverse[1] - inverse[0]) / (log[1] - log[0]);
        double far = (inverse[2] - inverse[0]) / (log[2] - log[0]);
        double c = (far - near) / (log[2] - log[1]) / (log[0] + log[1] + log[2]);
        double b = near - c * (log[0] * log[0] + log[0] * log[1] + log[1] * log[1]);
        return new Thermistor(inverse[0] - log[0] * (b + c * log[0] * log[0]), b, c);
    }

    /** @param ohms more than zero */
    public double celsius(double ohms) {
        double log = StrictMath.log(ohms);
        return 1 / (a + b * log + c * log * log * log) - ZERO_CELSIUS_KELVIN;
    }

    /** The real root of the cubic in ln R (Cardano). */
    public double ohms(double celsius) {
        double x = (a - 1 / (celsius + ZERO_CELSIUS_KELVIN)) / c;
        double third = b / (3 * c);
        double y = Math.sqrt(third * third * third + x * x / 4);
        return StrictMath.exp(StrictMath.cbrt(y - x / 2) - StrictMath.cbrt(y + x / 2));
    }
}
