package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.signal.PulseTrain;

/** What is said of a reading beside its codes, and at which instant. */
class TranscriberTest {
    private static final String WHOLE = "3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1";

    private static List<Warning> warnings(PulseTrain train) {
        return Trains.read(train, "pair-even").warnings();
    }

    @Test
    void of_a_whole_message_there_is_nothing_to_be_said() {
        assertThat(warnings(Trains.even(WHOLE))).isEmpty();
    }

    @Test
    void a_gap_between_two_kinds_is_told_where_it_begins() {
        // 3 s of darkness, 3 flashes of 2.5 s in all.
        assertThat(warnings(Trains.even("3 (2.828) 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1")))
                .containsExactly(new Warning(
                        5_500_000_000L,
                        WarningKind.DOUBTFUL_GAP,
                        "a dark gap of 2.83 s lies between two kinds of gap"));
    }

    @Test
    void a_hidden_flash_in_the_first_digit_and_in_a_later_one_is_told_where_its_gap_begins() {
        assertThat(warnings(Trains.even("3 / 2 (1.5) 1 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1")))
                .containsExactly(new Warning(
                        9_000_000_000L,
                        WarningKind.MISSED_FLASH,
                        "a dark gap of 1.5 s inside a digit: one flash was probably not seen"));
    }

    @Test
    void lists_that_differ_are_told_with_the_segment_and_where_it_begins() {
        List<Warning> differing = warnings(Trains.even("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 2"));

        // The code 34 takes 8 s, twice; 3 s before, 4 s between, then 6 s, the separator's half second, 6 s.
        assertThat(differing)
                .containsExactly(new Warning(
                        35_500_000_000L,
                        WarningKind.REPEATS_DIFFER,
                        "the sendings of the list of stored codes differ, or are not as many as this format makes"));
    }

    @Test
    void what_cannot_be_read_at_the_start_is_told_twice_once_as_the_start() {
        assertThat(warnings(Trains.even("4 (4) " + WHOLE)))
                .extracting(Warning::atNanos, Warning::kind)
                .startsWith(tuple(0L, WarningKind.STARTS_MIDWAY), tuple(3_000_000_000L, WarningKind.UNREADABLE_GROUP));
    }

    @Test
    void a_flash_that_was_lit_from_the_first_instant_may_have_begun_before() {
        PulseTrain whole = Trains.of("0 0.5 2 0.5 4 0.5 2 0.5 6 0.5 6 0.5 2 0.5 4 0.5 2 0.5 3");
        assertThat(warnings(whole)).extracting(Warning::kind).containsExactly(WarningKind.STARTS_MIDWAY);
        PulseTrain later = Trains.of("0.1 0.5 2 0.5 4 0.5 2 0.5 6 0.5 6 0.5 2 0.5 4 0.5 2 0.5 3");
        assertThat(warnings(later)).isEmpty();
        PulseTrain bulbCheck = Trains.of("0 2 3 0.5 2 0.5 4 0.5 2 0.5 6 0.5 6 0.5 2 0.5 4 0.5 2 0.5 3");
        assertThat(warnings(bulbCheck)).isEmpty();
    }

    @Test
    void a_flash_that_was_lit_until_the_last_instant_may_go_on() {
        PulseTrain lit = Trains.of("1 0.5 2 0.5 4 0.5 2 0.5 6 0.5 6 0.5 2 0.5 4 0.5 2 0.5");
        assertThat(warnings(lit))
                .containsExactly(new Warning(
                        lit.endNanos(),
                        WarningKind.STOPS_EARLY,
                        "by the rules of this format more should follow here"));
        PulseTrain steady = Trains.of("1 0.5 2 0.5 4 0.5 2 0.5 6 0.5 6 0.5 2 0.5 4 0.5 2 0.5 4 9");
        assertThat(warnings(steady)).isEmpty();
    }

    @Test
    void what_the_code_is_without_the_hidden_flash_is_offered_as_another() {
        Reading reading = Trains.read(Trains.even("3 / 1 (1.5) 1 (4) 3 / 3 (6) 1 (6) 1 / 1 (4) 1 / 1"), "pair-even");
        assertThat(reading.groups().get(0).digits()).isEqualTo("33");
        assertThat(reading.groups().get(0).alternatives())
                .extracting(Reading.Alternative::digits)
                .containsExactly("32");
    }

    @Test
    void lengths_are_told_to_a_hundredth_of_a_second() {
        assertThat(Transcript.text(1_234_999_999L)).isEqualTo("1.23 s");
        assertThat(Transcript.text(1_235_000_000L)).isEqualTo("1.24 s");
    }
}
