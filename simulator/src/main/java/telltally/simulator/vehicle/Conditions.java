package telltally.simulator.vehicle;

/**
 * What operator and surroundings bring to the vehicle at one moment.
 *
 * @param throttleShare 0 closed, 1 to the floor
 */
public record Conditions(
        double coolantCelsius,
        double airCelsius,
        Battery battery,
        Gear gear,
        boolean clutchDown,
        boolean airConditioningOn,
        double throttleShare) {
    private static final double COLDEST_CELSIUS = -60;
    private static final double HOTTEST_CELSIUS = 200;

    public Conditions {
        requireTemperature("coolant", coolantCelsius);
        requireTemperature("air", airCelsius);
        if (!(throttleShare >= 0 && throttleShare <= 1)) {
            throw new IllegalArgumentException("the throttle opens from 0 to 1, not to " + throttleShare);
        }
    }

    /** As the running test wants it: warm, neutral, air conditioning off, pedals up, battery good. */
    public static Conditions warm() {
        return new Conditions(90, 25, Battery.charged(), Gear.NEUTRAL, false, false, 0);
    }

    public Conditions withCoolantCelsius(double changed) {
        return new Conditions(changed, airCelsius, battery, gear, clutchDown, airConditioningOn, throttleShare);
    }

    public Conditions withAirCelsius(double changed) {
        return new Conditions(coolantCelsius, changed, battery, gear, clutchDown, airConditioningOn, throttleShare);
    }

    public Conditions withBattery(Battery changed) {
        return new Conditions(coolantCelsius, airCelsius, changed, gear, clutchDown, airConditioningOn, throttleShare);
    }

    public Conditions withGear(Gear changed) {
        return new Conditions(
                coolantCelsius, airCelsius, battery, changed, clutchDown, airConditioningOn, throttleShare);
    }

    public Conditions withClutchDown(boolean changed) {
        return new Conditions(coolantCelsius, airCelsius, battery, gear, changed, airConditioningOn, throttleShare);
    }

    public Conditions withAirConditioningOn(boolean changed) {
        return new Conditions(coolantCelsius, airCelsius, battery, gear, clutchDown, changed, throttleShare);
    }

    public Conditions withThrottleShare(double changed) {
        return new Conditions(coolantCelsius, airCelsius, battery, gear, clutchDown, airConditioningOn, changed);
    }

    private static void requireTemperature(String what, double celsius) {
        if (!(celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS)) {
            throw new IllegalArgumentException(what + " at " + celsius + " degrees Celsius");
        }
    }
}
