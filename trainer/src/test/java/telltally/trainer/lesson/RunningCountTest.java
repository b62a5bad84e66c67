package telltally.trainer.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.SentGroup;

/** Timings are those of the usual two-digit format (common practice, no source): 0.5 s on, 0.5 s off, 2 s between digits. */
class RunningCountTest {
    private static final long TENTH = 100_000_000L;

    private final List<SentGroup> groups = SampleLessons.keyOn(List.of("34"), List.of("15"))
            .recording()
            .truth()
            .groups();
    private final long start = groups.get(0).startNanos();

    private RunningCount after(int tenths) {
        return RunningCount.at(groups, start + tenths * TENTH);
    }

    @Test
    void nothing_counts_before_the_first_flash() {
        assertThat(after(-1)).isEqualTo(RunningCount.at(groups, 0));
        assertThat(after(-1).group()).isEmpty();
    }

    @Test
    void flashes_count_from_their_beginning_and_digits_from_their_end() {
        assertThat(after(0).flashes()).isEqualTo(1);
        assertThat(after(12).flashes()).isEqualTo(2);
        assertThat(after(24).flashes()).isEqualTo(3);
        assertThat(after(24).digits()).isEmpty();
        assertThat(after(25).digits()).isEqualTo("3");
        assertThat(after(44).flashes()).isEqualTo(3);
        assertThat(after(45).flashes()).isEqualTo(1);
        assertThat(after(80).flashes()).isEqualTo(4);
        assertThat(after(80).digits()).isEqualTo("34");
    }

    @Test
    void the_second_sending_is_a_repeat_and_the_separator_is_no_code() {
        assertThat(after(80).repeat()).isFalse();
        RunningCount second = after(125);
        assertThat(second.group().orElseThrow().digits()).isEqualTo("34");
        assertThat(second.repeat()).isTrue();
        SentGroup separator = groups.stream()
                .filter(group -> group.kind() == GroupKind.SEPARATOR)
                .findFirst()
                .orElseThrow();
        assertThat(RunningCount.at(groups, separator.startNanos()).group()).contains(separator);
    }
}
