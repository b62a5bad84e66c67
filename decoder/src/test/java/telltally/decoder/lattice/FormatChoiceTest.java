package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.decoder.lattice.CoarseClock.Fit;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Seconds;

/** In which of several formats a recording is read, and when in none. */
class FormatChoiceTest {
    private static final FlashFormat LOOP = loop("loop", "0.5", "2", "4", "");
    /** The same with a gap between codes that is a little longer. */
    private static final FlashFormat LONGER = loop("longer", "0.5", "2", "4.6", "");

    /** Two digits of 1 to 3 over and over; all flashes and the gaps within digits are as long as each other. */
    private static FlashFormat loop(String id, String flash, String digits, String codes, String more) {
        return Recordings.format(id, """
                "flashes_s": {"flash": %s},
                "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 3}]},
                "gaps": {"within_digit_s": %s, "between_digits_s": %s, "between_codes_s": %s},
                "list": {"loops": true}%s
                """.formatted(flash, flash, digits, codes, more));
    }

    private static final String CODE_11 = "0.5 2 0.5 ";
    private static final String CODE_12 = "0.5 2 0.5 0.5 0.5 ";
    private static final String CODE_13 = "0.5 2 0.5 0.5 0.5 0.5 0.5 ";

    private final LatticeDecoder decoder = new LatticeDecoder();

    private Reading read(String darkAndLitSeconds, FlashFormat... candidates) {
        return decoder.decode(Recordings.train(darkAndLitSeconds), List.of(candidates));
    }

    private static String format(Reading reading) {
        return reading.format().orElseThrow().id();
    }

    @Test
    void it_names_itself() {
        assertThat(decoder.id()).isEqualTo("lattice");
    }

    @Nested
    class None {
        @Test
        void darkness_has_no_flash_in_any_format() {
            Reading reading = read("60", LOOP, LONGER);

            assertThat(reading.format()).isEmpty();
            assertThat(reading.warnings())
                    .containsExactly(new Warning(0, WarningKind.NO_FLASHES, "no flash in the whole recording"));
        }

        /** More than a million seconds, beyond what may be unexplained: no format at all was possible, and it broke off. */
        @ParameterizedTest
        @ValueSource(strings = {"3 0.5 2000000 0.5 3", "3 2000000 3", "3 0.5 0.5 0.5 3000000 0.5 0.5 0.5 3"})
        void flashes_and_gaps_of_weeks_are_in_no_format(String darkAndLitSeconds) {
            Reading reading = read(darkAndLitSeconds, LOOP, LONGER);
            assertThat(reading.format()).isEmpty();
            assertThat(reading.warnings()).extracting(Warning::kind).containsExactly(WarningKind.NO_FORMAT);
        }

        /** Flashes of 9 s, 20 s apart, are nothing that the format sends. */
        @Test
        void three_tenths_of_the_flashes_may_be_unexplained_and_no_more() {
            String sevenFlashes = CODE_12 + "4 " + CODE_13 + "9";
            Reading three = read("3 " + "9 20 ".repeat(3) + sevenFlashes, LOOP);
            Reading four = read("3 " + "9 20 ".repeat(4) + sevenFlashes, LOOP);

            assertThat(three.codes()).isEqualTo(Map.of(Segment.CODES, List.of("12", "13")));
            assertThat(four.codes()).isEmpty();
            assertThat(four.format()).isEmpty();
            assertThat(four.warnings())
                    .containsExactly(new Warning(
                            3_000_000_000L,
                            WarningKind.NO_FORMAT,
                            "no format of the candidates explains these flashes"));
        }

        /** Each length of code 12 over and over scattered on a logarithmic scale. */
        private static String scattered(int flashes, double deviation, long seed) {
            Chance chance = Chance.of(seed);
            double[] nominal = {0.5, 2, 0.5, 0.5, 0.5, 4};
            StringBuilder text = new StringBuilder("3");
            for (int i = 0; i < 2 * flashes - 1; i++) {
                double seconds = nominal[i % 6] * StrictMath.exp(deviation * chance.nextNormal());
                text.append(' ').append(Seconds.text((long) (1e9 * seconds)));
            }
            return text.append(" 9").toString();
        }

        /** A gain of 1.9 for each flash is wanted from 20 flashes on, one of 2.5 from 40 on. */
        @ParameterizedTest
        @CsvSource({
            "19, 0.6, 0, true",
            "20, 0.4, 3, false",
            "20, 0.4, 2, true",
            "39, 0.4, 2, false",
            "39, 0.4, 5, true",
            "40, 0.4, 1, false",
            "40, 0.3, 5, true"
        })
        void many_flashes_must_speak_for_the_format_more_clearly(
                int flashes, double deviation, long seed, boolean read) {
            String recording = scattered(flashes, deviation, seed);
            double gain = Recordings.trial(LOOP, recording).gainAFlash();
            double wanted = flashes < 20 ? Double.NEGATIVE_INFINITY : flashes < 40 ? 1.9 : 2.5;

            assertThat(gain).isBetween(0.5, 3.0);
            assertThat(gain >= wanted).isEqualTo(read);
            assertThat(read(recording, LOOP).format().isPresent()).isEqualTo(read);
        }
    }

    @Nested
    class One_of_several {
        /** Bayes' rule with equal chances beforehand. */
        @Test
        void the_probability_of_a_format_is_its_share_of_the_evidence_of_all() {
            FlashFormat between = loop("between", "0.5", "2", "4.3", "");
            String recording = "3 " + CODE_12 + "4.15 " + CODE_12 + " 9";
            List<FormatTrial> trials = new ArrayList<>();
            for (FlashFormat format : List.of(LONGER, LOOP, between)) {
                trials.add(Recordings.trial(format, recording));
            }
            double sum = 0;
            for (FormatTrial trial : trials) {
                sum += Math.exp(trial.logEvidence - trials.get(2).logEvidence);
            }
            Reading reading = read(recording, LONGER, LOOP, between);

            assertThat(format(reading)).isEqualTo("between");
            assertThat(1 / sum).isBetween(0.3, 0.7);
            assertThat(reading.format().orElseThrow().probability()).isCloseTo(1 / sum, within(1e-12));
        }

        @Test
        void it_does_not_matter_which_is_named_first() {
            String recording = "3 " + (CODE_12 + "4.5 ").repeat(5) + CODE_12 + "9";

            assertThat(format(read(recording, LOOP, LONGER))).isEqualTo("longer");
            assertThat(read(recording, LONGER, LOOP)).isEqualTo(read(recording, LOOP, LONGER));
        }

        @Test
        void each_is_read_by_its_own_idea_of_what_a_flash_is() {
            FlashFormat eclipses = loop("eclipses", "0.5", "2", "4", ", \"rests_lit\": true");
            String flashes = (CODE_12 + "4 ").repeat(3) + CODE_12 + "9";

            for (List<FlashFormat> candidates : List.of(List.of(LOOP, eclipses), List.of(eclipses, LOOP))) {
                Reading lit = decoder.decode(Recordings.train("3 " + flashes), candidates);
                Reading dark = decoder.decode(Recordings.train("0 3 " + flashes), candidates);
                assertThat(format(lit)).isEqualTo("loop");
                assertThat(format(dark)).isEqualTo("eclipses");
                assertThat(dark.codes()).isEqualTo(lit.codes()).isEqualTo(Map.of(Segment.CODES, List.of("12")));
            }
        }

        @Test
        void one_whose_flashes_are_all_too_long_does_not_hinder_another() {
            FlashFormat quick = loop("quick", "0.03", "0.12", "0.24", "");
            String recording = "3 " + "0.03 0.12 0.03 0.03 0.03 0.24 ".repeat(3) + "0.03 0.12 0.03 0.03 0.03 9";

            for (List<FlashFormat> candidates : List.of(List.of(LOOP, quick), List.of(quick, LOOP))) {
                Reading reading = decoder.decode(Recordings.train(recording), candidates);
                assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("12")));
                assertThat(reading.format().orElseThrow().probability()).isEqualTo(1);
            }
        }

        @Test
        void a_known_clock_that_is_far_from_nominal_is_believed() {
            FlashFormat slow = loop("slow", "2", "8", "16", "");
            String recording = "3 " + "2 8 2 2 2 16 ".repeat(30) + "2 8 2 2 2 40";
            KnownNoise clock = new KnownNoise(
                    OptionalDouble.of(4), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

            assertThat(format(read(recording, LOOP, slow))).isEqualTo("slow");
            assertThat(format(decoder.decode(Recordings.train(recording), List.of(LOOP, slow), clock)))
                    .isEqualTo("loop");
        }
    }

    @Nested
    class Given_up {
        private static double coarse(FlashFormat format, String recording) {
            FormatModel model = new FormatModel(format);
            return model.clock
                    .fits(new Lengths(Recordings.flashes(recording)))
                    .get(0)
                    .score();
        }

        private static FormatTrial looked(FlashFormat format, String recording) {
            FormatModel model = new FormatModel(format);
            Flashes flashes = Recordings.flashes(recording);
            List<Fit> clocks = model.clock.fits(new Lengths(flashes));
            return new FormatTrial(model, flashes, clocks, KnownNoise.NOTHING, new LatticeStock());
        }

        private static double firstLook(FlashFormat format, String recording) {
            return looked(format, recording).logEvidence;
        }

        /** With missed flashes that look like a gap of another format: 60 and a half for each flash may be behind. */
        @Test
        void a_format_whose_lengths_fit_worse_is_looked_at_all_the_same() {
            FlashFormat right = loop("right", "0.5", "4", "8", "");
            FlashFormat leads = loop("leads", "0.5", "4", "8", ", \"lead_in\": {\"lit_s\": 3, \"dark_after_s\": 1.5}");
            String code = "0.5 4 0.5 0.5 0.5 8 ";
            String missed = "0.5 4 0.5 1.5 0.5 8 ";
            String recording = "3 " + (code + code + code + missed).repeat(12) + code.repeat(2) + "0.5 4 0.5 20";
            double behind = coarse(leads, recording) - coarse(right, recording);

            assertThat(behind).isBetween(65.0, 60 + 70.0);
            assertThat(format(read(recording, right, leads))).isEqualTo("right");
        }

        private static String turning(String firstGap) {
            return "3 " + (CODE_11 + firstGap + " ").repeat(20) + (CODE_11 + "4 ").repeat(60) + CODE_11 + "9";
        }

        /** Forty flashes: 16 and 0.7 for each of them. */
        @Test
        void a_format_that_explains_the_first_flashes_a_little_worse_is_not_given_up() {
            String recording = turning("4.5");
            double behind = firstLook(LONGER, recording) - firstLook(LOOP, recording);

            assertThat(behind).isBetween(17.0, 43.0);
            assertThat(format(read(recording, LOOP, LONGER))).isEqualTo("loop");
        }

        @Test
        void a_format_far_behind_after_the_first_flashes_is_given_up_whatever_comes() {
            String recording = turning("5");
            double behind = firstLook(LONGER, recording) - firstLook(LOOP, recording);

            assertThat(behind).isGreaterThan(45);
            assertThat(Recordings.trial(LOOP, recording).logEvidence)
                    .isGreaterThan(Recordings.trial(LONGER, recording).logEvidence);
            assertThat(format(read(recording, LOOP, LONGER))).isEqualTo("longer");
        }

        /** Two codes by turns are a list to one format; to the other, which sends one code alone, all are mistakes. */
        @Test
        void a_format_far_behind_before_lists_are_looked_for_is_given_up_whatever_they_say() {
            FlashFormat alone = Recordings.format("alone", """
                    "flashes_s": {"flash": 0.5},
                    "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 3}]},
                    "gaps": {"within_digit_s": 0.5, "between_digits_s": 2, "between_codes_s": 4.6},
                    "list": {"loops": true, "most_codes": 1}
                    """);
            String recording = "3 " + (CODE_11 + "4.4 " + CODE_13 + "4.4 ").repeat(10) + CODE_11 + "9";
            FormatTrial loop = looked(LOOP, recording);
            FormatTrial one = looked(alone, recording);

            assertThat(firstLook(alone, recording) - firstLook(LOOP, recording)).isLessThan(43);
            loop.run();
            one.run();
            assertThat(one.logEvidence - loop.logEvidence).isGreaterThan(41);
            loop.read();
            one.read();
            assertThat(loop.logEvidence).isGreaterThan(one.logEvidence);
            assertThat(format(read(recording, LOOP, alone))).isEqualTo("alone");
        }
    }
}
