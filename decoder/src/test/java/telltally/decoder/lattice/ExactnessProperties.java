package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.chance.Chance;

/** The dynamic programme against plain enumeration: every list, and every way of seeing it, one by one. */
class ExactnessProperties {
    private final TwoDigitFormat small = new TwoDigitFormat();
    private final FormatModel model = small.model;
    private static final Channel CHANNEL = TwoDigitFormat.CHANNEL;

    @Property(tries = 15)
    void the_density_of_a_recording_given_its_list_is_the_sum_over_every_way_of_seeing_it(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 2) int codes) {
        Flashes flashes = small.flashes(seed, codes);
        List<List<String>> lists = small.lists().subList(0, 12);
        double[] counted = new double[lists.size()];
        for (int i = 0; i < counted.length; i++) {
            SentList sent = sent(lists.get(i));
            counted[i] = new EveryPath(TwoDigitFormat.automaton(sent), flashes, CHANNEL).logTotal();
        }
        double best = Arrays.stream(counted).max().orElseThrow();
        for (int i = 0; i < counted.length; i++) {
            if (counted[i] > best - 5) {
                SentList sent = sent(lists.get(i));
                // The programme drops paths a hundred million times less likely than another into the same flash,
                // and its table of the normal law is linear between steps of 1/128.
                assertThat(RowPass.run(sent, flashes, CHANNEL, new Lattice()).logSum())
                        .isCloseTo(counted[i], within(1e-3));
            }
        }
    }

    @Property(tries = 100)
    void a_list_that_fits_badly_has_the_density_of_enumeration_too(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 2) int codes) {
        hasTheDensityOfEnumeration(small.flashes(seed, codes), aList(seed));
    }

    /** The recording begins 8.98 deviations into a gap of the list: what lies so far out was once taken for more. */
    @Test
    void a_recording_that_hardly_begins_in_a_gap_has_the_density_of_enumeration_too() {
        long seed = 9095068212056546264L;
        hasTheDensityOfEnumeration(small.flashes(seed, 1), aList(seed));
    }

    private List<String> aList(long seed) {
        List<List<String>> lists = small.lists();
        return lists.get(Chance.of(seed).below(lists.size()));
    }

    private void hasTheDensityOfEnumeration(Flashes flashes, List<String> list) {
        SentList sent = sent(list);
        double counted = new EveryPath(TwoDigitFormat.automaton(sent), flashes, CHANNEL).logTotal();
        if (counted > -40) {
            assertThat(RowPass.run(sent, flashes, CHANNEL, new Lattice()).logSum())
                    .isCloseTo(counted, within(1e-3));
        }
    }

    @Property(tries = 15)
    void the_weight_of_every_list_that_is_weighed_is_that_of_enumeration(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 2) int codes) {
        Weighing weighing = new Weighing(small.flashes(seed, codes));
        double top = Collections.max(weighing.all.values());
        weighing.weighed.forEach((list, log) -> {
            if (log > top - 5) {
                assertThat(log).isCloseTo(weighing.all.get(list), within(1e-3));
            }
        });
    }

    @Test
    void the_lists_that_the_search_does_not_weigh_hold_next_to_nothing_and_the_best_is_chosen() {
        double unweighed = 0;
        int clear = 0;
        int missedTheBest = 0;
        int sessions = 100;
        for (int seed = 0; seed < sessions; seed++) {
            Weighing weighing = new Weighing(small.flashes(seed, 1 + seed % 2));
            unweighed += 1;
            for (List<String> list : weighing.weighed.keySet()) {
                unweighed -= weighing.share(list);
            }
            List<String> best = weighing.best();
            if (weighing.share(best) > 0.6) {
                clear++;
                missedTheBest += weighing.chosen.equals(best) ? 0 : 1;
            }
        }
        // With six flashes of a hundred unseen and lists of one or two codes, many of these sessions can't be told.
        assertThat(unweighed / sessions).isLessThan(0.03);
        assertThat(clear).isGreaterThan(sessions / 2);
        assertThat(missedTheBest).isZero();
    }

    /** Three flashes unseen, or a list begun in its middle: found by this comparison when the search was narrower. */
    @ParameterizedTest
    @CsvSource({"33408, 2", "5413, 2"})
    void a_list_that_was_once_missed_is_chosen(long seed, int codes) {
        Weighing weighing = new Weighing(small.flashes(seed, codes));
        assertThat(weighing.share(weighing.best())).isGreaterThan(0.99);
        assertThat(weighing.chosen).isEqualTo(weighing.best());
    }

    /** One session, weighed by the decoder and by enumeration of all lists. */
    private final class Weighing {
        private final Map<List<String>, Double> all = new LinkedHashMap<>();
        private final Map<List<String>, Double> weighed;
        private final List<String> chosen;

        Weighing(Flashes flashes) {
            FormatTrial trial = new FormatTrial(
                    model, flashes, List.of(new CoarseClock.Fit(1, 0)), KnownNoise.NOTHING, new LatticeStock());
            trial.run();
            trial.read();
            List<Found> groups = trial.finder().groups.stream()
                    .filter(group -> !group.signs.isEmpty())
                    .toList();
            ListStructure structure = new ListStructure(model, groups, true, true);
            ListWeigher weigher =
                    new ListWeigher(model, flashes, trial.channel, structure, false, false, new LatticeStock());
            weighed = weigher.logWeights();
            chosen = weigher.explains() ? weigher.codes() : List.of();
            for (List<String> list : small.lists()) {
                SentList sent = sent(list);
                double prior = list.size() * (-0.15 - Math.log(9));
                all.put(list, new EveryPath(TwoDigitFormat.automaton(sent), flashes, trial.channel).logTotal() + prior);
            }
        }

        List<String> best() {
            return Collections.max(all.entrySet(), Map.Entry.comparingByValue()).getKey();
        }

        double share(List<String> list) {
            double top = Collections.max(all.values());
            double sum = all.values().stream()
                    .mapToDouble(log -> Math.exp(log - top))
                    .sum();
            return Math.exp(all.get(list) - top) / sum;
        }
    }

    private SentList sent(List<String> list) {
        return small.sent(list.toArray(String[]::new));
    }
}
