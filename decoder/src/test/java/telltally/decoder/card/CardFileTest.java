package telltally.decoder.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.score.Floors;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What other programs find in the file of a card, and what is made of a file that somebody else wrote. */
class CardFileTest {
    private final String text = CardJson.text(SmallCard.whole());
    private final JsonNode file = JsonMapper.shared().readTree(text);

    private static ScoreCard read(String text) throws ProblemException {
        return CardReader.read(new TextFile("card.json", text));
    }

    private String problems(String from, String to) {
        assertThat(text).contains(from);
        try {
            return "none, but " + read(text.replace(from, to));
        } catch (ProblemException e) {
            return e.problems().toString();
        }
    }

    @Test
    void nothing_is_lost_on_the_way_into_a_file_and_back(@TempDir Path folder) throws Exception {
        Path saved = folder.resolve("card.json");
        Files.writeString(saved, text, StandardCharsets.UTF_8);
        assertThat(CardReader.read(saved)).isEqualTo(SmallCard.whole());
        ScoreCard shards =
                SmallCard.card(new Part(5, List.of(2, 4)), SmallCard.set(Optional.empty(), List.of(SmallCard.lamp())));
        assertThat(read(CardJson.text(shards))).isEqualTo(shards);
    }

    @Test
    void decimals_have_six_places() {
        assertThat(text)
                .contains("\"strength\":0.050000,")
                .contains("\"lists_right\":0.700000,\"codes_right\":0.750000,")
                .contains("\"expected_calibration_error\":0.020000");
    }

    @Test
    void every_set_begins_a_line_and_the_file_ends_with_one() {
        assertThat(text.split("\n", -1)).hasSize(3).satisfies(lines -> {
            assertThat(lines[1]).startsWith("{\"id\":\"jitter-5\"");
            assertThat(lines[2]).isEmpty();
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/schema | telltally/scorecard/1",
                "/decoder | abacus",
                "/generator | 7",
                "/arguments/1 | abacus",
                "/told_format | true",
                "/sets/0/why | lengths scatter",
                "/sets/0/curve/family | jitter",
                "/sets/0/curve/strength | 0.05",
                "/sets/0/curve/unit | share of each length",
                "/sets/0/channel/1 | late-start",
                "/sets/0/first_seed | -300",
                "/sets/0/seeds | 50",
                "/sets/0/cases | 52",
                "/sets/0/floors/lists_right | 0.7",
                "/sets/0/floors/codes_right | 0.75",
                "/sets/0/floors/invented_codes | 13",
                "/sets/0/flaws/0/block | 2",
                "/sets/0/flaws/0/text | moved",
                "/sets/0/lines/0/line | lamp",
                "/sets/0/lines/0/lists_right/right | 42",
                "/sets/0/lines/0/lists_right/of | 56",
                "/sets/0/lines/0/codes_right/right | 70",
                "/sets/0/lines/0/codes_right/of | 90",
                "/sets/0/lines/0/formats/1/decoder/sessions | 40",
                "/sets/0/lines/0/formats/1/decoder/sessions_right | 25",
                "/sets/0/lines/0/formats/1/decoder/lists | 44",
                "/sets/0/lines/0/formats/1/decoder/lists_right | 31",
                "/sets/0/lines/0/formats/1/decoder/codes | 90",
                "/sets/0/lines/0/formats/1/decoder/codes_right | 70",
                "/sets/0/lines/0/formats/1/decoder/codes_wrong | 9",
                "/sets/0/lines/0/formats/1/decoder/codes_lost | 11",
                "/sets/0/lines/0/formats/1/decoder/codes_invented | 3",
                "/sets/0/lines/0/formats/1/plain/codes_right | 64",
                "/sets/0/lines/0/formats/1/lattice_told/codes_right | 88",
                "/sets/0/lines/0/formats/1/read_as/(no answer) | 6",
                "/sets/0/lines/0/formats/1/failures/out-of-order | 2",
                "/sets/0/lines/0/formats/1/calibration/0/bin | 17",
                "/sets/0/lines/0/formats/1/calibration/0/codes | 20",
                "/sets/0/lines/0/formats/1/calibration/0/right | 17",
                "/sets/0/lines/0/formats/1/calibration/0/millionths | 17400000",
                "/sets/0/lines/0/worst/0/case | 7",
                "/sets/0/lines/0/worst/0/seed | -293",
                "/sets/0/lines/0/worst/0/origin | random message",
                "/sets/0/lines/0/worst/0/format | pair-even",
                "/sets/0/lines/0/worst/0/errors | 6",
                "/sets/0/lines/0/worst/0/sent | codes 12 34",
                "/sets/0/lines/0/worst/0/read | nothing",
                "/sets/0/lines/0/worst/0/failure | out-of-order",
                "/sets/0/lines/1/line | pin",
            })
    void every_number_stands_under_its_name(String where, String expected) {
        assertThat(file.at(where).asString()).isEqualTo(expected);
    }

    /** Wilson's interval of 42 of 56 by its formula with z = 1.959964: 0.6235 to 0.8442, the ends rounded outwards. */
    @Test
    void shares_of_a_whole_line_stand_beside_its_counts() {
        JsonNode lists = file.at("/sets/0/lines/0/lists_right");
        assertThat(lists.at("/share").asString()).isEqualTo("0.75");
        double z = 1.959963984540054;
        double centre = (42 + z * z / 2) / (56 + z * z);
        double half = z * Math.sqrt(42.0 * 14 / 56 + z * z / 4) / (56 + z * z);
        assertThat(lists.at("/low").asDouble()).isBetween(centre - half - 1e-6, centre - half);
        assertThat(lists.at("/high").asDouble()).isBetween(centre + half, centre + half + 1e-6);
    }

    /** 25 + 11 of 40 + 12 on the lamp. Of twenty codes about 17.4 were claimed and 17 right: 0.4 / 20. */
    @Test
    void the_summary_adds_up_each_line() {
        JsonNode lamp = file.at("/summary/0");
        assertThat(lamp.at("/line").asString()).isEqualTo("lamp");
        assertThat(lamp.at("/sessions_right/right").asInt()).isEqualTo(36);
        assertThat(lamp.at("/sessions_right/of").asInt()).isEqualTo(52);
        assertThat(lamp.at("/lists_right/of").asInt()).isEqualTo(56);
        assertThat(lamp.at("/codes_right/right").asInt()).isEqualTo(70);
        assertThat(lamp.at("/expected_calibration_error").asString()).isEqualTo("0.02");
        JsonNode pin = file.at("/summary/1");
        assertThat(pin.at("/line").asString()).isEqualTo("pin");
        assertThat(pin.has("expected_calibration_error")).isFalse();
    }

    @Test
    void what_is_not_there_is_left_out() {
        JsonNode pin = file.at("/sets/0/lines/1/formats/0");
        assertThat(pin.has("plain")).isFalse();
        assertThat(pin.has("lattice_told")).isFalse();
        assertThat(pin.at("/calibration")).isEmpty();
        assertThat(file.has("shard")).isFalse();
        FormatCard silent = SmallCard.lamp().formats().get(0);
        LineCard line = new LineCard(SmallCard.lamp().line(), List.of(silent), SmallCard.right(), List.of());
        SetCard set = SmallCard.set(Optional.empty(), List.of(line));
        JsonNode bare = JsonMapper.shared().readTree(CardJson.text(SmallCard.card(Part.WHOLE, set)));
        assertThat(bare.at("/sets/0/lines/0/codes_right").has("share")).isFalse();
        assertThat(bare.at("/sets/0").has("floors")).isFalse();
    }

    /** 42 of 56 lists are right and 70 of 90 codes: 0.75 and 0.778. Shards alone say nothing of floors. */
    @Test
    void a_line_says_what_it_falls_short_in_once_all_shards_are_there() {
        assertThat(file.at("/sets/0/lines/0/below_floor")).isEmpty();
        SetCard strict = SmallCard.set(Optional.of(new Floors(0.8, 0.7, 13)), List.of(SmallCard.lamp()));
        JsonNode whole = JsonMapper.shared().readTree(CardJson.text(SmallCard.card(Part.WHOLE, strict)));
        assertThat(whole.at("/sets/0/lines/0/below_floor").valueStream().map(JsonNode::asString))
                .containsExactly("42 of 56 lists right; the floor is 0.8");
        Part half = new Part(2, List.of(2));
        JsonNode shard = JsonMapper.shared().readTree(CardJson.text(SmallCard.card(half, strict)));
        assertThat(shard.at("/sets/0/lines/0/below_floor")).isEmpty();
        assertThat(shard.at("/shard/of").asInt()).isEqualTo(2);
        assertThat(shard.at("/shard/parts/0").asInt()).isEqualTo(2);
    }

    @Test
    void counts_that_cannot_be_are_refused() {
        String more = "counts more right than there are";
        assertThat(problems("\"sessions_right\":25", "\"sessions_right\":41")).contains(more);
        assertThat(problems("\"lists_right\":31", "\"lists_right\":45")).contains(more);
        assertThat(problems("\"codes_wrong\":9", "\"codes_wrong\":21")).contains(more);
        assertThat(problems("\"codes_wrong\":9", "\"codes_wrong\":-1")).contains("is -1; a count is 0 or more");
        assertThat(problems("\"out-of-order\":2", "\"out-of-mind\":2")).contains("out-of-mind: is not known here");
        assertThat(problems("\"errors\":6", "\"errors\":\"six\""))
                .contains("errors")
                .doesNotContain("a count is 0 or more");
    }

    @Test
    void counts_at_their_limits_are_read() throws ProblemException {
        String full = text.replace("\"sessions_right\":25", "\"sessions_right\":40")
                .replace("\"lists_right\":31", "\"lists_right\":44")
                .replace("\"codes_wrong\":9", "\"codes_wrong\":20")
                .replace("\"codes_invented\":3", "\"codes_invented\":0");
        Counts read = read(full)
                .sets()
                .get(0)
                .lines()
                .get(0)
                .formats()
                .get(1)
                .decoder()
                .counts();
        assertThat(read).isEqualTo(new Counts(40, 40, 44, 44, 90, 70, 20, 0));
        assertThat(read.codesLost()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"block\":2, | /sets/0/flaws/0",
                "\"family\":\"jitter\", | /sets/0/curve",
                "\"lists_right\":0.700000, | /sets/0/floors",
                "\"sessions\":40, | /sets/0/lines/0/formats/1/decoder",
                "\"bin\":17, | /sets/0/lines/0/formats/1/calibration/0",
                "\"case\":7, | /sets/0/lines/0/worst/0",
                "\"hung\":4, | /sets/0/lines/0/formats/1/failures",
                "\"line\":\"lamp\",\"below | /sets/0/lines/0",
                "\"format\":\"pair-even\",\"decoder | /sets/0/lines/0/formats/1",
                "\"id\":\"jitter-5\", | /sets/0",
                "\"told_format\":true, | ",
            })
    void a_field_that_is_not_known_is_refused_wherever_it_stands(String before, String where) {
        String place = where == null ? "" : where;
        assertThat(problems(before, "\"shoe_size\":44," + before)).contains(place + "/shoe_size: is not known here");
    }

    @Test
    void a_shard_says_which_parts_it_holds() throws ProblemException {
        SetCard set = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp()));
        String shard = CardJson.text(SmallCard.card(new Part(5, List.of(2)), set));
        int column = 1 + shard.indexOf("[2]");
        assertThatThrownBy(() -> read(shard.replace("\"parts\":[2]", "\"parts\":[]")))
                .isInstanceOfSatisfying(
                        ProblemException.class,
                        e -> assertThat(e.problems())
                                .hasToString("[card.json:1:" + column
                                        + ": /shard/parts: is empty; at least one was expected]"));
        assertThatThrownBy(() -> read(shard.replace("\"parts\":[2]", "\"parts\":[6]")))
                .isInstanceOfSatisfying(
                        ProblemException.class,
                        e -> assertThat(e.problems())
                                .hasSize(1)
                                .allMatch(problem -> problem.toString().contains("/shard/parts/0")));
        assertThatThrownBy(() -> read(shard.replace("\"parts\":[2]", "\"parts\":[2],\"odd\":1")))
                .hasMessageContaining("/shard/odd: is not known here");
    }
}
