package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.KnownNoise;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.LateStart;
import telltally.simulator.channel.MissedFlashes;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

class ToldNoiseTest {
    private static final FormatCatalog FORMATS = FormatCatalog.shipped();

    @Test
    void what_the_decoder_has_a_word_for_is_told_and_two_clocks_are_one() {
        KnownNoise noise = ToldNoise.of(ImpairmentChain.of(
                new ClockScale(1.2),
                new Jitter(0.05),
                new MissedFlashes(0.01),
                new ClockScale(0.5),
                new LateStart(2_000_000_000L)));
        assertThat(noise.clockScale().orElseThrow()).isCloseTo(0.6, within(1e-12));
        assertThat(noise.jitter()).hasValue(0.05);
        assertThat(noise.missed()).hasValue(0.01);
        assertThat(noise.ghost()).isEmpty();
        assertThat(ToldNoise.of(ImpairmentChain.of())).isEqualTo(KnownNoise.NOTHING);
    }

    /** Eight flashes of 0.25 s are a count of a fast sender or even blinking of a usual one: only the clock tells. */
    @Test
    void who_knows_the_clock_can_tell_a_count_from_even_blinking() {
        List<FlashFormat> all = FORMATS.all();
        PulseTrain.Builder pulses = PulseTrain.builder().dark(3_000_000_000L);
        for (int i = 0; i < 8; i++) {
            pulses.lit(250_000_000L).dark(i < 7 ? 250_000_000L : 2_000_000_000L);
        }
        PulseTrain eight = pulses.build();
        LatticeDecoder decoder = new LatticeDecoder();
        assertThat(decoder.decode(eight, all, ToldNoise.of(ImpairmentChain.of(new ClockScale(0.25 / 0.3))))
                        .codes())
                .containsEntry(Segment.CODES, List.of("8"));
        assertThat(decoder.decode(eight, all, ToldNoise.of(ImpairmentChain.of(new ClockScale(1))))
                        .codes())
                .containsEntry(Segment.CODES, List.of());
    }
}
