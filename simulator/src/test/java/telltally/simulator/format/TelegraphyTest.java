package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * Outside check: Recommendation ITU-R M.1677-1 (10/2009), part I. Signs of section 1.1; section 2: a dash is three
 * dots, the gap inside a letter one, between letters three, between words seven. A word is a code here, a letter a digit.
 */
class TelegraphyTest {
    private static final long UNIT_NANOS = 60_000_000L;

    /** Section 1.1.1 and 1.1.2; the number is the length of the sign in dots, without the gap that follows. */
    private static final String LETTERS_AND_FIGURES = """
            A .-    5 | B -...  9 | C -.-. 11 | D -..   7 | E .     1 | F ..-.  9
            G --.   9 | H ....  7 | I ..    3 | J .--- 13 | K -.-   9 | L .-..  9
            M --    7 | N -.    5 | O ---  11 | P .--. 11 | Q --.- 13 | R .-.   7
            S ...   5 | T -     3 | U ..-   7 | V ...-  9 | W .--   9 | X -..- 11
            Y -.-- 13 | Z --.. 11 | 1 .---- 17 | 2 ..--- 15 | 3 ...-- 13 | 4 ....- 11
            5 ..... 9 | 6 -.... 11 | 7 --... 13 | 8 ---.. 15 | 9 ----. 17 | 0 ----- 19
            """;

    /** Section 1.1.3, as far as a sign has a character of its own. */
    private static final String PUNCTUATION = """
            . .-.-.- 17 | , --..-- 19 | : ---... 17 | ? ..--.. 15 | - -....- 15 | / -..-. 13
            = -...- 13 | + .-.-. 13 | @ .--.-. 17
            """;

    record Published(String sign, String flashes, int units) {}

    static List<Published> published() {
        return Stream.of(LETTERS_AND_FIGURES, PUNCTUATION)
                .flatMap(table -> Stream.of(table.split("[|\n]")))
                .map(cell -> cell.trim().split("\\s+"))
                .map(cell -> new Published(cell[0], cell[1], Integer.parseInt(cell[2])))
                .toList();
    }

    @Test
    void the_table_holds_26_letters_10_figures_and_9_other_signs() {
        assertThat(published()).hasSize(26 + 10 + 9).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("published")
    void a_sign_is_its_published_dots_and_dashes(Published published) {
        PulseTrain lamp = send("telegraphy-20", published.sign(), 1).lamp();

        List<String> expected = new ArrayList<>();
        for (char flash : published.flashes().toCharArray()) {
            if (!expected.isEmpty()) {
                expected.add("0.06");
            }
            expected.add(flash == '.' ? "0.06" : "0.18");
        }
        assertThat(OnOff.of(lamp)).isEqualTo(expected);
        assertThat(unitsBetween(lamp.edgeNanos(0), lamp.edgeNanos(lamp.edgeCount() - 1)))
                .isEqualTo(published.units());
    }

    /** PARIS: the measure of a word. The others by adding up the table, each with the word gap after it. */
    @ParameterizedTest
    @CsvSource({"PARIS, 50", "CODEX, 60", "SOS, 34", "TEST, 28", "12345, 84", "HI, 20", "E, 8"})
    void a_word_and_its_gap_are_as_long_as_published(String word, int units) {
        List<SentGroup> words = send("telegraphy-20", word, 2).groups();

        assertThat(unitsBetween(words.get(0).startNanos(), words.get(1).startNanos()))
                .isEqualTo(units);
    }

    @Test
    void the_letters_of_paris_are_14_8_10_6_and_12_units_with_the_gap_after_each() {
        List<Long> starts = new ArrayList<>();
        SentGroup word = send("telegraphy-20", "PARIS", 1).groups().get(0);
        word.signs().forEach(sign -> starts.add(sign.flashes().get(0).startNanos()));

        assertThat(unitsBetween(starts.get(0), starts.get(1))).isEqualTo(14);
        assertThat(unitsBetween(starts.get(1), starts.get(2))).isEqualTo(8);
        assertThat(unitsBetween(starts.get(2), starts.get(3))).isEqualTo(10);
        assertThat(unitsBetween(starts.get(3), starts.get(4))).isEqualTo(6);
        assertThat(unitsBetween(starts.get(4), word.endNanos()) + 7).isEqualTo(12);
    }

    @Test
    void paris_is_31_units_inside_letters_and_19_between_them() {
        SentGroup word = send("telegraphy-20", "PARIS", 1).groups().get(0);

        int inside = word.signs().stream()
                .mapToInt(sign -> unitsBetween(
                        sign.flashes().get(0).startNanos(), last(sign.flashes()).endNanos()))
                .sum();
        assertThat(inside).isEqualTo(31);
        assertThat(unitsBetween(word.startNanos(), word.endNanos()) + 7 - inside)
                .isEqualTo(19);
    }

    @Test
    void two_words_are_parted_by_seven_units_and_last_as_long_as_both() {
        Transmission sent = new Encoder(TestFormats.read("telegraphy-20"))
                .encode(new Message.Codes(List.of("MORSE", "CODE")), Pacing.usual());

        List<SentGroup> words = sent.groups();
        assertThat(unitsBetween(words.get(0).endNanos(), words.get(1).startNanos()))
                .isEqualTo(7);
        assertThat(unitsBetween(words.get(0).startNanos(), words.get(2).startNanos()))
                .isEqualTo(96);
    }

    @Test
    void a_word_is_spelled_out_to_the_millisecond() {
        assertThat(OnOff.of(send("telegraphy-20", "SOS", 2).lamp()))
                .isEqualTo(OnOff.spelled(
                        "0.06 0.06 0.06 0.06 0.06  0.18  0.18 0.06 0.18 0.06 0.18  0.18  0.06 0.06 0.06 0.06 0.06",
                        "0.42",
                        "0.06 0.06 0.06 0.06 0.06  0.18  0.18 0.06 0.18 0.06 0.18  0.18  0.06 0.06 0.06 0.06 0.06"));
    }

    @Test
    void a_sign_that_the_table_lacks_is_refused() {
        assertThat(TestFormats.read("telegraphy-20").refusal("SÖS"))
                .hasValueSatisfying(
                        reason -> assertThat(reason).startsWith("the sign Ö cannot be sent; this format sends A B C"));
    }

    /**
     * J. Bloom, QEX, April 1990; letter gap, word gap and dash as published for 13 over 5 words a minute
     * (kent-engineers.com/codespeed.htm), which print milliseconds, the dash a tenth of one.
     */
    @Test
    void stretched_spacing_leaves_the_letters_fast_and_has_the_published_gaps() {
        FlashFormat format = TestFormats.read("telegraphy-13-5");
        List<SentGroup> words = send("telegraphy-13-5", "PARIS", 2).groups();

        assertThat(format.gaps().betweenDigitsNanos() / 1e9).isCloseTo(1.443, within(0.0005));
        assertThat(format.gaps().betweenCodesNanos() / 1e9).isCloseTo(3.367, within(0.0005));
        assertThat(format.flashKinds())
                .anySatisfy(dash -> assertThat(dash.onNanos() / 1e6).isCloseTo(276.9, within(0.05)));
        // Five words a minute; each of the 28 lengths in the file is rounded to a nanosecond.
        assertThat(words.get(1).startNanos() - words.get(0).startNanos()).isCloseTo(12_000_000_000L, within(28L));
    }

    /** The same source: character and overall speed, the gaps in seconds to five places, and PARIS. */
    @ParameterizedTest
    @CsvSource({
        "0.06,    0.65368, 1.52526, 6.0",
        "0.066666667, 1.56842, 3.65965, 12.0",
        "0.08,    0.33717, 0.78672, 4.61538",
        "0.06,    0.18,    0.42,    3.0"
    })
    void stretched_spacing_makes_paris_as_long_as_the_overall_speed_says(
            String dot, String letterGap, String wordGap, double parisSeconds) {
        TextFile normal = TestFormats.file("telegraphy-20");
        String dash = new BigDecimal(dot).multiply(BigDecimal.valueOf(3)).toString();
        FlashFormat format = TestFormats.parse(normal.text()
                .replace("\".\": 0.06, \"-\": 0.18", "\".\": " + dot + ", \"-\": " + dash)
                .replace("\"within_digit_s\": 0.06", "\"within_digit_s\": " + dot)
                .replace("\"between_digits_s\": 0.18", "\"between_digits_s\": " + letterGap)
                .replace("\"between_codes_s\": 0.42", "\"between_codes_s\": " + wordGap));

        List<SentGroup> words = new Encoder(format)
                .encode(new Message.Codes(List.of("PARIS")), Pacing.usual())
                .groups();
        // Four letter gaps and a word gap, each rounded to half of the fifth place, and the sum as well.
        assertThat((words.get(1).startNanos() - words.get(0).startNanos()) / 1e9)
                .isCloseTo(parisSeconds, within(3e-5));
    }

    private static Transmission send(String format, String word, int times) {
        Pacing pacing = Pacing.usual().withLoops(times);
        return new Encoder(TestFormats.read(format)).encode(new Message.Codes(List.of(word)), pacing);
    }

    private static int unitsBetween(long fromNanos, long toNanos) {
        assertThat((toNanos - fromNanos) % UNIT_NANOS).isZero();
        return Math.toIntExact((toNanos - fromNanos) / UNIT_NANOS);
    }

    private static Interval last(List<Interval> flashes) {
        return flashes.get(flashes.size() - 1);
    }
}
