package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * A moving-coil voltmeter across the lamp's place: lit level pulls the needle to 1, dark lets it go to 0. Mass, spring
 * and damper without end stops. At rest on the level of the start before a train begins. Draws nothing.
 *
 * @param naturalHertz undamped natural frequency, 0.05 to 100
 * @param damping ratio to critical damping, 0.01 to 10
 * @param marks deflections by which swings are counted, between 0 and 1
 */
public record MeterNeedle(double naturalHertz, double damping, Hysteresis marks) implements Impairment {
    public MeterNeedle {
        Bounds.check("natural frequency", naturalHertz, 0.05, 100);
        Bounds.check("damping ratio", damping, 0.01, 10);
        Bounds.check("lower mark", marks.low(), 0.001, 1);
        Bounds.check("upper mark", marks.high(), 0.001, 0.999);
    }

    /**
     * The ballistics of a programme-level (VU) meter, the only ones a standard states: 99 % of a step in 300 ms, first
     * peak 1 to 1.5 % beyond (IEC 60268-17; solved for 1.25 %). Counted up at 0.7, down at 0.3; no source.
     */
    public static MeterNeedle standard() {
        return new MeterNeedle(2.151, 0.8127, new Hysteresis(0.3, 0.7));
    }

    @Override
    public String kind() {
        return "meter-needle";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        return counted(train);
    }

    /** When the needle is up, as counted by the marks. */
    public PulseTrain counted(PulseTrain drive) {
        return new NeedleSwing(this, drive).counted();
    }

    /**
     * The deflection from the start, evenly spaced; 1 is where a steady lit level holds the needle.
     *
     * @param samplesPerSecond from 0.001 to ten million
     */
    public SampledSignal deflection(PulseTrain drive, double samplesPerSecond) {
        return new NeedleSwing(this, drive).sampled(samplesPerSecond);
    }
}
