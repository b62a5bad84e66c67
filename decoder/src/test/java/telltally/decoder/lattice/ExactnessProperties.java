package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
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
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.chance.Chance;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatReader;
import telltally.simulator.signal.PulseTrain;

/** The dynamic programme against plain enumeration: every list, and every way of seeing it, one by one. */
class ExactnessProperties {
    private static final String SMALL = """
            {"schema": "telltally/format/1", "id": "small", "title": "Two digits of 1 to 3",
             "flashes_s": {"flash": 0.5},
             "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 3}]},
             "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0},
             "list": {"list_times": 2, "most_codes": 2}}
            """;

    private final FlashFormat format = small();
    private final FormatModel model = new FormatModel(format);
    private static final Channel CHANNEL = new Channel(1, 0, 0.08, 0.03, 0.03, 0.02);

    private static FlashFormat small() {
        try {
            return FormatReader.read(new TextFile("small.json", SMALL));
        } catch (ProblemException e) {
            throw new IllegalStateException(e);
        }
    }

    @Property(tries = 15)
    void the_density_of_a_recording_given_its_list_is_the_sum_over_every_way_of_seeing_it(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 2) int codes) {
        Flashes flashes = flashes(seed, codes);
        List<List<String>> lists = lists().subList(0, 12);
        double[] counted = new double[lists.size()];
        for (int i = 0; i < counted.length; i++) {
            SentList sent = new SentList(model, plan(), lists.get(i));
            counted[i] = Math.log(new Enumeration(automaton(sent), flashes, CHANNEL).total());
        }
        double best = Arrays.stream(counted).max().orElseThrow();
        for (int i = 0; i < counted.length; i++) {
            if (counted[i] > best - 5) {
                SentList sent = new SentList(model, plan(), lists.get(i));
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
        Flashes flashes = flashes(seed, codes);
        List<List<String>> lists = lists();
        SentList sent = new SentList(model, plan(), lists.get(Chance.of(seed).below(lists.size())));
        double counted = Math.log(new Enumeration(automaton(sent), flashes, CHANNEL).total());
        // The enumeration leaves paths out that weigh next to nothing, so it may say a little less.
        if (counted > -20) {
            assertThat(RowPass.run(sent, flashes, CHANNEL, new Lattice()).logSum())
                    .isBetween(counted - 5e-3, counted + 0.1);
        }
    }

    @Property(tries = 15)
    void the_weight_of_every_list_that_is_weighed_is_that_of_enumeration(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 2) int codes) {
        Weighing weighing = new Weighing(flashes(seed, codes));
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
            Weighing weighing = new Weighing(flashes(seed, 1 + seed % 2));
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
        Weighing weighing = new Weighing(flashes(seed, codes));
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
            for (List<String> list : lists()) {
                SentList sent = new SentList(model, plan(), list);
                double prior = list.size() * (-0.15 - Math.log(9));
                all.put(list, Math.log(new Enumeration(automaton(sent), flashes, trial.channel).total()) + prior);
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

    private SentList.Plan plan() {
        return new SentList.Plan(false, false, false, false, List.of(2), true, true);
    }

    /** The row as steps from flash to flash. */
    private static Automaton automaton(SentList row) {
        Automaton.Builder builder = new Automaton.Builder();
        int first = builder.nodes();
        for (int at = 0; at < row.count(); at++) {
            int node = builder.node(row.lights.get(row.light(at)), true);
            Gap before = row.gaps.get(row.gapBefore(at));
            step(builder, Automaton.START, node, before.cut(GapKind.LEAD_CUT), row.entering());
            if (at > 0) {
                step(builder, node - 1, node, before, 1);
                step(builder, node - 1, Automaton.END, before.cut(GapKind.TAIL_CUT), FreeGrammar.EARLY);
            }
            if (row.mayEndAfter(at)) {
                step(builder, node, Automaton.END, Gap.TAIL, SentList.ENDING);
            }
        }
        step(builder, Automaton.START, first, Gap.LEAD, row.firstWeight());
        return builder.build();
    }

    private static void step(Automaton.Builder builder, int from, int to, Gap gap, double weight) {
        builder.step(from, to, gap, weight, Automaton.Ends.NOTHING, "", false);
    }

    private static List<List<String>> lists() {
        List<String> codes = new ArrayList<>();
        for (int tens = 1; tens <= 3; tens++) {
            for (int ones = 1; ones <= 3; ones++) {
                codes.add("" + tens + ones);
            }
        }
        List<List<String>> lists = new ArrayList<>();
        codes.forEach(code -> lists.add(List.of(code)));
        for (String first : codes) {
            for (String second : codes) {
                if (!first.equals(second)) {
                    lists.add(List.of(first, second));
                }
            }
        }
        return lists;
    }

    /** A session of one or two codes, some of its flashes unseen, some not sent. */
    private Flashes flashes(long seed, int codes) {
        Chance chance = Chance.of(seed);
        List<List<String>> all = lists();
        List<String> list = codes == 1 ? all.get(chance.below(9)) : all.get(9 + chance.below(72));
        PulseTrain.Builder pulses = PulseTrain.builder();
        double[] wait = {chance.between(0.3, 5)};
        for (int time = 0; time < 2; time++) {
            for (String code : list) {
                for (int place = 0; place < 2; place++) {
                    for (int i = 0; i < code.charAt(place) - '0'; i++) {
                        double lit = 0.5 * (1 + 0.06 * chance.nextNormal());
                        if (chance.happens(0.06)) {
                            wait[0] += lit;
                        } else {
                            pulses.dark((long) (1e9 * wait[0]));
                            pulses.lit((long) (1e9 * lit));
                            wait[0] = 0;
                        }
                        wait[0] += 0.5 * (1 + 0.06 * chance.nextNormal());
                    }
                    wait[0] += 1.5;
                }
                wait[0] += 2;
            }
        }
        pulses.dark((long) (1e9 * (wait[0] + 0.5)));
        Flashes seen = Flashes.of(pulses.build(), true, 30_000_000, 30_000_000, 1000);
        return seen.count > 0 ? seen : flashes(seed + 1, codes);
    }

    /** Walks every path, with densities worked out without a table. */
    private static final class Enumeration {
        private static final int MOST_GHOSTS = 3;

        private final Automaton automaton;
        private final Flashes flashes;
        private final Channel channel;

        Enumeration(Automaton automaton, Flashes flashes, Channel channel) {
            this.automaton = automaton;
            this.flashes = flashes;
            this.channel = channel;
        }

        double total() {
            double total = 0;
            for (Step first : automaton.steps) {
                if (first.from() == Automaton.START) {
                    total += enter(first, -1, first.gap(), first.weight(), 0);
                }
            }
            return total;
        }

        /** Reaches a flash over a step, seen as one of the flashes after that of this index, or not seen at all. */
        private double enter(Step step, int before, Gap gap, double weight, int missed) {
            double total = 0;
            double seen = step.to() == Automaton.END ? 1 : 1 - channel.missed();
            for (int flash = before + 1; flash <= flashes.count && flash <= before + 1 + MOST_GHOSTS; flash++) {
                boolean end = step.to() == Automaton.END;
                if (end == (flash == flashes.count)) {
                    double here = weight * seen * gapDensity(gap, before, flash) * ghosts(before, flash);
                    if (here > 1e-60) {
                        total += end ? here : leave(step.to(), flash, here * lit(step.to(), flash));
                    }
                }
            }
            if (step.to() != Automaton.END && missed < Automaton.MOST_MISSED && gap.kind() != GapKind.LEAD_CUT) {
                double light = automaton.light(step.to()).seconds();
                for (Step next : automaton.steps) {
                    if (next.from() == step.to() && next.gap().kind() != GapKind.TAIL_CUT) {
                        Gap joined = joined(gap, light, next.gap());
                        total += enter(next, before, joined, weight * channel.missed() * next.weight(), missed + 1);
                    }
                }
            }
            return total;
        }

        /** A gap of any length stays one; fixed ones add up with the flash between them. */
        private static Gap joined(Gap before, double light, Gap after) {
            if (after.kind() == GapKind.TAIL) {
                return after;
            }
            if (before.kind() == GapKind.LEAD) {
                return before;
            }
            return new Gap(
                    GapKind.FIXED,
                    before.seconds() + light + after.seconds(),
                    before.squares() + squared(light) + after.squares(),
                    0,
                    0);
        }

        private double leave(int node, int flash, double weight) {
            double total = 0;
            if (weight > 0) {
                for (Step step : automaton.steps) {
                    if (step.from() == node) {
                        total += enter(step, flash, step.gap(), weight * step.weight(), 0);
                    }
                }
            }
            return total;
        }

        private double lit(int node, int flash) {
            double nominal = automaton.light(node).seconds();
            double mean = nominal * channel.scale() + channel.biasSeconds();
            double deviation = channel.deviation(squared(nominal));
            double z = (flashes.lit(flash) - mean) / deviation;
            return (Math.abs(z) < 9 ? mixed(z) / deviation : 0) + smear(flashes.lit(flash), mean);
        }

        private double ghosts(int before, int next) {
            double weight = 1;
            for (int flash = before + 1; flash < next; flash++) {
                double most = 0.65 * 0.5 * channel.scale();
                double length = flashes.lit(flash);
                double from = flash == 0 ? 0 : flashes.end[flash - 1];
                double to = next == flashes.count ? flashes.end[flash] + flashes.tailSeconds : flashes.start[next];
                weight *= Math.max(0, channel.ghost() * 2 * (1 - length / most) / most / (to - from));
            }
            return weight;
        }

        private double gapDensity(Gap gap, int before, int next) {
            double from = before < 0 ? 0 : flashes.end[before];
            double to =
                    next == flashes.count ? flashes.end[flashes.count - 1] + flashes.tailSeconds : flashes.start[next];
            double length = to - from;
            return switch (gap.kind()) {
                case FIXED -> law(length, gap.seconds() * channel.scale() - channel.biasSeconds(), gap.squares());
                case LEAD -> length < 0.13 ? 0.03 : length < 1 ? 0.5 : 0.06;
                case TAIL -> length < 1 ? 0.5 : 0.06;
                case LEAD_CUT, TAIL_CUT -> beyond(length, gap);
                case BROAD -> throw new IllegalStateException("the small format has none");
            };
        }

        private double beyond(double length, Gap gap) {
            double mean = gap.seconds() * channel.scale() - channel.biasSeconds();
            double from = (length - mean) / channel.deviation(gap.squares());
            double sum = 0;
            double step = 1e-3;
            for (double z = Math.max(from, -9); z < 9; z += step) {
                sum += step * mixed(z + step / 2);
            }
            return Math.min(1, sum);
        }

        private double law(double length, double mean, double squares) {
            double deviation = channel.deviation(squares);
            double z = (length - mean) / deviation;
            double near = Math.abs(z) < 9 ? mixed(z) / deviation : 0;
            return near + (Math.abs(z) < 9 ? smear(length, mean) : 0);
        }

        private static double smear(double length, double mean) {
            return length > 0.67 * mean && length < 1.33 * mean ? 1e-3 / mean : 0;
        }

        private static double mixed(double z) {
            return 0.99 * normal(z) + 0.01 * normal(z / 3) / 3;
        }

        private static double normal(double z) {
            return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        }

        private static double squared(double x) {
            return x * x;
        }
    }
}
