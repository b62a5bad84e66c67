package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.lattice.Sendings.begunBefore;
import static telltally.decoder.lattice.Sendings.repeat;
import static telltally.decoder.lattice.Sendings.sign;
import static telltally.decoder.lattice.Sendings.unfinished;
import static telltally.decoder.lattice.Sendings.whole;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Sendings of one code taken together, by Bayes' rule worked by hand. */
class BlockTest {
    private static final Offset<Double> EXACT = within(1e-12);
    private static final FormatModel PAIR = Sendings.shipped("pair-even");
    private static final FormatModel SPELLED = Sendings.format("""
            "flashes_s": {".": 0.12, "-": 0.36},
            "code": {"signs": {"S": "...", "O": "---", "T": "-", "E": ".", "R": ".-.", "N": "-."}, "most_signs": 5},
            "gaps": {"within_digit_s": 0.12, "between_digits_s": 0.36, "between_codes_s": 0.84},
            "list": {"list_times": 2}
            """);

    private static Block block(Found... sendings) {
        return new Block(PAIR, List.of(sendings));
    }

    @Test
    void one_sending_is_known_as_it_was_seen() {
        Block block = block(whole(sign("3", 0.7, "4", 0.3), sign("2", 0.4, "1", 0.6)));
        assertThat(block.best).isEqualTo("31");
        assertThat(block.probability("31")).isCloseTo(0.7 * 0.6, EXACT);
        assertThat(block.probability("42")).isCloseTo(0.3 * 0.4, EXACT);
        assertThat(block.logEvidence()).isCloseTo(0, EXACT);
    }

    @Test
    void sendings_multiply_place_by_place() {
        Block block = block(
                whole(sign("3", 0.7, "4", 0.3), sign("1", 1.0)),
                whole(sign("3", 0.2, "4", 0.8), sign("1", 0.5, "2", 0.5)));
        assertThat(block.best).isEqualTo("41");
        assertThat(block.probability("41")).isCloseTo(0.24 / 0.38, within(1e-7));
        // What speaks for one code adds up over its places: 0.38 and 0.5, against one in nine.
        assertThat(block.logEvidence()).isCloseTo(Math.log(0.38 * 9) + Math.log(0.5 * 9), within(1e-7));
    }

    @Test
    void a_sending_seen_from_its_second_place_on_speaks_of_that_place() {
        Block block = block(begunBefore(1, sign("5", 0.5, "6", 0.5)), whole(sign("3", 1.0), sign("6", 0.5, "7", 0.5)));
        assertThat(block.best).isEqualTo("36");
        assertThat(block.signs.get(0).probability("3")).isCloseTo(1, EXACT);
        assertThat(block.signs.get(1).probability("6")).isCloseTo(1, within(1e-6));
    }

    @Test
    void a_place_that_was_never_seen_is_open() {
        Block block = block(begunBefore(1, sign("5", 1.0)));
        assertThat(block.signs).hasSize(2);
        assertThat(block.signs.get(0).probability("8")).isCloseTo(1.0 / 9, EXACT);
        assertThat(block.best).isEqualTo("5");
        assertThat(block.complete).isFalse();
        assertThat(block(unfinished(sign("5", 1.0))).complete).isFalse();
        assertThat(block(whole("34")).complete).isTrue();
        assertThat(block(begunBefore(1, sign("5", 1.0)), unfinished(sign("3", 1.0))).complete)
                .isTrue();
    }

    @Test
    void it_is_whole_where_one_sending_is() {
        assertThat(block(whole("34")).whole).isTrue();
        assertThat(block(begunBefore(0, sign("3", 1.0), sign("4", 1.0))).whole).isFalse();
        assertThat(block(unfinished(sign("3", 1.0), sign("4", 1.0))).whole).isFalse();
        assertThat(block(begunBefore(1, sign("4", 1.0)), unfinished(sign("3", 1.0))).whole)
                .isFalse();
        assertThat(block(begunBefore(1, sign("4", 1.0)), whole("34")).whole).isTrue();
    }

    @Test
    void its_first_sending_says_whether_the_list_begins_again() {
        assertThat(block(repeat("34"), whole("34")).repeat).isTrue();
        assertThat(block(whole("34"), repeat("34")).repeat).isFalse();
    }

    @Test
    void it_is_sure_where_each_sign_has_999_in_1000() {
        assertThat(block(whole("34")).sure()).isTrue();
        assertThat(block(whole(sign("3", 1.0), sign("4", 0.9991, "5", 0.0009))).sure())
                .isTrue();
        assertThat(block(whole(sign("3", 1.0), sign("4", 0.9989, "5", 0.0011))).sure())
                .isFalse();
        assertThat(block(whole(sign("3", 0.9989, "4", 0.0011), sign("4", 1.0))).sure())
                .isFalse();
        assertThat(block(begunBefore(1, sign("4", 1.0))).sure()).isFalse();
    }

    @Test
    void a_place_of_which_nothing_was_seen_is_not_sure_even_where_it_can_hold_one_sign_only() {
        FormatModel model = Sendings.format("""
                "flashes_s": {"flash": 0.5},
                "code": {"places": [{"flash": "flash", "from": 2, "to": 2}, {"flash": "flash", "from": 1, "to": 9}]},
                "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0},
                "list": {"list_times": 2}
                """);
        assertThat(new Block(model, List.of(begunBefore(1, sign("4", 1.0)))).sure())
                .isFalse();
    }

    @Nested
    class OtherCodes {
        // 31: 0.30, 32: 0.18, 33: 0.12; 41: 0.20, 42: 0.12, 43: 0.08.
        private final Block block = block(whole(sign("4", 0.4, "3", 0.6), sign("2", 0.3, "1", 0.5, "3", 0.2)));

        @Test
        void are_told_the_most_probable_first() {
            assertThat(block.choices("31", 0.01, 3)).containsExactly("41", "32", "33");
            assertThat(block.choices("41", 0.01, 5)).containsExactly("31", "32", "33", "42", "43");
            assertThat(block.choices("", 0.01, 6)).containsExactly("31", "41", "32", "33", "42", "43");
        }

        @Test
        void are_no_more_than_asked_for() {
            assertThat(block.choices("", 0.01, 2)).containsExactly("31", "41");
        }

        @Test
        void hold_no_sign_below_the_least_share() {
            assertThat(block.choices("", 0.45, 6)).containsExactly("31");
            assertThat(block.choices("", 0.25, 6)).containsExactly("31", "41", "32", "42");
            // A sign that has just the least share counts.
            double ofThree = block.signs.get(1).probability("3");
            assertThat(block.choices("", ofThree, 6)).hasSize(6);
        }

        @Test
        void are_looked_for_among_the_first_four_times_as_many() {
            Guess[] four = {
                sign("1", 0.3, "2", 0.29, "3", 0.28, "4", 0.13), sign("1", 0.4, "2", 0.3, "3", 0.2, "4", 0.1)
            };
            // 11 to 14 fill the room of four for one that is asked for, so 21 comes too late; and so on.
            assertThat(block(whole(four)).choices("11", 0.01, 1)).containsExactly("12");
            assertThat(block(whole(four)).choices("11", 0.01, 2)).containsExactly("21", "12");
            assertThat(block(whole(four)).choices("21", 0.01, 2)).containsExactly("11", "12");
            assertThat(block(whole(four)).choices("", 0.01, 3)).containsExactly("11", "21", "31");
        }
    }

    @Nested
    class OfAFormatThatSpells {
        private Guess spelled(String text) {
            Guess guess = Guess.ofShares(6);
            guess.add(text, 1);
            return guess;
        }

        @Test
        void has_as_many_signs_as_the_longest_sending() {
            Block block = new Block(
                    SPELLED,
                    List.of(
                            whole(spelled("S"), spelled("O")),
                            whole(spelled("S"), spelled("O"), spelled("S")),
                            whole(spelled("S"))));
            assertThat(block.best).isEqualTo("SOS");
            assertThat(block.complete).isTrue();
            assertThat(block.logEvidence()).isCloseTo((2 + 1) * Math.log(6), EXACT);
        }

        @Test
        void takes_a_sending_that_the_recording_began_in_from_its_first_sign() {
            Block block = new Block(SPELLED, List.of(begunBefore(1, spelled("T"), spelled("E"))));
            assertThat(block.best).isEqualTo("TE");
        }
    }

    @Test
    void a_code_of_one_place_is_one_text_however_long() {
        Guess twelve = Guess.ofShares(15);
        twelve.add("12", 0.75);
        twelve.add("13", 0.25);
        Block block = new Block(Sendings.shipped("count-loop"), List.of(whole(twelve)));
        assertThat(block.best).isEqualTo("12");
        assertThat(block.probability("12")).isCloseTo(0.75, EXACT);
        assertThat(block.probability("13")).isCloseTo(0.25, EXACT);
    }
}
