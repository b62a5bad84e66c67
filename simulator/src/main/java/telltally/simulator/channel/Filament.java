package telltally.simulator.channel;

/**
 * The wire in a bulb, taken as straight and as losing all its heat by radiation to surroundings at 300 K. Its rated
 * voltage, power and temperature then settle its length and diameter, from R = 4 rho l / (pi d^2) and the power that
 * leaves the surface pi d l.
 */
final class Filament {
    private static final double STEFAN_BOLTZMANN = 5.670374e-8;
    private static final double COLD_WATTS_PER_M2 = wattsPerSquareMetre(Tungsten.LEAST_KELVIN);

    private final double ohmsPerOhmMetre;
    private final double surfaceSquareMetres;
    private final double diameterMetres;
    private final double massKg;

    Filament(Bulb bulb) {
        double ohms = bulb.ratedVolts() * bulb.ratedVolts() / bulb.ratedWatts();
        double resistivity = Tungsten.resistivityOhmMetres(bulb.hotKelvin());
        ohmsPerOhmMetre = ohms / resistivity;
        surfaceSquareMetres = bulb.ratedWatts() / (wattsPerSquareMetre(bulb.hotKelvin()) - COLD_WATTS_PER_M2);
        diameterMetres = StrictMath.cbrt(4 * surfaceSquareMetres / (Math.PI * Math.PI * ohmsPerOhmMetre));
        massKg = surfaceSquareMetres * diameterMetres / 4 * Tungsten.DENSITY_KG_PER_M3;
    }

    double ohms(double kelvin) {
        return ohmsPerOhmMetre * Tungsten.resistivityOhmMetres(kelvin);
    }

    /** Net of what the surroundings send back. */
    double radiatedWatts(double kelvin) {
        return surfaceSquareMetres * (wattsPerSquareMetre(kelvin) - COLD_WATTS_PER_M2);
    }

    double heatJoulesPerKelvin(double kelvin) {
        return massKg * Tungsten.heatJoulesPerKgKelvin(kelvin);
    }

    double diameterMetres() {
        return diameterMetres;
    }

    double lengthMetres() {
        return surfaceSquareMetres / (Math.PI * diameterMetres);
    }

    static double wattsPerSquareMetre(double kelvin) {
        double square = kelvin * kelvin;
        return Tungsten.emissivity(kelvin) * STEFAN_BOLTZMANN * square * square;
    }
}
