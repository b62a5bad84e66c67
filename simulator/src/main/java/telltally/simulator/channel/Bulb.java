package telltally.simulator.channel;

/**
 * An incandescent bulb by what is stamped on it and how hot its filament then gets.
 *
 * @param ratedVolts 0.1 to 300
 * @param ratedWatts 0.01 to 1000
 * @param hotKelvin filament temperature at the rated voltage, 1500 to 3300
 */
public record Bulb(double ratedVolts, double ratedWatts, double hotKelvin) {
    public Bulb {
        Bounds.check("rated volts", ratedVolts, 0.1, 300);
        Bounds.check("rated watts", ratedWatts, 0.01, 1000);
        Bounds.check("hot filament in kelvin", hotKelvin, 1500, 3300);
    }

    /** A small bulb of an instrument panel, 12 V 1.2 W; its 2500 K are assumed. */
    public static Bulb panel() {
        return new Bulb(12, 1.2, 2500);
    }

    /** A warning lamp of an instrument panel, 12 V 3 W; its 2550 K are assumed. */
    public static Bulb warning() {
        return new Bulb(12, 3, 2550);
    }

    /** The bulb of a test light, 12 V 5 W; its 2650 K are assumed. */
    public static Bulb testLight() {
        return new Bulb(12, 5, 2650);
    }
}
