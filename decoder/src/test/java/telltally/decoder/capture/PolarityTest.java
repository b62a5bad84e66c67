package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;

/** The codes with most light in the formats with most light; lengths are common practice, no source. */
class PolarityTest {
    /** Long flashes of 1.2 s for tens, short of 0.4 s for ones, gaps of 0.4, 1.0 and 3.0 s: code 99, three times. */
    private static PulseTrain longShort() {
        PulseTrain.Builder train = PulseTrain.builder().dark(1_000_000_000L);
        for (int times = 0; times < 3; times++) {
            group(train, 9, 1200, 400).dark(600_000_000L);
            group(train, 9, 400, 400).dark(2_600_000_000L);
        }
        return train.build();
    }

    /** A lead-in of 2.5 s lit between gaps of 2.5 s, then four digits: code 9999 twice. */
    private static PulseTrain quadLead() {
        PulseTrain.Builder train = PulseTrain.builder().dark(2_500_000_000L);
        for (int times = 0; times < 2; times++) {
            train.lit(2_500_000_000L).dark(2_500_000_000L);
            for (int digit = 0; digit < 4; digit++) {
                group(train, 9, 500, 500).dark(2_000_000_000L);
            }
        }
        return train.build();
    }

    private static PulseTrain.Builder group(PulseTrain.Builder train, int flashes, int litMillis, int darkMillis) {
        for (int flash = 0; flash < flashes; flash++) {
            train.lit(litMillis * Trains.MILLI).dark(darkMillis * Trains.MILLI);
        }
        return train;
    }

    @Test
    void pauses_tell_the_dark_level_in_the_format_of_long_and_short_flashes() {
        assertThat(Polarity.AUTO.highIsLit(longShort())).isTrue();
        assertThat(Polarity.looksInverted(longShort())).isFalse();
    }

    @Test
    void pauses_tell_the_dark_level_in_the_format_with_lit_lead_ins() {
        assertThat(Polarity.AUTO.highIsLit(quadLead())).isTrue();
        assertThat(Polarity.AUTO.highIsLit(quadLead().inverted())).isFalse();
    }

    /** Without a repeat the lit stretches are the longest; that the lamp rests dark says more. */
    @Test
    void one_code_of_long_flashes_is_not_taken_for_its_opposite() {
        PulseTrain.Builder train = PulseTrain.builder().dark(3_000_000_000L);
        group(train, 9, 1200, 400).dark(600_000_000L);
        PulseTrain code = group(train, 9, 400, 400).dark(2_600_000_000L).build();
        assertThat(Polarity.AUTO.highIsLit(code)).isTrue();
    }

    @Test
    void pauses_tell_the_dark_level_of_ordinary_codes() {
        assertThat(Polarity.AUTO.highIsLit(Trains.code34(2))).isTrue();
        assertThat(Polarity.AUTO.highIsLit(Trains.code34(2).inverted())).isFalse();
    }

    @Test
    void of_even_blinking_the_higher_level_is_lit() {
        PulseTrain.Builder train = PulseTrain.builder();
        PulseTrain even = group(train, 20, 250, 250).build();
        assertThat(Polarity.AUTO.highIsLit(even)).isTrue();
        assertThat(Polarity.AUTO.highIsLit(even.inverted())).isTrue();
    }

    @Test
    void what_the_user_says_holds() {
        assertThat(Polarity.HIGH_IS_LIT.highIsLit(Trains.code34(2).inverted())).isTrue();
        assertThat(Polarity.LOW_IS_LIT.highIsLit(Trains.code34(2))).isFalse();
    }
}
