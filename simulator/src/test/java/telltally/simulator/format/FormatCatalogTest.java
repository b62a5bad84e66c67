package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.document.ResourceFolder;

class FormatCatalogTest {
    @Test
    void seven_formats_ship() {
        assertThat(FormatCatalog.shipped().ids())
                .containsExactly(
                        "count-loop",
                        "long-short",
                        "pair-even",
                        "pair-loop",
                        "pair-thrice",
                        "quad-lead",
                        "triple-even");
    }

    @Test
    void every_shipped_format_lies_in_a_file_of_its_name() {
        List<String> files = new ResourceFolder("telltally/scenarios/formats")
                .read().stream().map(each -> each.name().replace(".json", "")).toList();

        assertThat(FormatCatalog.shipped().ids()).isEqualTo(files);
    }

    @ParameterizedTest
    @CsvSource({
        "pair-even, true, 'present stored running balance'",
        "triple-even, true, 'present stored running balance'",
        "long-short, false, codes",
        "pair-thrice, false, codes",
        "quad-lead, false, codes",
        "pair-loop, false, codes",
        "count-loop, false, codes"
    })
    void only_the_even_formats_know_segments_and_a_fast_list(String id, boolean fast, String segments) {
        FlashFormat format = FormatCatalog.shipped().find(id).orElseThrow();

        assertThat(format.burst().isPresent()).isEqualTo(fast);
        assertThat(format.segments().stream().map(Segment::key).toList()).isEqualTo(OnOff.spelled(segments));
    }

    @Test
    void a_name_that_nobody_gave_finds_nothing() {
        assertThat(FormatCatalog.shipped().find("pair-odd")).isEmpty();
    }

    @Test
    void of_two_formats_with_one_id_the_last_one_counts() {
        FlashFormat shipped = TestFormats.shipped("count-loop");
        FlashFormat own = TestFormats.parse("""
                {"schema": "telltally/format/1", "id": "count-loop", "title": "My own",
                 "flashes_s": {"flash": 0.2}, "code": {"places": [{"flash": "flash", "from": 1, "to": 5}]},
                 "gaps": {"within_digit_s": 0.2, "before_repeat_s": 2}, "list": {"loops": true, "most_codes": 1}}
                """);

        FormatCatalog catalog = FormatCatalog.of(List.of(shipped, TestFormats.shipped("pair-loop"), own));

        assertThat(catalog.ids()).containsExactly("count-loop", "pair-loop");
        assertThat(catalog.find("count-loop").map(FlashFormat::title)).contains("My own");
        assertThat(catalog.all()).containsExactly(own, TestFormats.shipped("pair-loop"));
    }
}
