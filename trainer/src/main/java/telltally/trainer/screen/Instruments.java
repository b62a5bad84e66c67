package telltally.trainer.screen;

import telltally.simulator.channel.Bulb;
import telltally.simulator.channel.MeterNeedle;
import telltally.simulator.scenario.Display;
import telltally.trainer.drill.Drill;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.playback.Instrument;

/**
 * Which instrument stands behind a way of showing.
 *
 * @param supplyVolts what a lamp gets while lit
 * @param needle how the needle of a meter swings
 */
record Instruments(double supplyVolts, MeterNeedle needle) {
    /** Charged and at rest. Common practice, no source. */
    private static final double CHARGED_VOLTS = 12.6;

    /** A bulb is not computed for less; it gives no light long before. */
    private static final double LEAST_LAMP_VOLTS = 1;

    /** A charged battery, a needle of standard ballistics. */
    static Instruments usual() {
        return new Instruments(CHARGED_VOLTS, MeterNeedle.standard());
    }

    /** On the battery that the lesson's vehicle had. */
    static Instruments of(Lesson lesson) {
        return new Instruments(lesson.recording().batteryVolts(), MeterNeedle.standard());
    }

    static Instruments of(Drill drill) {
        return new Instruments(drill.observer().supplyVolts(), drill.observer().needle());
    }

    Instrument of(Display display) {
        double volts = Math.max(LEAST_LAMP_VOLTS, supplyVolts);
        return switch (display) {
            case LAMP, LAMP_AND_SOUNDER -> new Instrument.Filament(Bulb.panel(), volts);
            case TEST_LIGHT -> new Instrument.Filament(Bulb.testLight(), volts);
            case METER -> new Instrument.Needle(needle);
            // By ear nothing is shown; the level is not looked at.
            case LED, SOUNDER -> new Instrument.Diode();
        };
    }
}
