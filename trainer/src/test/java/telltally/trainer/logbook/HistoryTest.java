package telltally.trainer.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.trainer.drill.DigitConfusions;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.mastery.Tutor;

class HistoryTest {
    private static final List<String> FACTS = List.of("plank 12", "plank 34");
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");
    private static final List<DrillEntry> DRILLS = SampleLogbook.twoWeeks(NOW);
    private static final History HISTORY = new History(DRILLS, List.of());

    private static DrillEntry at(Instant instant, boolean right, int levelValue, long thoughtNanos) {
        DrillEntry like = SampleEntries.drill("none");
        return new DrillEntry(
                like.id(),
                instant,
                like.skill(),
                new Level(levelValue),
                like.item(),
                like.circumstances(),
                like.sent(),
                like.expected(),
                like.given(),
                right,
                true,
                new DrillEntry.Timing(5_000_000_000L + thoughtNanos, 5_000_000_000L, 0),
                like.credits());
    }

    @Test
    void the_tutor_is_the_same_whether_folded_as_answers_come_or_from_the_whole_history() {
        Tutor step = Tutor.beginning(FACTS);
        History grown = History.empty();
        for (DrillEntry drill : DRILLS) {
            step = step.after(drill.credits(), drill.answeredAt());
            grown = grown.plus(drill);
        }
        assertThat(grown).isEqualTo(HISTORY);
        assertThat(HISTORY.tutor(FACTS)).isEqualTo(step);
    }

    @Test
    void a_day_counts_by_the_clock_where_the_learner_is() {
        Instant evening = Instant.parse("2026-03-02T23:30:00Z");
        History history = new History(List.of(at(evening, true, 3, 0)), List.of());

        assertThat(history.days(ZoneOffset.UTC).get(0).date()).isEqualTo(LocalDate.of(2026, 3, 2));
        assertThat(history.days(ZoneId.of("Europe/Berlin")).get(0).date()).isEqualTo(LocalDate.of(2026, 3, 3));
    }

    @Test
    void a_day_says_how_many_were_right_how_hard_and_how_quickly() {
        History history = new History(
                List.of(
                        at(NOW, true, 2, 1_000_000_000L),
                        at(NOW, false, 4, 9_000_000_000L),
                        at(NOW, true, 6, 2_000_000_000L)),
                List.of());
        PractisedDay day = history.days(ZoneOffset.UTC).get(0);

        assertThat(day.right()).isEqualTo(2);
        assertThat(day.answered()).isEqualTo(3);
        assertThat(day.meanLevel()).isEqualTo(4);
        assertThat(day.medianThoughtNanos()).isEqualTo(2_000_000_000L);
    }

    @Test
    void days_in_a_row_end_with_a_day_off_but_not_before_today_is_over() {
        List<DrillEntry> drills = new ArrayList<>();
        for (int daysAgo : List.of(6, 3, 2, 1)) {
            drills.add(at(NOW.minus(Duration.ofDays(daysAgo)), true, 3, 0));
        }
        History history = new History(drills, List.of());
        LocalDate today = LocalDate.ofInstant(NOW, ZoneOffset.UTC);

        assertThat(history.daysInARow(today, ZoneOffset.UTC)).isEqualTo(3);
        assertThat(history.plus(at(NOW, true, 3, 0)).daysInARow(today, ZoneOffset.UTC))
                .isEqualTo(4);
        assertThat(history.daysInARow(today.plusDays(1), ZoneOffset.UTC)).isZero();
        assertThat(History.empty().daysInARow(today, ZoneOffset.UTC)).isZero();
    }

    @Test
    void digits_are_counted_by_playing_and_marking_every_drill_again() {
        DigitConfusions confusions = HISTORY.confusions(DrillMaker.shipped());

        assertThat(confusions.digits()).isNotEmpty();
        int wrong = 0;
        for (String digit : confusions.digits()) {
            wrong += confusions.sent(digit) - confusions.right(digit);
            assertThat(confusions.sent(digit)).isGreaterThanOrEqualTo(confusions.right(digit));
        }
        assertThat(wrong).as("one flash too few, now and then").isPositive();
    }

    @Test
    void drills_of_another_generator_are_left_out_of_the_digits() {
        List<DrillEntry> older = DRILLS.stream()
                .map(drill -> new DrillEntry(
                        drill.id(),
                        drill.answeredAt(),
                        drill.skill(),
                        drill.level(),
                        drill.item(),
                        new Circumstances(drill.circumstances().seed(), 0, "0.0.9", "pair-even", "lamp"),
                        drill.sent(),
                        drill.expected(),
                        drill.given(),
                        drill.right(),
                        drill.scored(),
                        drill.timing(),
                        drill.credits()))
                .toList();

        assertThat(new History(older, List.of())
                        .confusions(DrillMaker.shipped())
                        .digits())
                .isEmpty();
    }
}
