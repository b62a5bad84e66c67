package telltally.trainer.playback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import telltally.simulator.channel.Bulb;
import telltally.simulator.channel.MeterNeedle;
import telltally.simulator.signal.PulseTrain;

class InstrumentTest {
    private static final long MILLISECOND = 1_000_000L;
    private static final long FRAME_NANOS = 16_666_667L;

    static final List<Instrument> ALL = List.of(
            new Instrument.Diode(),
            new Instrument.Filament(Bulb.panel(), 12.6),
            new Instrument.Filament(Bulb.testLight(), 9),
            new Instrument.Needle(MeterNeedle.standard()));

    private final PulseTrain pulses = PulseTrain.builder()
            .dark(1000 * MILLISECOND)
            .lit(500 * MILLISECOND)
            .dark(2000 * MILLISECOND)
            .build();

    @ParameterizedTest
    @FieldSource("ALL")
    void nothing_shows_before_its_time(Instrument instrument) {
        DisplaySignal signal = instrument.showing(pulses);

        assertThat(signal.mean(0, 1000 * MILLISECOND)).isZero();
        assertThat(signal.mean(1000 * MILLISECOND, 1500 * MILLISECOND)).isPositive();
    }

    /** Two halves of a stretch weigh as much as the whole, wherever it is cut. */
    @ParameterizedTest
    @FieldSource("ALL")
    void no_light_is_lost_between_frames(Instrument instrument) {
        DisplaySignal signal = instrument.showing(pulses);
        for (long cut = 1_000_100_003L; cut < 2_000_000_000L; cut += 7_300_001L) {
            double halves = signal.mean(1_000_000_000L, cut) * (cut - 1_000_000_000L)
                    + signal.mean(cut, 2_000_000_000L) * (2_000_000_000L - cut);
            // Only the last bits of sums over a thousand samples may differ.
            assertThat(halves / 1e9).isCloseTo(signal.mean(1_000_000_000L, 2_000_000_000L), within(1e-9));
        }
    }

    @Test
    void a_diode_is_at_once_at_full_light_and_a_bulb_glows_on_after_it_was_switched_off() {
        DisplaySignal diode = new Instrument.Diode().showing(pulses);
        DisplaySignal bulb = new Instrument.Filament(Bulb.panel(), 12.6).showing(pulses);

        assertThat(diode.mean(1000 * MILLISECOND, 1016 * MILLISECOND)).isEqualTo(1);
        assertThat(diode.mean(1500 * MILLISECOND, 1516 * MILLISECOND)).isZero();
        assertThat(bulb.mean(1000 * MILLISECOND, 1016 * MILLISECOND)).isLessThan(0.5);
        assertThat(bulb.mean(1480 * MILLISECOND, 1500 * MILLISECOND)).isGreaterThan(0.95);
        assertThat(bulb.mean(1500 * MILLISECOND, 1516 * MILLISECOND)).isBetween(0.3, 1.0);
        assertThat(bulb.mean(2500 * MILLISECOND, 2600 * MILLISECOND)).isLessThan(0.01);
    }

    @Test
    void a_bulb_is_dimmer_on_a_weak_battery() {
        DisplaySignal weak = new Instrument.Filament(Bulb.panel(), 9).showing(pulses);

        assertThat(weak.mean(1480 * MILLISECOND, 1500 * MILLISECOND)).isBetween(0.05, 0.6);
    }

    /** IEC 60268-17: 99 % of a step after 300 ms, and an overshoot of 1 to 1.5 %. */
    @Test
    void the_needle_moves_as_the_standard_for_programme_meters_says() {
        DisplaySignal needle = new Instrument.Needle(MeterNeedle.standard())
                .showing(PulseTrain.builder()
                        .dark(100 * MILLISECOND)
                        .lit(3000 * MILLISECOND)
                        .build());
        double most = 0;
        for (long at = 400 * MILLISECOND; at < 2000 * MILLISECOND; at += 2 * MILLISECOND) {
            most = Math.max(most, needle.mean(at, at + 2 * MILLISECOND));
        }

        // A sample holds for two milliseconds, in which the needle moves by less than half a hundredth there.
        assertThat(needle.mean(400 * MILLISECOND, 402 * MILLISECOND)).isCloseTo(0.99, within(0.005));
        assertThat(most).isBetween(1.01, 1.015);
    }

    @ParameterizedTest
    @FieldSource("ALL")
    void a_frame_allocates_nothing(Instrument instrument) {
        PulseTrain.Builder blinking = PulseTrain.builder().dark(1000 * MILLISECOND);
        for (int i = 0; i < 20; i++) {
            blinking.lit(500 * MILLISECOND).dark(500 * MILLISECOND);
        }
        PulseTrain train = blinking.build();
        DisplaySignal signal = instrument.showing(train);
        frames(new Playback(train, 0, train.endNanos(), signal));
        Playback playback = new Playback(train, 0, train.endNanos(), signal);
        long before = allocatedBytes();
        int frames = frames(playback);
        long perFrame = (allocatedBytes() - before) / frames;

        // Each flash that is over is kept, once in sixty frames: a record of some forty bytes.
        assertThat(perFrame).isLessThan(8);
        assertThat(playback.shown()).hasSize(20);
    }

    private static int frames(Playback playback) {
        int frames = 0;
        for (long at = 0; !playback.ended(); at += FRAME_NANOS) {
            playback.advanceTo(at);
            frames++;
        }
        return frames;
    }

    private static long allocatedBytes() {
        return ((com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean())
                .getThreadAllocatedBytes(Thread.currentThread().getId());
    }
}
