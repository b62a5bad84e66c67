package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import telltally.decoder.reading.Reading;
import telltally.simulator.chance.Chance;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatReader;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** Outside check: published codes and rhythms, written as an instructor would write a format, read from published lists. */
class OwnFormatTest {
    private static final String HEAD = "{\"schema\": \"telltally/format/1\", \"title\": \"t\", \"id\": \"own\", ";

    /** Recommendation ITU-R M.1677-1 (10/2009), sections 1.1 and 2: dash 3 dots, gaps 1, 3 and 7; 20 words a minute. */
    private static final String TELEGRAPHY = HEAD
            + "\"flashes_s\": {\".\": 0.06, \"-\": 0.18},"
            + "\"code\": {\"most_signs\": 20, \"signs\": {\"A\": \".-\", \"I\": \"..\", \"O\": \"---\", \"P\": \".--.\","
            + " \"R\": \".-.\", \"S\": \"...\", \"E\": \".\", \"T\": \"-\", \"5\": \".....\"}},"
            + "\"gaps\": {\"within_digit_s\": 0.06, \"between_digits_s\": 0.18, \"between_codes_s\": 0.42},"
            + "\"list\": {}}";

    static FlashFormat telegraphy() {
        return format(TELEGRAPHY);
    }

    private static FlashFormat format(String json) {
        try {
            return FormatReader.read(new TextFile("own.json", json));
        } catch (ProblemException e) {
            throw new AssertionError(e.problems().toString(), e);
        }
    }

    private static String counted(String id, String flashes, String places, String gaps, boolean restsLit) {
        return HEAD.replace("\"own\"", '"' + id + '"') + "\"rests_lit\": " + restsLit + ", \"flashes_s\": {" + flashes
                + "}, \"code\": {\"places\": [" + places + "]}, \"gaps\": {" + gaps
                + "}, \"list\": {\"loops\": true, \"most_codes\": 1}}";
    }

    private static Reading read(PulseTrain train, FlashFormat own) {
        List<FlashFormat> candidates = new ArrayList<>(Trains.SHIPPED);
        candidates.add(own);
        return new PlainDecoder().decode(train, candidates);
    }

    /** Dots and dashes by the published table, blanks between letters, bars between words. */
    private static PulseTrain telegraph(String dotsAndDashes) {
        long unitNanos = 60_000_000L;
        PulseTrain.Builder train = PulseTrain.builder().dark(1_000_000_000L);
        boolean gap = false;
        for (int i = 0; i < dotsAndDashes.length(); i++) {
            char each = dotsAndDashes.charAt(i);
            switch (each) {
                case ' ' -> train.dark(3 * unitNanos);
                case '|' -> train.dark(7 * unitNanos);
                default -> train.dark(gap ? unitNanos : 0).lit(each == '.' ? unitNanos : 3 * unitNanos);
            }
            gap = each == '.' || each == '-';
        }
        return train.dark(1_000_000_000L).build();
    }

    @ParameterizedTest
    @EnumSource(names = {"CLEAN", "SCALED", "JITTERED", "BOUNCED", "ALL"})
    void telegraphy_is_spelled_out_whatever_the_sender_does(Impairment impairment) {
        PulseTrain clean = telegraph(".--. .- .-. .. ...|... --- ...|.|-|.....");
        for (int seed = 0; seed < 20; seed++) {
            Reading reading = read(impairment.spoil(clean, Chance.of(seed)), format(TELEGRAPHY));

            assertThat(reading.codes())
                    .as("seed " + seed)
                    .isEqualTo(Map.of(Segment.CODES, List.of("PARIS", "SOS", "E", "T", "5")));
        }
    }

    @Test
    void a_sign_that_the_table_lacks_makes_its_word_unreadable_and_no_other() {
        Reading reading = read(telegraph("... --- ...|.. ----|.--. .- .-. .. ...|... --- ..."), format(TELEGRAPHY));

        assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("SOS", "PARIS")));
        assertThat(Trains.told(reading)).anyMatch(group -> group.startsWith("unreadable"));
    }

    /** IALA E-110 edition 4, table 3: south mark, six quick flashes and a long one in 15 s. */
    @Test
    void the_south_mark_is_six_quick_flashes_and_a_long_one() {
        FlashFormat south = format(counted(
                "south",
                "\"quick\": 0.5, \"long\": 2.0",
                "{\"flash\": \"quick\", \"from\": 6, \"to\": 6}, {\"flash\": \"long\", \"from\": 1, \"to\": 1}",
                "\"within_digit_s\": 0.5, \"between_digits_s\": 0.5, \"before_repeat_s\": 7.0",
                false));
        String period = "0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 2 7 ";

        assertThat(read(Trains.of("1 " + period.repeat(2)), south).codes())
                .isEqualTo(Map.of(Segment.CODES, List.of("61")));
    }

    /** IHO M-12, June 2004: Oc(2+1) 12s as dark 1, lit 1, dark 1, lit 4, dark 1, lit 4. */
    @Test
    void the_eclipses_of_an_occulting_light_are_counted() {
        FlashFormat occulting = format(counted(
                "occulting",
                "\"eclipse\": 1.0",
                "{\"flash\": \"eclipse\", \"from\": 2, \"to\": 2}, {\"flash\": \"eclipse\", \"from\": 1, \"to\": 1}",
                "\"within_digit_s\": 1.0, \"between_digits_s\": 4.0, \"before_repeat_s\": 4.0",
                true));
        PulseTrain lamp = Trains.of("3 " + "1 1 1 4 1 4 ".repeat(3)).inverted();

        assertThat(lamp.litAtStart()).isTrue();
        assertThat(read(lamp, occulting).codes()).isEqualTo(Map.of(Segment.CODES, List.of("21")));
    }

    /** ISO 8201: three pulses of 0.5 s, gaps of 0.5 s, then off for 1.5 s. And four of 0.1 s in 5.8 s (a sounder's data sheet). */
    @ParameterizedTest
    @CsvSource({
        "0.5, 1.5, 3, 0.5 0.5 0.5 0.5 0.5 1.5",
        "0.1, 5.1, 4, 0.1 0.1 0.1 0.1 0.1 0.1 0.1 5.1",
    })
    void published_alarm_signals_are_counted(String flash, String pause, String count, String cycle) {
        FlashFormat alarm = format(counted(
                "alarm",
                "\"pulse\": " + flash,
                "{\"flash\": \"pulse\", \"from\": 1, \"to\": 6}",
                "\"within_digit_s\": " + flash + ", \"before_repeat_s\": " + pause,
                false));
        PulseTrain train = Trains.of("1 " + (cycle + " ").repeat(3));

        assertThat(new PlainDecoder().decode(train, List.of(alarm)).codes())
                .isEqualTo(Map.of(Segment.CODES, List.of(count)));
    }

    /** Decadic signalling: breaks of 61 ms, makes of 39 ms, 800 ms between digits; 0 is ten pulses. The line rests closed. */
    @Test
    void dialled_digits_are_breaks_of_a_closed_line() {
        StringBuilder digits = new StringBuilder();
        for (int i = 1; i <= 10; i++) {
            digits.append(i == 1 ? "" : ", ")
                    .append('"')
                    .append(i % 10)
                    .append("\": ")
                    .append(i);
        }
        String place = "{\"flash\": \"break\", \"counts\": {" + digits + "}}";
        FlashFormat dial = format(HEAD
                + "\"rests_lit\": true, \"flashes_s\": {\"break\": 0.061}, \"code\": {\"places\": ["
                + place + ", " + place + "]}, \"gaps\": {\"within_digit_s\": 0.039, \"between_digits_s\": 0.839,"
                + " \"between_codes_s\": 3.0}, \"list\": {}}");
        PulseTrain line = Trains.of("1 0.061 0.039 0.061 | 0.839 " + "0.061 0.039 ".repeat(9) + "0.061 1")
                .inverted();

        assertThat(new PlainDecoder().decode(line, List.of(dial)).codes())
                .isEqualTo(Map.of(Segment.CODES, List.of("20")));
    }
}
