package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.document.ProblemException;

class FloorRaiseTest {
    private static final String FLOORS = "\"floors\": {\"plain\": {\"lists_right\": 0.99, \"codes_right\": 0.995,"
            + " \"invented_codes\": 3}, \"lattice\": {\"lists_right\": 9.5e-1, \"codes_right\": 0, \"invented_codes\": 0}},";

    private static final String SET = SeedSetReaderTest.GOOD.replaceAll("\"floors\": .*", FLOORS);

    @TempDir
    private Path folder;

    private Path file = Path.of("set.json");

    @BeforeEach
    void writeSet() throws IOException {
        file = Files.writeString(folder.resolve("set.json"), SET);
    }

    private List<String> raise(String decoder, Score... byLine) throws ProblemException {
        return new FloorRaise(file).raise(decoder, List.of(byLine));
    }

    @Test
    void a_better_score_raises_each_floor_that_it_exceeds_and_touches_nothing_else()
            throws IOException, ProblemException {
        assertThat(raise("plain", new Score(1000, 997, 3000, 2999, 1)))
                .containsExactly(
                        "plain: lists_right from 0.99 to 0.997",
                        "plain: codes_right from 0.995 to 0.999",
                        "plain: invented_codes from 3 to 1");
        assertThat(Files.readString(file))
                .isEqualTo(SET.replace("0.99, \"codes", "0.997, \"codes")
                        .replace("0.995", "0.999")
                        .replace("\"invented_codes\": 3", "\"invented_codes\": 1"));
    }

    @Test
    void a_worse_score_lowers_none() throws IOException, ProblemException {
        assertThat(raise("plain", new Score(1000, 10, 3000, 20, 70))).isEmpty();
        assertThat(Files.readString(file)).isEqualTo(SET);
    }

    @Test
    void the_worse_of_two_lines_counts() throws ProblemException {
        assertThat(raise("plain", new Score(1000, 1000, 3000, 2500, 9), new Score(1000, 993, 3000, 3000, 0)))
                .containsExactly("plain: lists_right from 0.99 to 0.993");
    }

    @Test
    void where_nothing_was_sent_its_share_stays() throws ProblemException {
        assertThat(raise("lattice", new Score(10, 10, 0, 0, 0)))
                .containsExactly("lattice: lists_right from 0.95 to 1.0");
    }

    @Test
    void without_a_line_nothing_rises() throws IOException, ProblemException {
        assertThat(raise("plain")).isEmpty();
        assertThat(Files.readString(file)).isEqualTo(SET);
    }

    @Test
    void floors_without_a_name_are_those_of_the_plain_decoder() throws IOException, ProblemException {
        String unnamed = SET.replace(
                FLOORS, "\"floors\": {\"lists_right\": 0.99, \"codes_right\": 0.995, \"invented_codes\": 3},");
        Files.writeString(file, unnamed);
        assertThat(raise("plain", new Score(10, 10, 10, 10, 3))).hasSize(2);
        assertThat(SeedSetReader.read(file).floors().own("plain")).contains(new Floors(1, 1, 3));
        assertThatThrownBy(() -> raise("lattice", new Score(10, 10, 10, 10, 0))).isInstanceOf(ProblemException.class);
    }

    @Test
    void a_decoder_that_has_none_is_refused() {
        assertThatThrownBy(() -> raise("mine", new Score(10, 10, 10, 10, 0)))
                .isInstanceOf(ProblemException.class)
                .hasMessageContaining("set.json:21:13: /floors: holds none of mine; the first ones are to be written by"
                        + " hand, as low as need be");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r", "\n"})
    void line_ends_and_a_byte_order_mark_are_kept(String lineEnd) throws IOException, ProblemException {
        String text = "\uFEFF" + SET.replace("\n", lineEnd);
        Files.writeString(file, text);
        raise("lattice", new Score(1000, 951, 0, 0, 0));
        assertThat(Files.readString(file)).isEqualTo(text.replace("9.5e-1", "0.951"));
    }

    @Property(tries = 100)
    void what_raised_a_floor_stands_above_it(@ForAll @IntRange(min = 1, max = 5000) int lists, @ForAll int seed)
            throws IOException, ProblemException {
        int right = Math.floorMod(seed, lists + 1);
        Path set = Files.createTempFile("set", ".json");
        try {
            Files.writeString(
                    set,
                    SET.replaceAll("\"lists_right\": [0-9.e-]+", "\"lists_right\": 0")
                            .replaceAll("\"lowered\": .*", "\"lowered\": []"));
            Score score = new Score(lists, right, 0, 0, 0);
            new FloorRaise(set).raise("plain", List.of(score));
            Floors raised = SeedSetReader.read(set).floors().own("plain").orElseThrow();
            assertThat(raised.shortfalls(score)).isEmpty();
            assertThat(raised.listsRight()).isGreaterThan(right / (double) lists - 0.001);
        } finally {
            Files.delete(set);
        }
    }
}
