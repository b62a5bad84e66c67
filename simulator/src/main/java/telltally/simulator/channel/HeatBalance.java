package telltally.simulator.channel;

/** A filament at a supply, through a resistance: what goes in as current, what goes out as radiation. */
record HeatBalance(Filament filament, double supplyVolts, double seriesOhms) {
    double amperes(double kelvin) {
        return supplyVolts / (filament.ohms(kelvin) + seriesOhms);
    }

    double filamentWatts(double kelvin) {
        double amperes = amperes(kelvin);
        return amperes * amperes * filament.ohms(kelvin);
    }

    double kelvinPerSecond(double kelvin) {
        return (filamentWatts(kelvin) - filament.radiatedWatts(kelvin)) / filament.heatJoulesPerKelvin(kelvin);
    }

    /** Where the filament settles, to a microkelvin; radiation grows faster with heat than power does. */
    double steadyKelvin() {
        double cool = Tungsten.LEAST_KELVIN;
        double hot = Tungsten.MOST_KELVIN;
        while (hot - cool > 1e-6) {
            double middle = (cool + hot) / 2;
            if (filamentWatts(middle) > filament.radiatedWatts(middle)) {
                cool = middle;
            } else {
                hot = middle;
            }
        }
        return cool;
    }
}
