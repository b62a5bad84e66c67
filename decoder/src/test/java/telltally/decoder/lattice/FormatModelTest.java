package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormatModelTest {
    private static final String TWO_PLACES = """
            "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 9}]},
            """;
    private static final String GAPS = """
            "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0, "before_repeat_s": 6.0},
            "list": {"loops": true}
            """;

    private static FormatModel model(String members) {
        return new FormatModel(Recordings.format("own", members));
    }

    /** With flashes of half a second. */
    private static FormatModel twoPlaces(String members) {
        return model("\"flashes_s\": {\"flash\": 0.5}, " + TWO_PLACES + members);
    }

    /** The clocks that a recording speaks for are those of just these lights and gaps. */
    private static void assertClock(FormatModel model, List<Double> lights, List<Double> gaps, String recording) {
        Lengths lengths = new Lengths(Recordings.flashes(recording));
        assertThat(model.clock.fits(lengths)).isEqualTo(new CoarseClock(lights, gaps).fits(lengths));
    }

    @Test
    void each_place_has_as_many_choices_as_digits_and_a_code_their_product() {
        FormatModel model = twoPlaces(GAPS);

        assertThat(model.places).isEqualTo(2);
        assertThat(model.choices(0)).isEqualTo(3);
        assertThat(model.choices(1)).isEqualTo(9);
        assertThat(model.logChoices).containsExactly(new double[] {Math.log(3), Math.log(9)}, within(1e-12));
        assertThat(model.logChoicesOfACode).isCloseTo(Math.log(27), within(1e-12));
    }

    @Test
    void a_place_beyond_the_last_has_the_choices_of_the_last() {
        assertThat(twoPlaces(GAPS).choices(2)).isEqualTo(9);
    }

    @Test
    void where_codes_are_spelled_every_place_has_the_choices_of_the_table() {
        FormatModel model = model("""
                "flashes_s": {".": 0.2, "-": 0.6},
                "code": {"signs": {"A": ".-", "N": "-.", "E": ".", "T": "-", "S": "..."}, "most_signs": 3},
                "gaps": {"within_digit_s": 0.2, "between_digits_s": 0.6, "between_codes_s": 1.4},
                "list": {"loops": true}
                """);

        assertThat(model.places).isZero();
        assertThat(model.choices(0)).isEqualTo(5);
        assertThat(model.choices(2)).isEqualTo(5);
        assertThat(model.logChoicesOfACode).isCloseTo(Math.log(5), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"6.0, 2, true", "6.0, 1, false", "4.0, 2, false"})
    void a_repeat_is_marked_by_a_gap_of_its_own_where_a_list_may_have_more_than_one_code(
            double beforeRepeat, int mostCodes, boolean marked) {
        FormatModel model = twoPlaces("""
                "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0, "before_repeat_s": %s},
                "list": {"list_times": 2, "most_codes": %d}
                """.formatted(beforeRepeat, mostCodes));

        assertThat(model.marksRepeats).isEqualTo(marked);
    }

    @Test
    void the_framing_code_is_empty_where_there_is_none() {
        assertThat(twoPlaces(GAPS).framingCode).isEmpty();
        assertThat(twoPlaces(GAPS + ", \"framing_code\": \"12\"").framingCode).isEqualTo("12");
    }

    @Test
    void light_of_a_tenth_of_the_shortest_flash_and_darkness_of_six_hundredths_of_the_shortest_gap_count() {
        FormatModel model = twoPlaces(GAPS);

        assertThat(model.leastLitNanos).isEqualTo(50_000_000);
        assertThat(model.leastDarkNanos).isEqualTo(30_000_000);
    }

    /** Midway between flash and fast flash on a logarithmic scale, from 0.1 to 0.3 of a flash. */
    @ParameterizedTest
    @CsvSource({"1000, 50000000", "100, 50000000", "25, 100000000", "16, 125000000", "4, 150000000"})
    void the_flashes_of_a_fast_list_do_not_count(int timesFaster, long leastLitNanos) {
        FormatModel model = twoPlaces(GAPS + ", \"burst\": {\"times_faster\": " + timesFaster + "}");

        assertThat(model.leastLitNanos).isEqualTo(leastLitNanos);
        assertThat(model.leastDarkNanos).isEqualTo(30_000_000);
    }

    @Test
    void even_blinking_may_be_the_shortest_of_all() {
        FormatModel model = twoPlaces(GAPS + ", \"nothing_to_report\": {\"blink_on_s\": 0.25, \"blink_off_s\": 0.125}");

        assertThat(model.leastLitNanos).isEqualTo(25_000_000);
        assertThat(model.leastDarkNanos).isEqualTo(7_500_000);
        assertClock(
                model,
                List.of(0.5, 0.25),
                List.of(0.5, 2.0, 4.0, 6.0, 0.125),
                "1 0.25 0.125 0.25 0.125 0.25 0.125 0.25 5");
    }

    @Test
    void a_lead_in_and_the_gap_after_it_are_known_to_the_clock() {
        FormatModel model = twoPlaces(GAPS + ", \"lead_in\": {\"lit_s\": 2.5, \"dark_after_s\": 0.25}");

        assertThat(model.leastDarkNanos).isEqualTo(15_000_000);
        assertClock(
                model,
                List.of(0.5, 2.5),
                List.of(0.5, 2.0, 4.0, 6.0, 0.25),
                "1 2.5 0.25 0.5 2 0.5 4 2.5 0.25 0.5 2 0.5 9");
    }

    @Test
    void the_flash_of_a_separator_and_the_gap_around_it_are_known_to_the_clock() {
        FormatModel model = model("""
                "flashes_s": {"flash": 0.5, "other": 1.5},
                "code": {"places": [{"flash": "flash", "from": 1, "to": 3}]},
                "gaps": {"within_digit_s": 0.5, "between_codes_s": 4.0},
                "list": {"list_times": 2},
                "nothing_to_report": {"code": "1"},
                "sessions": {"separator_flashes": 1, "around_separator_s": 20.0, "flash": "other",
                             "running_test_s": 90.0, "most_balance_flashes": 9}
                """);

        assertClock(model, List.of(0.5, 1.5), List.of(0.5, 4.0, 20.0), "1 0.5 4 0.5 20 1.5 20 0.5 4 0.5 30");
    }
}
