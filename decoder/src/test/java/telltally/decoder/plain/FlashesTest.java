package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;

class FlashesTest {
    private static Flashes of(String darkAndLitSeconds) {
        return new Flashes(Trains.of(darkAndLitSeconds), new Lengths(Trains.shipped("pair-even")));
    }

    private static List<WarningKind> kinds(Flashes flashes) {
        return flashes.warnings().stream().map(Warning::kind).toList();
    }

    @Test
    void each_flash_has_its_instants_its_length_and_the_gap_before_it() {
        Flashes flashes = of("1 0.5 2 0.6 1");

        assertThat(flashes.count()).isEqualTo(2);
        assertThat(flashes.startNanos(1)).isEqualTo(3_500_000_000L);
        assertThat(flashes.endNanos(1)).isEqualTo(4_100_000_000L);
        assertThat(flashes.gapNanos(1)).isEqualTo(2_000_000_000L);
        assertThat(flashes.length(1)).isEqualTo(StrictMath.log(600_000_000));
        assertThat(flashes.gap(1)).isEqualTo(StrictMath.log(2_000_000_000));
        assertThat(flashes.gap(0)).isZero();
        assertThat(flashes.endsLit()).isFalse();
        assertThat(flashes.warnings()).isEmpty();
    }

    @Test
    void a_flash_may_begin_or_end_with_the_recording() {
        assertThat(of("0 0.5 1 0.5 1").startNanos(0)).isZero();
        assertThat(of("1 0.5 1 0.5").endsLit()).isTrue();
        assertThat(of("1 0.5 1 0.5").count()).isEqualTo(2);
        assertThat(of("5").endsLit()).isFalse();
    }

    /** Two fifths of the shortest flash and of the shortest gap, half a second both. */
    @Test
    void light_from_a_fifth_of_a_second_on_is_a_flash_and_darkness_a_gap() {
        assertThat(of("1 0.2 1").count()).isEqualTo(1);
        assertThat(of("1 0.199999999 1").count()).isZero();
        assertThat(of("1 0.5 0.2 0.5 1").count()).isEqualTo(2);
        Flashes joined = of("1 0.5 0.199999999 0.5 1");
        assertThat(joined.count()).isEqualTo(1);
        assertThat(joined.endNanos(0)).isEqualTo(2_199_999_999L);
    }

    @Test
    void what_is_left_out_is_told_with_the_instant_of_the_first() {
        Flashes one = of("1 0.5 1 0.01 1");
        assertThat(one.warnings())
                .containsExactly(new Warning(
                        2_500_000_000L,
                        WarningKind.SHORT_PULSES,
                        "1 pulse shorter than 0.2 s left out: bounce, or a fast list for instruments"));
        Flashes two = of("1 0.01 1 0.01 1");
        assertThat(two.warnings().get(0).atNanos()).isEqualTo(1_000_000_000L);
        assertThat(two.warnings().get(0).text()).startsWith("2 pulses shorter");
    }

    /** Three tenths of what is too short. */
    @Test
    void nearly_a_flash_is_told_each_for_itself_up_to_twenty_of_them() {
        assertThat(kinds(of("1 0.06 1"))).containsExactly(WarningKind.SHORT_PULSES, WarningKind.EXTRA_FLASH);
        assertThat(of("1 0.06 1").warnings().get(1).atNanos()).isEqualTo(1_000_000_000L);
        assertThat(kinds(of("1 0.059999999 1"))).containsExactly(WarningKind.SHORT_PULSES);
        assertThat(kinds(of("1 0.1 ".repeat(30) + "1"))).hasSize(21);
    }

    @Test
    void there_may_be_any_number_of_flashes() {
        Flashes flashes = of("1 0.5 ".repeat(1000) + "1");

        assertThat(flashes.count()).isEqualTo(1000);
        assertThat(flashes.startNanos(999)).isEqualTo(1_499_500_000_000L);
        assertThat(flashes.endNanos(999)).isEqualTo(1_500_000_000_000L);
    }
}
