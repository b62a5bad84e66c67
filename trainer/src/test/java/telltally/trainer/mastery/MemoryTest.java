package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked rows of reviews: py-fsrs at 3abe686, tests/test_basic.py; the 13 intervals also in ts-fsrs at cdec8d2. */
class MemoryTest {
    private static final Instant START = Instant.parse("2022-11-29T12:30:00Z");

    private static Fsrs.Grade grade(char sign) {
        return switch (sign) {
            case '1' -> Fsrs.Grade.AGAIN;
            case '2' -> Fsrs.Grade.HARD;
            case '3' -> Fsrs.Grade.GOOD;
            default -> Fsrs.Grade.EASY;
        };
    }

    @Test
    void thirteen_reviews_when_due_come_at_the_published_intervals() {
        List<Long> intervals = new ArrayList<>();
        Instant now = START;
        Memory memory = null;
        for (char sign : "3333331133333".toCharArray()) {
            memory = memory == null ? Memory.first(grade(sign), now) : memory.after(grade(sign), now);
            intervals.add(Duration.between(now, memory.due()).toDays());
            now = memory.due();
        }
        assertThat(intervals).containsExactly(0L, 2L, 11L, 46L, 163L, 498L, 0L, 0L, 2L, 4L, 7L, 12L, 21L);
    }

    @Test
    void six_reviews_on_given_days_leave_the_published_memory() {
        Memory memory = Memory.first(grade('1'), START);
        Instant now = START;
        for (int days : new int[] {0, 1, 3, 8, 21}) {
            now = now.plus(Duration.ofDays(days));
            memory = memory.after(grade('3'), now);
        }
        assertThat(memory.stabilityDays()).isCloseTo(53.62691, within(1e-4));
        assertThat(memory.difficulty()).isCloseTo(6.3574867, within(1e-4));
    }

    @Test
    void an_easy_first_answer_falls_due_after_eight_days() {
        Memory memory = Memory.first(Fsrs.Grade.EASY, START);
        assertThat(Duration.between(START, memory.due()).toDays()).isEqualTo(8);
        assertThat(memory.chanceRight(memory.due())).isCloseTo(0.9024733, within(1e-6));
    }

    @Test
    void a_lapse_is_asked_again_after_ten_minutes() {
        Memory memory = Memory.first(Fsrs.Grade.EASY, START);
        Memory lapsed = memory.after(Fsrs.Grade.AGAIN, memory.due());
        assertThat(lapsed.stage()).isEqualTo(Memory.Stage.RELEARNING);
        assertThat(Duration.between(memory.due(), lapsed.due())).isEqualTo(Duration.ofMinutes(10));
    }
}
