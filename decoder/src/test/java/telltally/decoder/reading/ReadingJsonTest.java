package telltally.decoder.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading.Alternative;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.simulator.document.JsonDocument;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** The contract {@code telltally/reading/1}, byte for byte: outside tests rely on it. */
class ReadingJsonTest {
    private static final long SECOND = 1_000_000_000L;

    private static String text(Reading reading, String source) {
        return new ReadingJson().text(reading, source);
    }

    @Test
    void a_reading_is_one_line_with_every_key_of_the_contract() {
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        codes.put(Segment.STORED, List.of("11"));
        codes.put(Segment.PRESENT, List.of("34", "42"));
        Reading reading = new Reading(
                Optional.of(new FormatEstimate("pair-even", 0.9998, 1.02)),
                codes,
                List.of(
                        new Group(
                                GroupKind.CODE,
                                Segment.PRESENT,
                                "34",
                                0.9991,
                                6 * SECOND,
                                15_500_000_000L,
                                List.of(new Alternative("35", 0.0006))),
                        new Group(
                                GroupKind.SEPARATOR,
                                Segment.PRESENT,
                                "1",
                                1.0,
                                55 * SECOND,
                                55_500_000_000L,
                                List.of())),
                List.of(new Warning(
                        12_500_000_000L,
                        WarningKind.MISSED_FLASH,
                        "a dark gap of 1.5 s inside a digit: one flash was probably not seen")));

        assertThat(text(reading, "yard.csv"))
                .isEqualTo("{\"schema\":\"telltally/reading/1\",\"source\":\"yard.csv\","
                        + "\"format\":{\"id\":\"pair-even\",\"probability\":0.9998,\"clock_scale\":1.02},"
                        + "\"codes\":{\"present\":[\"34\",\"42\"],\"stored\":[\"11\"]},"
                        + "\"groups\":[{\"kind\":\"code\",\"segment\":\"present\",\"digits\":\"34\","
                        + "\"probability\":0.9991,\"start_s\":6.0,\"end_s\":15.5,"
                        + "\"alternatives\":[{\"digits\":\"35\",\"probability\":0.0006}]},"
                        + "{\"kind\":\"separator\",\"segment\":\"present\",\"digits\":\"1\",\"probability\":1.0,"
                        + "\"start_s\":55.0,\"end_s\":55.5,\"alternatives\":[]}],"
                        + "\"warnings\":[{\"time_s\":12.5,\"kind\":\"missed-flash\","
                        + "\"text\":\"a dark gap of 1.5 s inside a digit: one flash was probably not seen\"}]}");
    }

    @Test
    void where_nothing_was_decoded_the_format_is_null_and_a_warning_says_why() {
        Reading nothing = Reading.nothing(new Warning(0, WarningKind.NO_FLASHES, "no flash was seen"));

        assertThat(text(nothing, "-"))
                .isEqualTo("{\"schema\":\"telltally/reading/1\",\"source\":\"-\",\"format\":null,\"codes\":{},"
                        + "\"groups\":[],\"warnings\":[{\"time_s\":0.0,\"kind\":\"no-flashes\","
                        + "\"text\":\"no flash was seen\"}]}");
    }

    @Test
    void a_format_that_said_there_is_nothing_to_report_has_an_empty_list() {
        Reading blinking = new Reading(
                Optional.of(new FormatEstimate("pair-loop", 0.75, 1.0)),
                Map.of(Segment.CODES, List.of()),
                List.of(new Group(GroupKind.STEADY, Segment.CODES, "", 0.5, 1, 4_000_000_001L, List.of())),
                List.of());

        assertThat(blinking.decoded()).isTrue();
        assertThat(text(blinking, "a.vcd"))
                .isEqualTo("{\"schema\":\"telltally/reading/1\",\"source\":\"a.vcd\","
                        + "\"format\":{\"id\":\"pair-loop\",\"probability\":0.75,\"clock_scale\":1.0},"
                        + "\"codes\":{\"codes\":[]},"
                        + "\"groups\":[{\"kind\":\"steady\",\"segment\":\"codes\",\"digits\":\"\",\"probability\":0.5,"
                        + "\"start_s\":0.000000001,\"end_s\":4.000000001,\"alternatives\":[]}],\"warnings\":[]}");
    }

    @Test
    void numbers_are_rounded_to_six_places_and_never_written_with_an_exponent() {
        Reading reading = new Reading(
                Optional.of(new FormatEstimate("quad-lead", 0.0000004, 0.85000049)), Map.of(), List.of(), List.of());

        assertThat(text(reading, "x")).contains("\"probability\":0.0,\"clock_scale\":0.85}");
        assertThat(text(probability(1e-5), "x")).contains("\"probability\":0.00001,");
        assertThat(text(probability(0.99999951), "x")).contains("\"probability\":1.0,");
    }

    private static Reading probability(double probability) {
        return new Reading(
                Optional.of(new FormatEstimate("quad-lead", probability, 1)), Map.of(), List.of(), List.of());
    }

    @Test
    void a_source_with_quotes_and_line_ends_stays_one_line_of_json() throws ProblemException {
        Reading nothing = Reading.nothing(new Warning(0, WarningKind.NO_FORMAT, "none"));

        String text = text(nothing, "a \"b\"\nc\\d\u0001ü");

        assertThat(text).contains("\"source\":\"a \\\"b\\\"\\nc\\\\d\\u0001ü\"").doesNotContain("\n");
        assertThat(JsonDocument.parse(new TextFile("reading.json", text)).kind())
                .isEqualTo("an object");
    }

    @Test
    void the_locale_does_not_show() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(text(probability(0.5), "x")).contains("\"probability\":0.5,\"clock_scale\":1.0");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void every_kind_of_warning_has_a_key_of_small_letters_and_hyphens_and_no_two_the_same() {
        assertThat(List.of(WarningKind.values()))
                .extracting(WarningKind::key)
                .doesNotHaveDuplicates()
                .allSatisfy(key -> assertThat(key).matches("[a-z]+(-[a-z]+)*"));
    }
}
