package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.lattice.CoarseClock.Fit;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Seconds;

class FormatTrialTest {
    private static final FlashFormat PAIR = GroupSearch.PAIR;

    /** Two digits of 1 to 3, with the separator 8 s apart from codes. */
    private static final FlashFormat SESSIONS = Recordings.format("sessions", """
            "flashes_s": {"flash": 0.5},
            "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 3}]},
            "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0},
            "list": {"list_times": 2, "most_codes": 3},
            "nothing_to_report": {"code": "11"},
            "sessions": {"separator_flashes": 1, "around_separator_s": 8.0, "flash": "flash",
                         "running_test_s": 90.0, "most_balance_flashes": 9}
            """);

    /** The codes 12 and 11, each sent twice. */
    private static final String TWICE_12 = "0.5 2 0.5 0.5 0.5  4  0.5 2 0.5 0.5 0.5";

    private static final String TWICE_11 = "0.5 2 0.5  4  0.5 2 0.5";

    private static final KnownNoise NOTHING = KnownNoise.NOTHING;

    private static KnownNoise clock(double scale) {
        return new KnownNoise(
                OptionalDouble.of(scale), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static FormatTrial looked(
            FlashFormat format, KnownNoise noise, LatticeStock stock, String darkAndLitSeconds, double... clocks) {
        List<Fit> fits = new ArrayList<>();
        for (double scale : clocks) {
            fits.add(new Fit(scale, 0));
        }
        return new FormatTrial(new FormatModel(format), Recordings.flashes(darkAndLitSeconds), fits, noise, stock);
    }

    private static FormatTrial ran(FlashFormat format, KnownNoise noise, String darkAndLitSeconds) {
        FormatTrial trial = looked(format, noise, new LatticeStock(), darkAndLitSeconds, 1);
        trial.run();
        return trial;
    }

    private static FormatTrial read(FlashFormat format, String darkAndLitSeconds) {
        FormatTrial trial = ran(format, NOTHING, darkAndLitSeconds);
        trial.read();
        return trial;
    }

    private static Pass pass(FlashFormat format, Flashes flashes, Channel channel) {
        return FreePass.run(new Densities(new FormatModel(format).grammar.automaton), flashes, channel, new Lattice());
    }

    private static String times(int count, String each) {
        return (each + " ").repeat(count);
    }

    @Nested
    class First_look {
        /** Code 12 in flashes and gaps a fifth longer. */
        private static final String SLOW = "3  0.6 2.4 0.6 0.6 0.6  4.8  0.6 2.4 0.6 0.6 0.6  9";

        @ParameterizedTest
        @CsvSource({"1.2, 1", "1, 1.2"})
        void of_several_clocks_the_one_that_explains_the_flashes_best_is_kept(double first, double second) {
            FormatTrial trial = looked(PAIR, NOTHING, new LatticeStock(), SLOW, first, second);

            assertThat(trial.channel).isEqualTo(Channel.firstGuess(1.2));
            assertThat(trial.logEvidence)
                    .isEqualTo(
                            pass(PAIR, trial.flashes, Channel.firstGuess(1.2)).logSum())
                    .isGreaterThan(
                            pass(PAIR, trial.flashes, Channel.firstGuess(1)).logSum());
        }

        @Test
        void where_the_clock_is_known_only_it_is_tried() {
            FormatTrial trial = looked(PAIR, clock(1.15), new LatticeStock(), SLOW, 1, 1.2);

            assertThat(trial.channel).isEqualTo(clock(1.15).in(Channel.firstGuess(1)));
            assertThat(trial.logEvidence)
                    .isEqualTo(pass(PAIR, trial.flashes, trial.channel).logSum());
        }

        @ParameterizedTest
        @CsvSource({"39, 39", "40, 40", "41, 40"})
        void the_first_forty_flashes_are_looked_at(int flashes, int lookedAt) {
            FormatTrial trial = looked(PAIR, NOTHING, new LatticeStock(), times(flashes, "1 0.5") + "9", 1);

            assertThat(trial.lookedAt()).isEqualTo(lookedAt);
            assertThat(trial.logEvidence)
                    .isEqualTo(pass(PAIR, trial.flashes.slice(0, lookedAt), trial.channel)
                            .logSum());
        }
    }

    /** Where lattices go that are needed no more. */
    @Nested
    class Stock {
        private final LatticeStock stock = new LatticeStock();
        private final Lattice first = stocked();
        private final Lattice second = stocked();

        private Lattice stocked() {
            Lattice lattice = new Lattice();
            Flashes flash = Recordings.flashes("1 0.5 1");
            stock.giveBack(FreePass.run(
                    new Densities(new FormatModel(PAIR).grammar.automaton), flash, Channel.firstGuess(1), lattice));
            return lattice;
        }

        /** Taken last in, first out: the first clock is tried with the second lattice. */
        @Test
        void the_lattice_of_a_clock_that_fits_worse_is_given_back() {
            looked(PAIR, NOTHING, stock, First_look.SLOW, 1.2, 1);

            assertThat(stock.take()).isSameAs(first);
            assertThat(stock.take()).isNotSameAs(second);
        }

        @Test
        void the_lattice_of_a_clock_that_was_best_until_another_came_is_given_back() {
            looked(PAIR, NOTHING, stock, First_look.SLOW, 1, 1.2);

            assertThat(stock.take()).isSameAs(second);
            assertThat(stock.take()).isNotSameAs(first);
        }

        @Test
        void who_is_dismissed_gives_back_what_it_held() {
            FormatTrial trial = looked(PAIR, NOTHING, stock, First_look.SLOW, 1.2);
            trial.dismiss();

            assertThat(stock.take()).isSameAs(second);
        }

        @Test
        void who_has_read_gives_back_what_it_held() {
            FormatTrial trial = looked(PAIR, NOTHING, stock, First_look.SLOW, 1.2);
            trial.run();
            trial.read();

            assertThat(List.of(stock.take(), stock.take())).containsExactlyInAnyOrder(first, second);
        }
    }

    @Nested
    class Channel_fitted {
        @Test
        void the_clock_of_the_sender_is_found() {
            FormatTrial trial = ran(PAIR, NOTHING, "3  0.55 2.2 0.55 0.55 0.55  4.4  0.55 2.2 0.55 0.55 0.55  9");

            assertThat(trial.channel.scale()).isCloseTo(1.1, within(0.005));
            assertThat(trial.channel.biasSeconds()).isCloseTo(0, within(0.005));
        }

        @Test
        void what_is_known_of_the_noise_is_not_fitted() {
            KnownNoise known = new KnownNoise(
                    OptionalDouble.of(1.03), OptionalDouble.of(0.07), OptionalDouble.of(0.2), OptionalDouble.of(0.1));
            Channel channel = ran(PAIR, known, "3 " + TWICE_12 + " 9").channel;

            assertThat(channel.scale()).isEqualTo(1.03);
            assertThat(channel.jitter()).isEqualTo(0.07);
            assertThat(channel.missed()).isEqualTo(0.2);
            assertThat(channel.ghost()).isEqualTo(0.1);
        }

        /** Fitted to the first look, then to the whole until it hardly changes; the last would need a fourth run. */
        @ParameterizedTest
        @CsvSource({"0, 1", "1, 2", "4, 3", "3, 3"})
        void it_is_fitted_again_until_it_settles(long seed, int settled) {
            String recording = scattered(seed);
            FormatTrial trial = looked(PAIR, NOTHING, new LatticeStock(), recording, 1);
            Automaton automaton = trial.model.grammar.automaton;
            Flashes beginning = trial.flashes.slice(0, trial.lookedAt());
            List<Channel> fitted = new ArrayList<>();
            fitted.add(ChannelFit.fitted(pass(PAIR, beginning, trial.channel), automaton, beginning, trial.channel));
            for (int i = 0; i < 4; i++) {
                Channel before = fitted.get(i);
                fitted.add(ChannelFit.fitted(pass(PAIR, trial.flashes, before), automaton, trial.flashes, before));
            }
            trial.run();

            int at = 0;
            while (at < 2 && !fitted.get(at + 1).nearly(fitted.get(at))) {
                at++;
            }
            assertThat(at + 1).isEqualTo(settled);
            assertThat(trial.channel).isEqualTo(fitted.get(at));
        }
    }

    @Nested
    class Evidence {
        private static final String SOME = "3 " + TWICE_12 + " 9";

        /** What the clock adds to the sum over all paths. */
        private double prior(double scale) {
            FormatTrial trial = ran(PAIR, clock(scale), SOME);
            return trial.logEvidence - pass(PAIR, trial.flashes, trial.channel).logSum();
        }

        /**
         * Densities of the logarithm of the clock: nominal to 0.004 with a weight of 20, to 0.025 with one of 5, and up
         * to a quarter either way with one of 1.3, beyond which they fall with a deviation of 0.04.
         */
        @Test
        void a_clock_near_nominal_is_usual_and_a_far_one_is_not() {
            assertThat(prior(1)).isCloseTo(Math.log(26.3), within(1e-9));
            assertThat(prior(Math.exp(0.004)))
                    .isCloseTo(Math.log(20 * Math.exp(-0.5) + 5 * Math.exp(-0.0128) + 1.3), within(1e-9));
            assertThat(prior(Math.exp(-0.025)))
                    .isCloseTo(Math.log(20 * Math.exp(-19.53125) + 5 * Math.exp(-0.5) + 1.3), within(1e-9));
            assertThat(prior(Math.exp(0.2))).isCloseTo(Math.log(1.3), within(1e-9));
            assertThat(prior(Math.exp(-0.223 - 0.08))).isCloseTo(Math.log(1.3) - 2, within(1e-9));
            assertThat(prior(Math.exp(0.223 + 0.12))).isCloseTo(Math.log(1.3) - 4.5, within(1e-9));
        }

        @Test
        void no_clock_is_less_usual_than_one_in_a_million_million() {
            assertThat(prior(Math.exp(0.9))).isCloseTo(-12 * Math.log(10), within(1e-9));
        }

        @Test
        void the_lists_found_add_what_they_are_evidence_of() {
            FormatTrial trial = ran(SESSIONS, NOTHING, "3 " + TWICE_12 + " 8 0.5 8 " + TWICE_11 + " 9");
            double before = trial.logEvidence;
            trial.read();

            assertThat(trial.regions).hasSize(2);
            double added = 0;
            for (Region region : trial.regions) {
                added += region.structure.logEvidence;
            }
            assertThat(added).isGreaterThan(1);
            assertThat(trial.logEvidence).isCloseTo(before + added, within(1e-9));
        }

        /** Evenly likely on a logarithmic scale over a range of 13.8 for flashes, 20.7 for gaps: densities 1 / (13.8 x). */
        @Test
        void the_gain_is_against_lengths_evenly_likely_on_a_logarithmic_scale() {
            FormatTrial trial = read(PAIR, "3  0.5 2.2 0.6 0.5 0.4  9");
            double any = 1 / (13.8 * 0.5) / (20.7 * 2.2) / (13.8 * 0.6) / (20.7 * 0.5) / (13.8 * 0.4);

            // The decoder's own logarithm is good to six places.
            assertThat(trial.gainAFlash()).isCloseTo((trial.logEvidence - Math.log(any)) / 3, within(5e-6));
        }

        @Test
        void the_share_of_flashes_that_nothing_explains_is_told() {
            assertThat(read(PAIR, "3 " + TWICE_12 + " 9").unexplainedShare()).isZero();
            assertThat(read(PAIR, "3  20 9 9  20  " + TWICE_12 + " 9").unexplainedShare())
                    .isEqualTo(0.25);
        }
    }

    @Nested
    class Segments {
        private List<Segment> segments(FormatTrial trial) {
            return trial.regions.stream().map(region -> region.segment).toList();
        }

        private List<Segment> segments(String darkAndLitSeconds) {
            return segments(read(SESSIONS, darkAndLitSeconds));
        }

        @Test
        void a_format_without_segments_has_one_list() {
            FormatTrial trial = read(PAIR, "3 " + TWICE_12 + " 5.5 " + TWICE_12 + " 9");

            assertThat(segments(trial)).containsExactly(Segment.CODES);
            trial.settle();
            assertThat(trial.regions.get(0).codes).containsExactly("12");
        }

        @Test
        void codes_before_the_separator_are_present_and_those_after_it_are_stored() {
            FormatTrial trial = read(SESSIONS, "3 " + TWICE_12 + " 8 0.5 8 " + TWICE_11 + " 9");
            trial.settle();

            assertThat(segments(trial)).containsExactly(Segment.PRESENT, Segment.STORED);
            assertThat(trial.regions.get(0).codes).containsExactly("12");
            assertThat(trial.regions.get(1).codes).containsExactly("11");
        }

        @Test
        void a_separator_that_was_not_seen_parts_codes_all_the_same() {
            FormatTrial trial = read(SESSIONS, "3 " + TWICE_12 + " 16.5 " + TWICE_11 + " 12");
            trial.settle();

            assertThat(segments(trial)).containsExactly(Segment.PRESENT, Segment.STORED);
            assertThat(trial.regions.get(0).codes).containsExactly("12");
            assertThat(trial.regions.get(1).codes).containsExactly("11");
        }

        @Test
        void a_separator_alone_has_no_list() {
            assertThat(segments("0.1 0.5 8 " + TWICE_12 + " 9")).containsExactly(Segment.STORED);
        }

        @Test
        void flashes_that_nothing_explains_are_no_part_of_a_list() {
            FormatTrial trial = read(SESSIONS, "3 " + TWICE_12 + " 20 9 20 " + TWICE_12 + " 11");

            assertThat(trial.finder().groups).extracting(found -> found.kind).contains(GroupKind.UNREADABLE);
            assertThat(trial.regions.get(0).structure.columns.get(0).evidence().groups)
                    .extracting(found -> found.kind)
                    .containsOnly(GroupKind.CODE);
        }

        @Test
        void codes_after_cylinder_flashes_or_a_prompt_are_those_of_the_running_test() {
            FormatTrial cylinders = read(SESSIONS, "3  0.5 0.5 0.5  60 " + TWICE_12 + " 12");
            FormatTrial prompt = read(SESSIONS, "3  0.5 0.5 0.5  60  0.5  60 " + TWICE_12 + " 12");

            assertThat(cylinders.has(GroupKind.CYLINDERS)).isTrue();
            assertThat(cylinders.has(GroupKind.PROMPT)).isFalse();
            assertThat(prompt.has(GroupKind.PROMPT)).isTrue();
            assertThat(segments(cylinders)).containsExactly(Segment.RUNNING);
            assertThat(segments(prompt)).containsExactly(Segment.RUNNING);
        }

        /** Of codes alone, with 8 s around a separator: one may follow 10 s after them, not any more later on. */
        @Test
        void codes_alone_are_present_where_a_separator_may_still_come() {
            assertThat(segments("3 " + TWICE_12 + " 9.99")).containsExactly(Segment.PRESENT);
            assertThat(segments("3 " + TWICE_12 + " 10.1")).containsExactly(Segment.STORED);
        }

        @Test
        void codes_alone_that_begin_midway_may_well_be_the_stored_ones() {
            assertThat(segments("0.1 0.5 0.5 0.5  4 " + TWICE_12 + " 4")).containsExactly(Segment.STORED);
        }

        /** Long before codes without an end of the running test: more than 10.4 s. */
        @Test
        void codes_alone_after_long_darkness_are_those_of_the_running_test() {
            assertThat(segments("10.3 " + TWICE_12 + " 12")).containsExactly(Segment.STORED);
            assertThat(segments("10.5 " + TWICE_12 + " 12")).containsExactly(Segment.RUNNING);
        }

        /** A quarter and three tenths more than the 8 s, with a clock known to be exact. */
        @Test
        void just_as_long_as_that_is_neither_short_nor_long_enough() {
            for (String darkAndLitSeconds : List.of("3 " + TWICE_12 + " 10", "10.4 " + TWICE_12 + " 12")) {
                FormatTrial trial = ran(SESSIONS, clock(1), darkAndLitSeconds);
                trial.read();
                assertThat(segments(trial)).containsExactly(Segment.STORED);
            }
        }

        @Test
        void how_long_a_separator_takes_goes_by_the_clock_of_the_sender() {
            String fast = "3  0.4 1.6 0.4 0.4 0.4  3.2  0.4 1.6 0.4 0.4 0.4 ";

            assertThat(segments(fast + "7.9")).containsExactly(Segment.PRESENT);
            assertThat(segments(fast + "8.1")).containsExactly(Segment.STORED);
        }
    }

    @Nested
    class Lists {
        /** What the structure of a list would be worth. */
        private double evidence(FormatTrial trial, int region, boolean startsMidway, boolean stopsEarly) {
            List<Found> groups = new ArrayList<>();
            for (Found group : trial.finder().groups) {
                // What ended before its first digit did is no sending.
                boolean sending = group.kind == GroupKind.CODE && !group.signs.isEmpty();
                if (sending && (region == 0) == (group.firstFlash < separator(trial))) {
                    groups.add(group);
                }
            }
            return new ListStructure(trial.model, groups, startsMidway, stopsEarly).logEvidence;
        }

        private int separator(FormatTrial trial) {
            return trial.finder().groups.stream()
                    .filter(group -> group.kind == GroupKind.SEPARATOR)
                    .findFirst()
                    .map(group -> group.firstFlash)
                    .orElse(Integer.MAX_VALUE);
        }

        @Test
        void only_the_first_list_may_have_begun_before_the_recording() {
            FormatTrial trial = read(SESSIONS, "0.1 0.5 0.5 0.5  4  0.5 2 0.5 0.5 0.5  8 0.5 8 " + TWICE_11 + " 9");

            assertThat(trial.finder().startsMidway).isTrue();
            assertThat(trial.regions.get(0).structure.logEvidence)
                    .isEqualTo(evidence(trial, 0, true, false))
                    .isNotEqualTo(evidence(trial, 0, false, false));
            assertThat(trial.regions.get(1).structure.logEvidence)
                    .isEqualTo(evidence(trial, 1, false, false))
                    .isNotEqualTo(evidence(trial, 1, true, false));
        }

        @Test
        void a_list_after_one_group_that_the_recording_began_in_may_have_begun_before_it() {
            FormatTrial trial = read(SESSIONS, "0.1 0.5 8 " + TWICE_11 + " 9");

            assertThat(trial.finder().startsMidway).isTrue();
            assertThat(trial.finder().groups.get(0).kind).isEqualTo(GroupKind.SEPARATOR);
            assertThat(trial.regions.get(0).structure.logEvidence)
                    .isEqualTo(evidence(trial, 1, true, false))
                    .isNotEqualTo(evidence(trial, 1, false, false));
        }

        @Test
        void only_the_last_list_may_go_on_after_the_recording() {
            FormatTrial trial = read(SESSIONS, "3 " + TWICE_12 + " 8 0.5 8  0.5 2 0.5  4  0.5 0.3");

            assertThat(trial.finder().stopsEarly).isTrue();
            assertThat(trial.regions.get(0).structure.logEvidence)
                    .isEqualTo(evidence(trial, 0, false, false))
                    .isNotEqualTo(evidence(trial, 0, false, true));
            assertThat(trial.regions.get(1).structure.logEvidence)
                    .isEqualTo(evidence(trial, 1, false, true))
                    .isNotEqualTo(evidence(trial, 1, false, false));
        }
    }

    /** Codes 12 over and over, 60 flashes in all, of which the lengths scatter and later ones are longer. */
    static String scattered(long seed) {
        Chance chance = Chance.of(seed);
        double jitter = chance.between(0, 0.2);
        double later = chance.between(0.8, 1.25);
        double[] nominal = {0.5, 2, 0.5, 0.5, 0.5, 4};
        StringBuilder text = new StringBuilder("3");
        for (int i = 0; i < 120; i++) {
            double scale = (i < 80 ? 1 : later) * Math.max(0.3, 1 + jitter * chance.nextNormal());
            text.append(' ').append(Seconds.text((long) (1e9 * nominal[i % 6] * scale)));
        }
        return text.toString();
    }
}
