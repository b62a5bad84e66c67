package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

/** What is known of one sign, held to Bayes' rule worked out by hand and over all signs there are. */
class GuessTest {
    private static final Offset<Double> EXACT = within(1e-12);
    /** The share of a sign that nothing was seen of, times how many signs there are. */
    private static final double HARDLY = 1e-8;

    private static Guess nine(Object... textsAndShares) {
        return filled(Guess.ofShares(9), textsAndShares);
    }

    private static Guess filled(Guess guess, Object... textsAndShares) {
        for (int i = 0; i < textsAndShares.length; i += 2) {
            guess.add((String) textsAndShares[i], (double) textsAndShares[i + 1]);
        }
        return guess;
    }

    @Test
    void one_sending_gives_each_sign_its_share_and_is_evidence_of_nothing() {
        Guess guess = nine("3", 0.7, "4", 0.3);
        assertThat(guess.probability("3")).isCloseTo(0.7, EXACT);
        assertThat(guess.probability("4")).isCloseTo(0.3, EXACT);
        assertThat(guess.logEvidence()).isCloseTo(0, EXACT);
    }

    @Test
    void a_log_says_how_many_times_more_probable_a_sign_is_than_an_even_choice() {
        Guess guess = nine("3", 0.7, "4", 0.3);
        assertThat(guess.log("3")).isCloseTo(Math.log(9 * 0.7), EXACT);
        assertThat(guess.log("4")).isCloseTo(Math.log(9 * 0.3), EXACT);
    }

    @Test
    void a_sign_not_named_is_next_to_impossible() {
        Guess guess = nine("3", 0.7, "4", 0.3);
        assertThat(guess.log("5")).isCloseTo(Math.log(HARDLY), EXACT);
        assertThat(guess.probability("5")).isCloseTo(HARDLY / 9, within(1e-20));
    }

    @Test
    void a_named_sign_is_no_less_probable_than_one_that_is_not() {
        assertThat(nine("3", 1.0, "4", 1e-12).log("4")).isCloseTo(Math.log(HARDLY), EXACT);
    }

    @Test
    void shares_of_one_sign_add_up() {
        Guess guess = nine("3", 0.25, "4", 0.5, "3", 0.25);
        assertThat(guess.log("3")).isCloseTo(Math.log(9 * 0.5), EXACT);
        assertThat(guess.probability("3")).isCloseTo(0.5, EXACT);
        assertThat(guess.ranked()).hasSize(2);
    }

    @Test
    void more_added_after_a_question_changes_the_answer() {
        Guess guess = nine("3", 0.5);
        assertThat(guess.logEvidence()).isCloseTo(Math.log(0.5), EXACT);
        guess.add("4", 0.25);
        assertThat(guess.logEvidence()).isCloseTo(Math.log(0.75), EXACT);
        guess.add("4", 0.25);
        assertThat(guess.logEvidence()).isCloseTo(0, EXACT);
    }

    @Test
    void an_even_choice_knows_nothing() {
        Guess even = Guess.even(9);
        assertThat(even.knowsNothing()).isTrue();
        assertThat(even.best()).isEmpty();
        assertThat(even.ranked()).isEmpty();
        assertThat(even.logEvidence()).isCloseTo(0, EXACT);
        assertThat(even.probability("7")).isCloseTo(1.0 / 9, EXACT);
        assertThat(nine("3", 1.0).knowsNothing()).isFalse();
    }

    @Test
    void signs_not_named_of_an_even_choice_stay_as_they_were_beside_one_that_is() {
        // Weights 2, 1, 1, 1 of four signs.
        Guess guess = filled(Guess.even(4), "a", 0.5);
        assertThat(guess.probability("a")).isCloseTo(2.0 / 5, EXACT);
        assertThat(guess.probability("b")).isCloseTo(1.0 / 5, EXACT);
        assertThat(guess.logEvidence()).isCloseTo(Math.log(5.0 / 4), EXACT);
    }

    @Test
    void of_more_than_sixty_signs_an_even_choice_is_known_as_well() {
        for (int choices : new int[] {1, 63, 64, 65, 200}) {
            assertThat(Guess.even(choices).probability("7")).isCloseTo(1.0 / choices, EXACT);
        }
    }

    /** Posterior odds are prior odds times the likelihood ratio of each sending (Bayes' rule). */
    @Test
    void two_sendings_multiply() {
        Guess both = nine("3", 0.7, "4", 0.3).and(nine("3", 0.2, "4", 0.8));
        assertThat(both.probability("3")).isCloseTo(0.14 / 0.38, EXACT);
        assertThat(both.probability("4")).isCloseTo(0.24 / 0.38, EXACT);
        assertThat(both.ranked()).containsExactly("4", "3");
        // The chance that two independent signs, drawn from the two guesses, are one, against one in nine.
        assertThat(both.logEvidence()).isCloseTo(Math.log(0.38 * 9), EXACT);
    }

    @Test
    void a_sign_that_one_sending_denies_keeps_next_to_nothing_of_the_other() {
        Guess both = nine("3", 1.0).and(nine("4", 1.0));
        assertThat(both.log("3")).isCloseTo(Math.log(9) + Math.log(HARDLY), EXACT);
        assertThat(both.log("4")).isCloseTo(Math.log(9) + Math.log(HARDLY), EXACT);
        assertThat(both.log("5")).isCloseTo(2 * Math.log(HARDLY), EXACT);
        assertThat(both.probability("3")).isCloseTo(0.5, EXACT);
        assertThat(both.logEvidence()).isCloseTo(Math.log(2 * HARDLY), EXACT);
    }

    @Test
    void a_sending_of_which_nothing_was_seen_changes_nothing() {
        Guess guess = nine("3", 0.7, "4", 0.3);
        for (Guess both : new Guess[] {guess.and(Guess.even(9)), Guess.even(9).and(guess)}) {
            assertThat(both.ranked()).containsExactly("3", "4");
            assertThat(both.log("3")).isCloseTo(guess.log("3"), EXACT);
            assertThat(both.log("8")).isCloseTo(guess.log("8"), EXACT);
            assertThat(both.logEvidence()).isCloseTo(0, EXACT);
        }
    }

    @Test
    void what_is_e_to_the_eighteenth_times_less_probable_adds_nothing_at_all() {
        assertThat(nine("3", 1.0, "4", 1e-8).logEvidence()).isZero();
        assertThat(nine("3", 1.0, "4", 1e-7).logEvidence()).isCloseTo(1e-7, within(1e-13));
    }

    @Test
    void signs_are_ranked_by_probability_and_those_alike_as_they_came() {
        Guess guess = nine("1", 0.1, "2", 0.2, "3", 0.2, "4", 0.05, "5", 0.35, "6", 0.1);
        assertThat(guess.ranked()).containsExactly("5", "2", "3", "1", "6", "4");
        assertThat(guess.best()).isEqualTo("5");
    }

    @Test
    void of_two_signs_alike_the_first_is_the_best() {
        assertThat(nine("4", 0.5, "3", 0.5).best()).isEqualTo("4");
    }

    @Property(tries = 200)
    void any_number_of_sendings_is_bayes_rule_summed_over_all_signs(@ForAll long seed) {
        Chance chance = Chance.of(seed);
        int choices = 2 + chance.below(8);
        double[] product = new double[choices];
        Arrays.fill(product, 1);
        Guess all = Guess.even(choices);
        int sendings = 1 + chance.below(3);
        for (int sending = 0; sending < sendings; sending++) {
            Map<String, Double> shares = shares(chance, choices);
            Guess one = Guess.ofShares(choices);
            shares.forEach(one::add);
            all = all.and(one);
            for (int sign = 0; sign < choices; sign++) {
                product[sign] *= choices * shares.getOrDefault("" + sign, HARDLY / choices);
            }
        }
        double sum = Arrays.stream(product).sum();
        // What is e to the eighteenth times less probable is left out.
        double leftOut = 1e-6;
        assertThat(all.logEvidence()).isCloseTo(Math.log(sum / choices), within(leftOut));
        for (int sign = 0; sign < choices; sign++) {
            assertThat(all.probability("" + sign)).isCloseTo(product[sign] / sum, within(leftOut));
        }
    }

    private static Map<String, Double> shares(Chance chance, int choices) {
        Map<String, Double> weights = new LinkedHashMap<>();
        int named = 1 + chance.below(choices);
        for (int i = 0; i < named; i++) {
            weights.put("" + chance.below(choices), chance.between(0.01, 1));
        }
        double sum = weights.values().stream().mapToDouble(Double::doubleValue).sum();
        weights.replaceAll((text, weight) -> weight / sum);
        return weights;
    }
}
