package telltally.simulator.channel;

/**
 * What the eye gets from a filament, relative to one at a rated temperature: exp(-c2 / (lambda T)) at the 0.56
 * micrometres to which the eye is keenest, with c2 = 14388 micrometre kelvin (Wien's law). Against the integral of
 * Planck's law over the eye's sensitivity this is within 3 % between 2300 and 2900 K and reads a fifth low at 1600 K,
 * where a lamp gives less than a hundredth of its light.
 */
record FilamentLight(double ratedKelvin) {
    private static final double KELVIN = 14_388 / 0.56;

    double level(double kelvin) {
        return StrictMath.exp(KELVIN / ratedKelvin - KELVIN / kelvin);
    }
}
