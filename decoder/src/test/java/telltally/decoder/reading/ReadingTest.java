package telltally.decoder.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

class ReadingTest {
    private static Group group(GroupKind kind, Segment segment, String digits) {
        return new Group(kind, segment, digits, 0.9, 0, 1, List.of());
    }

    @Test
    void merged_codes_stand_once_per_segment_in_the_order_of_the_groups() {
        List<Group> groups = List.of(
                group(GroupKind.CODE, Segment.PRESENT, "42"),
                group(GroupKind.CODE, Segment.PRESENT, "34"),
                group(GroupKind.CODE, Segment.PRESENT, "42"),
                group(GroupKind.SEPARATOR, Segment.PRESENT, "1"),
                group(GroupKind.UNREADABLE, Segment.STORED, "3"),
                group(GroupKind.CODE, Segment.STORED, "42"),
                group(GroupKind.BALANCE, Segment.BALANCE, "4"));

        assertThat(Reading.merged(groups))
                .isEqualTo(Map.of(
                        Segment.PRESENT, List.of("42", "34"),
                        Segment.STORED, List.of("42"),
                        Segment.BALANCE, List.of("4")));
    }

    @Test
    void a_probability_that_is_none_is_refused() {
        for (double none : new double[] {-0.1, 1.1, Double.NaN}) {
            assertThatThrownBy(() -> new Group(GroupKind.CODE, Segment.CODES, "1", none, 0, 1, List.of()))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("a probability is 0 to 1");
        }
    }

    @Test
    void certainty_and_impossibility_are_probabilities() {
        for (double bound : new double[] {0, 1}) {
            assertThat(new Group(GroupKind.CODE, Segment.CODES, "1", bound, 0, 1, List.of()).probability())
                    .isEqualTo(bound);
        }
    }

    @Test
    void something_was_decoded_where_a_format_and_a_list_were_found_even_an_empty_one() {
        Optional<FormatEstimate> format = Optional.of(new FormatEstimate("pair-loop", 1, 1));
        Map<Segment, List<String>> none = Map.of(Segment.CODES, List.of());
        assertThat(new Reading(format, none, List.of(), List.of()).decoded()).isTrue();
        assertThat(new Reading(format, Map.of(), List.of(), List.of()).decoded())
                .isFalse();
        assertThat(new Reading(Optional.empty(), none, List.of(), List.of()).decoded())
                .isFalse();
    }
}
