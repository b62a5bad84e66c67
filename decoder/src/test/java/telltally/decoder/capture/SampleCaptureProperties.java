package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.stream.LongStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.Bulb;
import telltally.simulator.channel.FilamentLamp;
import telltally.simulator.channel.Hysteresis;
import telltally.simulator.channel.Led;
import telltally.simulator.channel.SteadySupply;
import telltally.simulator.channel.Wire;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

class SampleCaptureProperties {
    private static final FilamentLamp BULB = new FilamentLamp(Bulb.panel(), 12, 0, new Hysteresis(0.499, 0.5));

    @Provide
    Arbitrary<PulseTrain> trains() {
        return Trains.lampLike();
    }

    @Property(tries = 200)
    void a_diode_sampled_a_hundred_times_a_second_in_noise_and_drift_gives_back_every_edge(
            @ForAll("trains") PulseTrain train,
            @ForAll @DoubleRange(min = 0, max = 0.15) double noise,
            @ForAll @DoubleRange(min = -0.05, max = 0.05) double driftPerSecond,
            @ForAll long seed) {
        SampledSignal light = diode(train, noise, driftPerSecond, seed);
        Pulses pulses = (Pulses) SampleCapture.of(light, Polarity.HIGH_IS_LIT);
        // One sample for where the edge lies between two, half a filter (at most 5 samples) for the noise.
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.04);
    }

    /** A hundred samples a second of a diode of brightness 1. */
    static SampledSignal diode(PulseTrain train, double noise, double driftPerSecond, long seed) {
        Chance chance = Chance.of(seed);
        return Trains.changed(
                Led.at(12).light(train, 100),
                (second, value) -> 40 + value + driftPerSecond * second + noise * chance.nextNormal());
    }

    @Property(tries = 100)
    void a_filament_before_a_camera_gives_back_every_instant_at_half_light(
            @ForAll("trains") PulseTrain train, @ForAll long seed) {
        Chance chance = Chance.of(seed);
        SampledSignal light = Trains.changed(
                BULB.light(train, 30),
                (second, value) -> 90 + 60 * value + 20 * Math.sin(second / 8) + 3 * chance.nextNormal());
        Pulses pulses = (Pulses) SampleCapture.of(light, Polarity.HIGH_IS_LIT);
        // Two frames: one between samples, one for what noise of a twentieth does on a slope of three frames.
        assertThat(Trains.worstSeconds(BULB.visible(train), pulses.train())).isLessThan(0.067);
    }

    @Property(tries = 100)
    void a_wire_pulled_low_gives_back_every_edge(@ForAll("trains") PulseTrain train, @ForAll long seed) {
        Wire wire = new Wire(new SteadySupply(12), 0.3, 2_000_000, 0.2);
        Pulses pulses = (Pulses) SampleCapture.of(wire.volts(train, 500, Chance.of(seed)), Polarity.LOW_IS_LIT);
        // A sample of 2 ms, and 1.4 ms from the start of the rise to its half.
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.004);
    }

    @Property(tries = 200)
    void any_samples_are_answered(
            @ForAll @Size(max = 60) double[] values,
            @ForAll @IntRange(min = 1) int stepNanos,
            @ForAll Polarity polarity) {
        long[] atNanos = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            atNanos[i] = (long) i * stepNanos;
        }
        assertThatCode(() -> SampleCapture.of(SampledSignal.of(atNanos, values), polarity))
                .doesNotThrowAnyException();
    }

    @Property(tries = 200)
    void noise_alone_is_no_blinking(@ForAll long seed, @ForAll @IntRange(min = 100, max = 3000) int size) {
        Chance chance = Chance.of(seed);
        long[] atNanos = new long[size];
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            atNanos[i] = i * 33_333_333L;
            values[i] = 5 + chance.nextNormal();
        }
        assertThat(SampleCapture.of(SampledSignal.of(atNanos, values), Polarity.AUTO))
                .isInstanceOf(NoPulses.class);
    }

    @Property(tries = 100)
    void what_wanders_without_two_levels_is_no_blinking(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.9, max = 0.99) double memory) {
        assertThat(wandering(seed, memory)).isInstanceOf(NoPulses.class);
    }

    /** A walk may keep to two levels by chance. */
    @Example
    void of_what_wanders_and_never_comes_back_next_to_nothing_is_blinking() {
        assertThat(LongStream.range(0, 400).filter(seed -> wandering(seed, 1) instanceof Pulses))
                .hasSizeLessThan(2);
    }

    /** A minute of a camera: each value is a share of the one before, and noise. */
    private static CaptureResult wandering(long seed, double memory) {
        Chance chance = Chance.of(seed);
        long[] atNanos = new long[1800];
        double[] values = new double[atNanos.length];
        for (int i = 1; i < values.length; i++) {
            atNanos[i] = i * 33_333_333L;
            values[i] = memory * values[i - 1] + chance.nextNormal();
        }
        return SampleCapture.of(SampledSignal.of(atNanos, values), Polarity.AUTO);
    }
}
