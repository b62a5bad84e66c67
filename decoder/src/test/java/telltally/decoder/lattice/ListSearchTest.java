package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static telltally.decoder.lattice.Sendings.TWO_DIGITS;
import static telltally.decoder.lattice.Sendings.clean;
import static telltally.decoder.lattice.Sendings.flashes;
import static telltally.decoder.lattice.Sendings.sign;
import static telltally.decoder.lattice.Sendings.structure;
import static telltally.decoder.lattice.Sendings.whole;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which lists are weighed, for flashes and groups made by hand. */
class ListSearchTest {
    private static final FormatModel TWICE =
            Sendings.format(TWO_DIGITS + "\"list\": {\"list_times\": 2, \"most_codes\": 2}");
    private static final FormatModel LOOPING =
            Sendings.format(TWO_DIGITS + "\"list\": {\"loops\": true}, \"framing_code\": \"12\"");

    private static ListWeigher weigher(FormatModel model, List<Integer> lengths, ListStructure structure) {
        return new ListWeigher(
                model, flashes(lengths), TwoDigitFormat.CHANNEL, structure, false, false, new LatticeStock());
    }

    private static List<String> weighed(FormatModel model, ListStructure structure, String... sent) {
        return weigher(model, clean(sent), structure).logWeights().keySet().stream()
                .map(list -> String.join(" ", list))
                .toList();
    }

    @Test
    void are_those_that_the_blocks_suggest() {
        assertThat(weighed(TWICE, structure(TWICE, "34", "34"), "34", "34")).containsExactly("34");
    }

    @Test
    void are_the_best_begun_elsewhere_too_where_it_has_three_codes_or_fewer() {
        assertThat(weighed(TWICE, structure(TWICE, "34", "21", "34", "21"), "34", "21", "34", "21"))
                .containsExactlyInAnyOrder("34 21", "34", "21", "21 34");
        String[] three = {"34", "21", "51", "34", "21", "51"};
        assertThat(weighed(LOOPING, structure(LOOPING, three), three))
                .containsExactlyInAnyOrder("34 21 51", "34 21", "21 51", "51 34", "21 51 34", "51 34 21");
        String[] four = {"34", "21", "51", "42", "34", "21", "51", "42"};
        assertThat(weighed(LOOPING, structure(LOOPING, four), four))
                .contains("34 21 51 42")
                .doesNotContain("21 51 42 34", "51 42 34 21");
    }

    @Test
    void are_the_best_with_one_code_or_two_neighbours_as_doubtful_signs_would_have_them() {
        // Too rare for the blocks to suggest them.
        Guess rarelyTwo = sign("1", 1 - 2e-5, "2", 2e-5);
        Found[] groups = {
            whole(sign("3", 1.0), rarelyTwo), whole(sign("5", 1.0), rarelyTwo), whole(sign("7", 1.0), rarelyTwo)
        };
        assertThat(weighed(LOOPING, structure(LOOPING, groups), "31", "51", "71"))
                .contains("31 51 71", "31 52 71", "31 51 72", "32 52 71", "31 52 72", "32 51 71")
                .doesNotContain("32 51 72", "32 52 72");
    }

    @Test
    void hold_no_code_below_a_millionth() {
        Found[] groups = {whole("31"), whole(sign("5", 1.0), sign("1", 1 - 2.5e-6, "2", 2e-6, "3", 5e-7))};
        assertThat(weighed(LOOPING, structure(LOOPING, groups), "31", "51"))
                .contains("31 52")
                .doesNotContain("31 53");
    }

    @Test
    void hold_no_code_twice_and_none_that_the_format_does_not_send() {
        // The framing code, and a list that would hold one code twice.
        Found[] groups = {whole("11"), whole(sign("1", 1.0), sign("3", 0.9, "1", 0.06, "2", 0.04))};
        assertThat(weighed(LOOPING, structure(LOOPING, groups), "11", "13"))
                .contains("11 13")
                .doesNotContain("11 11", "11 12");
    }

    @Test
    void are_no_longer_than_the_format_allows() {
        FormatModel one = Sendings.format(TWO_DIGITS + "\"list\": {\"loops\": true, \"most_codes\": 1}");
        assertThat(weighed(one, structure(one, "34", "21"), "34", "34")).allMatch(list -> list.length() == 2);
        assertThat(weighed(TWICE, structure(TWICE, "34", "21", "34", "21"), "34", "21", "34", "21"))
                .contains("34 21");
    }

    @Test
    void are_forty_eight_at_most() {
        Guess doubtful = sign("1", 0.3, "2", 0.2, "3", 0.15, "4", 0.12, "5", 0.1, "6", 0.08, "7", 0.05);
        Found[] groups = {whole(sign("3", 1.0), doubtful), whole(sign("5", 1.0), doubtful)};
        assertThat(weighed(LOOPING, structure(LOOPING, groups), "31", "51")).hasSize(48);
    }

    @Test
    void hold_any_code_read_anywhere_where_none_that_the_blocks_suggest_explains_the_flashes() {
        String[] read = {"21", "21", "21", "21", "33", "21", "21", "21", "21"};
        assertThat(weighed(LOOPING, structure(LOOPING, read), "33", "33", "33")).containsExactly("21", "33");
        assertThat(weighed(LOOPING, structure(LOOPING, read), "21", "21", "21")).containsExactly("21");
    }

    @Test
    void go_on_from_each_list_that_turns_out_the_best() {
        // Two codes that are no neighbours were read with a flash too many.
        Guess rarelyOne = sign("2", 1 - 2e-5, "1", 2e-5);
        Found[] groups = {whole(sign("3", 1.0), rarelyOne), whole("44"), whole(sign("5", 1.0), rarelyOne), whole("66")};
        ListWeigher weigher = weigher(LOOPING, clean("31", "44", "51", "66"), structure(LOOPING, groups));
        assertThat(weigher.codes()).containsExactly("31", "44", "51", "66");
    }
}
