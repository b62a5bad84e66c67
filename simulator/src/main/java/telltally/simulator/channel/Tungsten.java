package telltally.simulator.channel;

/**
 * Tungsten between 300 and 3600 K. Outside this range the nearest value holds.
 *
 * <p>Resistivity: Forsythe and Worthing, 1925. Total emissivity: Forsythe and Watson. Both as tables, straight lines
 * between their points. Heat capacity: the Shomate fit of the NIST-JANAF tables, 1998.
 */
final class Tungsten {
    static final double LEAST_KELVIN = 300;
    static final double MOST_KELVIN = 3600;
    static final double DENSITY_KG_PER_M3 = 19_250;
    private static final double MOLAR_MASS_KG = 0.18384;

    /** Every 100 K; the tables have no value at 3500 K, where the middle of its neighbours stands. */
    private static final double[] RESISTIVITY_MICRO_OHM_CM = {
        5.65, 8.06, 10.56, 13.23, 16.09, 19.00, 21.94, 24.93, 27.94, 30.98, 34.08, 37.19, 40.36, 43.55, 46.78, 50.05,
        53.35, 56.67, 60.06, 63.48, 66.91, 70.39, 73.91, 77.49, 81.04, 84.70, 88.33, 92.04, 95.76, 99.54, 103.3, 107.2,
        111.1, 115.0
    };

    private static final double[] EMISSIVITY = {
        0.024, 0.034, 0.042, 0.052, 0.062, 0.074, 0.089, 0.105, 0.121, 0.138, 0.156, 0.174, 0.192, 0.207, 0.222, 0.236,
        0.248, 0.259, 0.269, 0.278, 0.286, 0.294, 0.301, 0.309, 0.315, 0.321, 0.329, 0.334, 0.339, 0.344, 0.349, 0.354,
        0.359, 0.364
    };

    private Tungsten() {}

    static double resistivityOhmMetres(double kelvin) {
        return between(RESISTIVITY_MICRO_OHM_CM, kelvin) * 1e-8;
    }

    static double emissivity(double kelvin) {
        return between(EMISSIVITY, kelvin);
    }

    static double heatJoulesPerKgKelvin(double kelvin) {
        double t = Math.min(MOST_KELVIN, Math.max(LEAST_KELVIN, kelvin)) / 1000;
        double molar = t < 1.9
                ? 23.95930 + t * (2.639680 + t * (1.257750 - t * 0.254642)) - 0.048407 / (t * t)
                : -22.57640 + t * (90.27980 + t * (-44.27150 + t * 7.176630)) - 24.09740 / (t * t);
        return molar / MOLAR_MASS_KG;
    }

    private static double between(double[] table, double kelvin) {
        double place = Math.min(table.length - 1.0, Math.max(0, (kelvin - LEAST_KELVIN) / 100));
        int index = Math.min(table.length - 2, (int) place);
        return table[index] + (place - index) * (table[index + 1] - table[index]);
    }
}
