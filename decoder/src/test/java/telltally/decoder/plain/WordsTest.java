package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** Runs of flashes put together to groups. */
class WordsTest {
    private static Reading even(String counts) {
        return Trains.read(Trains.even(counts), "pair-even");
    }

    @Test
    void a_bulb_check_belongs_to_the_segment_that_follows_it() {
        PulseTrain twice = Trains.of("0.2 3 1 3 | 3 0.5 2 0.5 4 0.5 2 0.5 6 0.5 6 0.5 2 0.5 4 0.5 2 0.5 3");
        assertThat(Trains.told(Trains.read(twice, "pair-even")))
                .startsWith("steady present", "steady present", "code present 11");
        PulseTrain atTheEnd = Trains.of("1 0.5 2 0.5 4 0.5 2 0.5 6 0.5 6 0.5 2 0.5 4 0.5 2 0.5 9 3 1");
        assertThat(Trains.told(Trains.read(atTheEnd, "pair-even"))).endsWith("code stored 11", "steady present");
    }

    @Test
    void lost_runs_with_gaps_as_between_digits_are_one_group() {
        // Twelve flashes are no digit; three digits are no code.
        assertThat(Trains.told(even("3 / 4 (4) 12 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1")))
                .containsSubsequence("code present 34", "unreadable present ?4", "code present 34");
    }

    @Test
    void a_lost_run_after_a_gap_as_between_codes_is_a_group_of_its_own() {
        assertThat(Trains.told(even("3 / 4 (4) 2 (4) 7 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1")))
                .containsSubsequence("unreadable present 2", "unreadable present 7");
    }

    @Test
    void instants_of_a_group_are_those_of_its_first_and_last_flash() {
        Reading reading = even("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1");

        // The separator: 3 s, two codes of 8 s with 4 s between, 6 s.
        assertThat(reading.groups().get(2).startNanos()).isEqualTo(29_000_000_000L);
        assertThat(reading.groups().get(2).endNanos()).isEqualTo(29_500_000_000L);
        assertThat(reading.groups().get(2).digits()).isEqualTo("1");
    }

    private static List<Word> words(String counts) {
        FlashFormat format = Trains.shipped("pair-even");
        Lengths lengths = new Lengths(format);
        Parser parser = new Parser(format, lengths, new SignTable(format.shape(), lengths));
        Parse parse = parser.parse(new Runs(new Flashes(Trains.even(counts), lengths), lengths, 0));
        return Words.of(format, lengths, parser, parse);
    }

    @Test
    void exact_lengths_cost_a_word_nothing() {
        assertThat(words("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"))
                .hasSize(5)
                .allSatisfy(word -> assertThat(word.cost()).isCloseTo(0, within(1e-9)));
    }

    /** 8 % too long is half a nat; what the gap says, it says of the words on both sides. */
    @Test
    void a_gap_that_is_off_costs_the_words_before_and_after_it() {
        List<Word> words = words("3 / 4 (4.333148) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1");

        assertThat(words.get(0).cost()).isCloseTo(0.5, within(1e-5));
        assertThat(words.get(1).cost()).isCloseTo(0.5, within(1e-5));
        assertThat(words.get(2).cost()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_gap_between_two_digits_that_is_off_costs_its_word_alone() {
        List<Word> words = words("3 (2.166574) 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1");

        assertThat(words.get(0).cost()).isCloseTo(0.5, within(1e-5));
        assertThat(words.get(1).cost()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_hidden_flash_costs_its_word_what_that_is_worth() {
        List<Word> words = words("1 (1.5) 1 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1");

        assertThat(words.get(0).digits()).isEqualTo("34");
        assertThat(words.get(0).cost()).isCloseTo(Cost.MISSED, within(1e-9));
        assertThat(words.get(1).cost()).isCloseTo(0, within(1e-9));
    }
}
