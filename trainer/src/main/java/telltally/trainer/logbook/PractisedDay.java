package telltally.trainer.logbook;

import java.time.LocalDate;
import java.util.List;

/**
 * The scored drills of one day.
 *
 * @param meanLevel from 1 to 10
 * @param medianThoughtNanos half of the answers took no longer than this after the lamp had stopped; 0 where an answer
 *     came before
 */
public record PractisedDay(LocalDate date, int answered, int right, double meanLevel, long medianThoughtNanos) {
    /** @param drills of one day, at least one */
    static PractisedDay of(LocalDate date, List<DrillEntry> drills) {
        List<Long> thought = drills.stream()
                .map(drill -> Math.max(
                        0, drill.timing().answerNanos() - drill.timing().lampNanos()))
                .sorted()
                .toList();
        return new PractisedDay(
                date,
                drills.size(),
                (int) drills.stream().filter(DrillEntry::right).count(),
                drills.stream()
                        .mapToInt(drill -> drill.level().value())
                        .average()
                        .orElse(0),
                thought.get((thought.size() - 1) / 2));
    }

    /** From 0 to 1. */
    public double shareRight() {
        return (double) right / answered;
    }
}
