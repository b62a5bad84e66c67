package telltally.trainer.drill;

import telltally.simulator.channel.MeterNeedle;

/**
 * What stands between the pulses of a drill and the learner, for the display to show.
 *
 * @param supplyVolts what the lamp gets while lit; a charged battery has {@value #CHARGED_VOLTS}
 * @param needle how the meter's needle swings, where the drill is watched on a meter
 */
public record Observer(double supplyVolts, MeterNeedle needle) {
    /** Charged and at rest. Common practice, no source. */
    public static final double CHARGED_VOLTS = 12.6;

    /** A bright lamp, a needle of standard ballistics. */
    public static Observer usual() {
        return new Observer(CHARGED_VOLTS, MeterNeedle.standard());
    }

    public Observer withSupply(double volts) {
        return new Observer(volts, needle);
    }

    public Observer withNeedle(MeterNeedle swings) {
        return new Observer(supplyVolts, swings);
    }
}
