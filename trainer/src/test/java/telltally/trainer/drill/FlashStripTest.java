package telltally.trainer.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.text.Texts;

class FlashStripTest {
    private static final Texts ENGLISH = Texts.in(Locale.ENGLISH);
    private static final long QUARTER = 250_000_000L;

    @Test
    void two_flashes_a_pause_and_one_flash() {
        PulseTrain pulses = PulseTrain.builder()
                .dark(2 * QUARTER)
                .lit(2 * QUARTER)
                .dark(2 * QUARTER)
                .lit(2 * QUARTER)
                .dark(8 * QUARTER)
                .lit(2 * QUARTER)
                .dark(QUARTER)
                .build();
        assertThat(FlashStrip.lines(pulses, ENGLISH)).containsExactly("..##..##........##.");
    }

    @Test
    void a_long_dark_stretch_is_told_in_seconds() {
        PulseTrain pulses = PulseTrain.builder()
                .lit(QUARTER)
                .dark(360 * QUARTER)
                .lit(QUARTER)
                .build();
        assertThat(String.join("", FlashStrip.lines(pulses, ENGLISH))).isEqualTo("# (dark for 90 s) #");
    }

    @Property
    void no_flash_is_ever_lost(
            @ForAll @Size(min = 1, max = 60) List<@LongRange(min = 1, max = 4_000_000_000L) Long> lengths) {
        PulseTrain.Builder builder = PulseTrain.builder();
        boolean lit = true;
        for (long length : lengths) {
            builder.stay(lit, length);
            lit = !lit;
        }
        String strip = String.join("", FlashStrip.lines(builder.build(), ENGLISH));
        long runs =
                strip.replaceAll("#+", "#").chars().filter(sign -> sign == '#').count();
        assertThat(runs).isEqualTo((lengths.size() + 1) / 2);
    }
}
