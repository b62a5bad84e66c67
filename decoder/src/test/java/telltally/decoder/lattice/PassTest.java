package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** Both passes against the sum over every path, with densities by formula. */
class PassTest {
    private static final Channel CHANNEL = new Channel(1.05, 0.02, 0.06, 0.03, 0.02, 0.03);

    /** A sender so steady that a fifth more is far out of reach, but for mishaps. */
    private static final Channel STEADY = new Channel(1.05, 0.02, 0.01, 0.005, 0.02, 0.03);

    private static final FlashFormat SESSIONS = Recordings.read("""
            {"schema": "telltally/format/1", "id": "sessions", "title": "One digit, with segments",
             "flashes_s": {"flash": 0.5},
             "code": {"places": [{"flash": "flash", "from": 1, "to": 2}]},
             "gaps": {"within_digit_s": 0.5, "between_codes_s": 4.0},
             "list": {"list_times": 2},
             "nothing_to_report": {"code": "1"},
             "sessions": {"separator_flashes": 1, "around_separator_s": 6.0, "flash": "flash", "running_test_s": 90.0,
                          "most_balance_flashes": 3}}
            """);

    private static final FlashFormat ANNOUNCED = Recordings.read("""
            {"schema": "telltally/format/1", "id": "announced", "title": "Dots and dashes, announced",
             "flashes_s": {".": 0.2, "-": 0.6},
             "code": {"signs": {"A": ".-", "E": ".", "T": "-"}, "most_signs": 2},
             "lead_in": {"lit_s": 2.5, "dark_after_s": 2.5},
             "gaps": {"within_digit_s": 0.2, "between_digits_s": 0.6, "between_codes_s": 1.4, "before_repeat_s": 3.0},
             "list": {"list_times": 2},
             "nothing_to_report": {"blink_on_s": 0.25, "blink_off_s": 0.25}}
            """);

    private final TwoDigitFormat small = new TwoDigitFormat();

    /** Dark and lit by turns, beginning with dark; nothing dark at first where the recording begins within a flash. */
    private static Flashes recording(double... seconds) {
        PulseTrain.Builder pulses = PulseTrain.builder();
        for (int i = 0; i < seconds.length; i++) {
            pulses.stay(i % 2 == 1, (long) (1e9 * seconds[i]));
        }
        return Flashes.of(pulses.build(), true, 1_000_000, 1_000_000, 1000);
    }

    private static final List<Flashes> RECORDINGS = List.of(
            // A code twice, as it is sent.
            recording(2, 0.5, 0.5, 0.5, 4, 0.5, 0.5, 0.5, 5),
            // Begun just before a flash, and just after the brink of one.
            recording(0.1, 0.55, 0.5, 0.5, 4, 0.5, 0.5, 0.5, 0.3),
            recording(0, 0.3, 0.5, 0.5, 4, 0.5, 0.5, 0.5, 0.3),
            // Ended within a flash, and within a gap.
            recording(3, 0.5, 4, 0.5, 4, 0.2),
            recording(3, 0.5, 4, 0.5, 2),
            // Short flashes where none belong: before, between, and after.
            recording(1, 0.1, 2, 0.5, 2, 0.2, 2, 0.5, 1, 0.05, 1, 0.5, 1, 0.15, 0.5, 0.1, 6),
            // Four in a row are too many to be left out.
            recording(3, 0.5, 0.8, 0.1, 0.8, 0.1, 0.8, 0.1, 0.8, 0.1, 0.8, 0.5, 3),
            // Flashes too long, gaps too short.
            recording(3, 0.64, 0.36, 0.64, 2.8, 0.5, 0.7, 0.5, 3),
            // One gap and one flash far from what a steady sender sends.
            recording(3, 0.5, 0.61, 0.5, 4.2, 0.58, 0.55, 0.5, 3),
            // A light of seconds before all, then even blinking.
            recording(
                    0.5, 3, 2, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25,
                    9),
            // Cylinders, a prompt, a code; a separator between codes.
            recording(4, 0.5, 0.5, 0.5, 60, 0.5, 30, 0.5, 5),
            recording(4, 0.5, 4, 0.5, 6, 0.5, 6, 0.5, 0.5, 0.5, 4, 0.5, 8),
            // Dots and dashes with their announcement.
            recording(1, 2.5, 2.5, 0.2, 0.2, 0.6, 0.6, 0.2, 1.4, 2.5, 2.5, 0.6, 3, 2.5, 2.5, 0.2, 1),
            recording(0, 0.5, 2.5, 0.2, 0.2, 0.6, 0.6, 0.2, 1.4, 2.5, 2.5, 0.6, 3, 2.5, 2.5, 0.2, 0),
            recording(2, 0.5, 7));

    @Test
    void the_free_pass_sums_over_every_path_of_a_format() {
        for (FlashFormat format : List.of(small.format, SESSIONS, ANNOUNCED)) {
            Automaton automaton = new FormatModel(format).grammar.automaton;
            Densities densities = new Densities(automaton);
            for (Flashes flashes : RECORDINGS) {
                double counted = new EveryPath(automaton, flashes, CHANNEL).logTotal();
                // Ways a thousand million times less likely than another into the same flash are left out; where
                // nothing
                // fits, some of them would have come to matter.
                boolean fits = counted > -35;
                assertThat(FreePass.run(densities, flashes, CHANNEL, new Lattice())
                                .logSum())
                        .as(format.id() + " " + RECORDINGS.indexOf(flashes))
                        .isCloseTo(counted, within(fits ? 1e-3 : 0.03));
            }
        }
    }

    @Test
    void the_pass_of_one_list_sums_over_every_way_of_seeing_it() {
        for (int seed = 0; seed < 12; seed++) {
            Flashes flashes = small.flashes(seed, 1 + seed % 2);
            for (List<String> list : small.lists().subList(0, 30)) {
                compare(small.sent(list.toArray(String[]::new)), flashes, TwoDigitFormat.CHANNEL);
                compare(small.sent(list.toArray(String[]::new)), cut(flashes), TwoDigitFormat.CHANNEL);
            }
        }
    }

    @Test
    void lists_with_brinks_separators_and_announcements_are_summed_too() {
        for (FlashFormat format : List.of(SESSIONS, ANNOUNCED)) {
            FormatModel model = new FormatModel(format);
            boolean sessions = format.sessions().isPresent();
            List<String> codes = sessions ? List.of("1", "2") : List.of("AT", "E");
            for (int bits = 0; bits < 16; bits++) {
                boolean separated = (bits & 3) > 0 && sessions;
                SentList.Plan plan = new SentList.Plan(
                        (bits & 1) > 0 && separated,
                        (bits & 2) > 0 && separated,
                        false,
                        false,
                        List.of(1),
                        (bits & 4) > 0,
                        (bits & 8) > 0);
                SentList row = new SentList(model, plan, codes);
                for (Flashes flashes : RECORDINGS) {
                    compare(row, flashes, CHANNEL);
                    compare(row, flashes, STEADY);
                }
            }
        }
    }

    private static void compare(SentList row, Flashes flashes, Channel channel) {
        double counted = new EveryPath(TwoDigitFormat.automaton(row), flashes, channel).logTotal();
        double log = RowPass.run(row, flashes, channel, new Lattice()).logSum();
        if (counted == Double.NEGATIVE_INFINITY) {
            assertThat(log).isEqualTo(counted);
        } else {
            // The table of the normal law is linear between its steps: coarse where all lengths are far off.
            assertThat(log).isCloseTo(counted, within(counted > -30 ? 3e-4 : 0.02));
        }
    }

    /** The same with the first flash and the last cut by the brinks of the recording. */
    private static Flashes cut(Flashes whole) {
        double[] seconds = new double[2 * whole.count];
        for (int i = 0; i < whole.count; i++) {
            seconds[2 * i] = i == 0 ? 0 : whole.start[i] - whole.end[i - 1];
            seconds[2 * i + 1] = whole.lit(i) * (i == 0 || i == whole.count - 1 ? 0.6 : 1);
        }
        return recording(seconds);
    }

    /** A row of more than 32 flashes leaves out what cannot matter; one of hundreds leaves the range of numbers. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 40})
    void a_long_list_is_summed_but_for_what_is_negligible(int loops) {
        SentList row = new SentList(
                small.model,
                new SentList.Plan(false, false, false, false, List.of(loops), true, true),
                List.of("33", "32"));
        Chance chance = Chance.of(5);
        PulseTrain.Builder pulses = PulseTrain.builder().dark(2_000_000_000L);
        for (int at = 0; at < row.count(); at++) {
            if (at > 0) {
                double dark = row.gaps.get(row.gapBefore(at)).seconds();
                pulses.dark((long) (1e9 * dark * (1 + 0.05 * chance.nextNormal())));
            }
            pulses.lit((long) (5e8 * (1 + 0.05 * chance.nextNormal())));
        }
        Flashes flashes = Flashes.of(pulses.dark(3_000_000_000L).build(), true, 1, 1, 1000);
        assertThat(flashes.count).isEqualTo(11 * loops);
        double counted = new EveryPath(TwoDigitFormat.automaton(row), flashes, CHANNEL).logTotal();
        assertThat(RowPass.run(row, flashes, CHANNEL, new Lattice()).logSum()).isCloseTo(counted, within(1e-3));
        Automaton automaton = small.model.grammar.automaton;
        assertThat(FreePass.run(new Densities(automaton), flashes, CHANNEL, new Lattice())
                        .logSum())
                .isCloseTo(new EveryPath(automaton, flashes, CHANNEL).logTotal(), within(1e-3));
    }

    @Test
    void a_pass_leaves_nothing_behind_in_what_is_used_again() {
        Automaton automaton = small.model.grammar.automaton;
        Densities densities = new Densities(automaton);
        Lattice lattice = new Lattice();
        Channel other = new Channel(0.9, -0.01, 0.02, 0.01, 0.1, 0.1);
        for (Flashes flashes : RECORDINGS) {
            for (Channel channel : List.of(CHANNEL, other)) {
                double fresh = FreePass.run(new Densities(automaton), flashes, channel, new Lattice())
                        .logSum();
                assertThat(FreePass.run(densities, flashes, channel, lattice).logSum())
                        .isEqualTo(fresh);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0.12, 0.03", "0.13, 0.5", "0.99, 0.5", "1, 0.06", "100, 0.06"})
    void who_records_seldom_begins_just_before_a_flash(double seconds, double density) {
        assertThat(Pass.leadDensity(seconds)).isEqualTo(density);
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.5", "0.99, 0.5", "1, 0.06", "100, 0.06"})
    void a_recording_mostly_ends_soon_after_the_last_flash(double seconds, double density) {
        assertThat(Pass.tailDensity(seconds)).isEqualTo(density);
    }

    @ParameterizedTest
    @CsvSource({"1.339, 0", "1.34, 0", "1.341, 0.0005", "2, 0.0005", "2.659, 0.0005", "2.66, 0", "2.661, 0"})
    void a_mishap_changes_a_length_of_two_seconds_by_up_to_a_third(double seconds, double density) {
        assertThat(Pass.smear(seconds, 2)).isEqualTo(density);
    }

    @Test
    void the_best_path_names_the_flashes_it_leads_over() {
        Flashes flashes = recording(3, 0.5, 2, 0.1, 2, 0.5, 4, 0.5, 3);
        Automaton automaton = new FormatModel(SESSIONS).grammar.automaton;
        FreePass pass = FreePass.run(new Densities(automaton), flashes, CHANNEL, new Lattice());
        int[] path = pass.bestPath();
        Lattice lattice = pass.lattice();
        assertThat(path).hasSize(4);
        assertThat(pass.flashOf(lattice.arcFrom(path[0]))).isEqualTo(-1);
        int[] flashesOfPath = new int[4];
        for (int i = 0; i < 4; i++) {
            flashesOfPath[i] = pass.flashOf(lattice.arcTo(path[i]));
        }
        // The second, too short, is left out.
        assertThat(flashesOfPath).containsExactly(0, 2, 3, 4);
        assertThat(lattice.arcTo(path[3])).isEqualTo(pass.sink());
    }
}
