package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.score.MessageRecipe.Drawn;
import telltally.simulator.chance.Chance;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatReader;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

class MessageRecipeTest {
    private static final FormatCatalog FORMATS = FormatCatalog.shipped();

    private static FlashFormat format(String id) {
        return FORMATS.find(id).orElseThrow();
    }

    private static MessageRecipe recipe(List<FlashFormat> formats, int fewestCodes, int mostCodes) {
        return new MessageRecipe(
                formats,
                List.of(SessionKind.values()),
                new WholeRange(fewestCodes, mostCodes),
                new WholeRange(4, 8),
                new WholeRange(2, 3));
    }

    private static List<Drawn> drawn(MessageRecipe recipe, int times) {
        return LongStream.range(0, times)
                .mapToObj(seed -> recipe.drawnFrom(Chance.of(seed)))
                .toList();
    }

    @Test
    void every_format_every_segment_and_every_number_of_codes_comes_up() {
        List<Drawn> all = drawn(recipe(FORMATS.all(), 0, 4), 400);
        Set<String> formats = new TreeSet<>();
        EnumSet<Segment> segments = EnumSet.noneOf(Segment.class);
        Set<Integer> sizes = new TreeSet<>();
        for (Drawn each : all) {
            formats.add(each.format().id());
            each.sent().codes().forEach((segment, codes) -> {
                segments.add(segment);
                sizes.add(codes.size());
            });
        }
        assertThat(formats).containsExactlyElementsOf(new TreeSet<>(FORMATS.ids()));
        assertThat(segments).containsExactly(Segment.values());
        assertThat(sizes).containsExactly(0, 1, 2, 3, 4);
    }

    @Test
    void a_running_test_opens_with_half_of_an_even_number_of_cylinders_and_prompts_now_and_then() {
        Set<String> halves = new TreeSet<>();
        Set<Boolean> prompts = new TreeSet<>();
        for (Drawn each : drawn(recipe(List.of(format("pair-even")), 1, 2), 200)) {
            if (each.sent().codes().containsKey(Segment.RUNNING)) {
                halves.add(each.sent().groups().get(0).digits());
                prompts.add(each.sent().groups().stream().anyMatch(group -> group.kind() == GroupKind.PROMPT));
            }
        }
        assertThat(halves).containsExactly("2", "3", "4");
        assertThat(prompts).containsExactly(false, true);
    }

    @Test
    void a_format_that_sends_one_code_at_a_time_is_never_given_two() {
        assertThat(drawn(recipe(List.of(format("count-loop")), 2, 6), 50))
                .allSatisfy(each ->
                        assertThat(each.sent().codes().get(Segment.CODES)).hasSize(1));
    }

    @Test
    void pass_and_framing_codes_are_never_among_the_codes() {
        assertThat(lists("pair-even", 40)).hasSizeGreaterThan(79).doesNotContain("11");
        assertThat(lists("pair-thrice", 40)).hasSizeGreaterThan(79).doesNotContain("12");
    }

    /** Every code that came up in lists of as many codes as may be asked for. */
    private static Set<String> lists(String formatId, int size) {
        LegalCodes legal = new LegalCodes(format(formatId));
        Set<String> seen = new HashSet<>();
        for (long seed = 0; seed < 40; seed++) {
            List<String> list = legal.list(size, Chance.of(seed));
            assertThat(list).doesNotHaveDuplicates().hasSize(size);
            seen.addAll(list);
        }
        return seen;
    }

    /** Two places of nine digits are 81 codes, three 729, four 6561; the pass or framing code is one of them. */
    @ParameterizedTest
    @CsvSource({
        "pair-even, 80",
        "triple-even, 728",
        "long-short, 81",
        "pair-thrice, 80",
        "quad-lead, 6561",
        "count-loop, 15"
    })
    void the_codes_of_a_format_are_counted(String formatId, int count) {
        assertThat(new LegalCodes(format(formatId)).count()).isEqualTo(count);
    }

    @Test
    void spelled_codes_are_drawn_as_well() throws ProblemException {
        FlashFormat spelled = FormatReader.read(new TextFile("spelled.json", """
                {"schema": "telltally/format/1", "id": "spelled", "title": "Two signs",
                 "flashes_s": {"d": 0.1, "h": 0.3}, "code": {"signs": {"E": "d", "T": "h"}, "most_signs": 3},
                 "gaps": {"within_digit_s": 0.1, "between_digits_s": 0.3, "between_codes_s": 0.7},
                 "list": {"loops": true}}"""));
        // 2 codes of one sign, 4 of two, 8 of three.
        assertThat(new LegalCodes(spelled).count()).isEqualTo(14);
        assertThat(LongStream.range(0, 100)
                        .mapToObj(Chance::of)
                        .flatMap(chance -> new LegalCodes(spelled).list(7, chance).stream()))
                .allMatch(code -> spelled.refusal(code).equals(Optional.empty()))
                .contains("E", "TT", "ETE");
    }

    @Test
    void more_codes_than_half_of_those_there_are_cannot_be_asked_for() {
        assertThatThrownBy(() -> new LegalCodes(format("count-loop")).list(8, Chance.of(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("8 codes out of 15");
    }
}
