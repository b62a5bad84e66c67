package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.lattice.GroupSearch.CLEAR;
import static telltally.decoder.lattice.GroupSearch.CLOSE;
import static telltally.decoder.lattice.GroupSearch.NOISY;
import static telltally.decoder.lattice.GroupSearch.PAIR;
import static telltally.decoder.lattice.GroupSearch.SESSIONS;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.GroupKind;

/** What each sign of a group may have been, against every path one by one. */
class SignSharesTest {
    /** By place and sign, the share of the paths with a group of this kind that begins at this flash. */
    private Map<Integer, Map<String, Double>> enumerated(GroupSearch search, Found found) {
        Map<Integer, Map<String, Double>> shares = new TreeMap<>();
        for (FreePath path : FreePath.all(search.pass())) {
            for (FreePath.Sign sign : path.signs(search)) {
                if (sign.kind() == found.kind && sign.groupFrom() == found.firstFlash) {
                    shares.computeIfAbsent(sign.place(), place -> new TreeMap<>())
                            .merge(sign.text(), path.share(), Double::sum);
                }
            }
        }
        for (Map<String, Double> place : shares.values()) {
            double sum = place.values().stream().mapToDouble(each -> each).sum();
            place.replaceAll((sign, share) -> share / sum);
        }
        return shares;
    }

    private void assertEnumerated(GroupSearch search) {
        for (Found found : search.groups()) {
            Map<Integer, Map<String, Double>> expected = enumerated(search, found);
            assertThat(found.signs).hasSameSizeAs(found.places);
            for (int i = 0; i < found.signs.size(); i++) {
                Guess guess = found.signs.get(i);
                expected.get(found.places.get(i))
                        .forEach((sign, share) ->
                                // Shares below a thousand millionth are left out, one for each arc.
                                assertThat(guess.probability(sign)).isCloseTo(share, within(1e-6)));
            }
        }
    }

    @Test
    void a_gap_that_may_end_the_digit_leaves_its_count_open() {
        GroupSearch search = GroupSearch.of(CLOSE, NOISY, "3  0.5 0.65 0.5 0.65 0.5  9");

        assertThat(enumerated(search, search.groups().get(0)).get(0)).hasSizeGreaterThan(1);
        assertEnumerated(search);
    }

    @Test
    void signs_of_the_codes_before_and_after_are_not_mistaken_for_its_own() {
        assertEnumerated(
                GroupSearch.of(CLOSE, NOISY, "3  0.5 0.7 0.5 0.6 0.5  8  0.5 0.6 0.5 0.7 0.5  8  0.5 0.65 0.5  9"));
    }

    @Test
    void a_digit_of_which_nothing_was_seen_is_read_from_the_gap_before_the_next() {
        GroupSearch search = GroupSearch.of(PAIR, CLEAR, "3  0.5 2 0.5 0.5 0.5  6.5  0.5 0.5 0.5  8");

        assertThat(search.groups()).extracting(Found::digits).containsExactly("12", "12");
        assertEnumerated(search);
    }

    @Test
    void a_digit_unseen_at_the_beginning_of_the_recording_counts_among_the_others() {
        GroupSearch search = GroupSearch.of(PAIR, CLEAR, "9  0.5 0.5 0.5  4  0.5 2 0.5 0.5 0.5  8");

        assertThat(search.groups().get(0).digits()).isEqualTo("12");
        assertEnumerated(search);
    }

    @Test
    void flashes_that_were_not_sent_belong_to_no_sign() {
        assertEnumerated(GroupSearch.of(PAIR, CLEAR, "3  0.5 2 0.5 0.1 0.1 0.3 0.5  4.1 0.05 0.9 0.5 2 0.5  8"));
    }

    @Test
    void a_count_of_other_flashes_is_weighed_against_all_nine() {
        GroupSearch search = GroupSearch.of(SESSIONS, NOISY, "3  0.5 0.5 0.5 1 0.5  60  0.5 2 0.5  9");
        Found cylinders = search.groups().get(0);

        assertThat(cylinders.kind).isEqualTo(GroupKind.CYLINDERS);
        assertEnumerated(search);
    }

    /** A lone flash is a balance result of 1, or a 1 of which the second digit was not seen. */
    @Test
    void paths_that_read_another_kind_of_group_are_left_out_and_the_rest_adds_up_to_one() {
        GroupSearch search = GroupSearch.of(SESSIONS, NOISY, "3  0.5  8");
        Found balance = search.groups().get(0);
        double read = FreePath.all(search.pass()).stream()
                .filter(path -> path.signs(search).stream().anyMatch(sign -> sign.kind() == balance.kind))
                .mapToDouble(FreePath::share)
                .sum();

        assertThat(balance.kind).isEqualTo(GroupKind.BALANCE);
        assertThat(read).isLessThan(0.99);
        assertThat(balance.signs.get(0).logEvidence()).isCloseTo(0, within(1e-7));
    }

    /** Of three digits a third of a hundred millionth, of nine counts a ninth. */
    @Test
    void what_was_never_seen_is_one_of_as_many_signs_as_there_may_be() {
        GroupSearch search = GroupSearch.of(SESSIONS, CLEAR, "3  0.5 0.5 0.5  60  0.5 2 0.5 0.5 0.5  9");

        assertThat(search.groups())
                .extracting(found -> found.kind)
                .containsExactly(GroupKind.CYLINDERS, GroupKind.CODE);
        assertThat(search.groups().get(0).signs.get(0).probability("unseen")).isCloseTo(1e-8 / 9, within(1e-15));
        assertThat(search.groups().get(1).signs.get(0).probability("unseen")).isCloseTo(1e-8 / 3, within(1e-15));
    }

    @Test
    void what_a_balance_result_ends_with_is_open_to_flashes_unseen() {
        GroupSearch search = GroupSearch.of(SESSIONS, NOISY, "3  0.5 0.5 0.5  3");
        Found balance = search.groups().get(0);

        assertThat(balance.kind).isEqualTo(GroupKind.BALANCE);
        assertThat(enumerated(search, balance).get(0)).hasSize(3);
        assertEnumerated(search);
    }
}
