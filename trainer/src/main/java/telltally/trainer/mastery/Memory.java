package telltally.trainer.mastery;

import java.time.Duration;
import java.time.Instant;

/**
 * What is remembered of one fact: the state that FSRS-6 keeps of a card, with its learning steps of one and ten minutes
 * and its relearning step of ten (the defaults of py-fsrs 6.3.1). Only whole days count as days gone by, as there.
 *
 * @param stabilityDays days until the chance to remember has fallen to 0.9
 * @param difficulty from 1 to 10
 * @param reviewed when it was last asked for
 * @param due when to ask for it again
 * @param stage how far it is on its way into memory
 * @param step which of the stage's steps comes next, from 0
 */
public record Memory(double stabilityDays, double difficulty, Instant reviewed, Instant due, Stage stage, int step) {
    /** The chance to remember at which a fact falls due. */
    public static final double WANTED = 0.9;

    private static final double SECONDS_A_DAY = 86_400;

    private static final Duration[] LEARNING = {Duration.ofMinutes(1), Duration.ofMinutes(10)};
    private static final Duration[] RELEARNING = {Duration.ofMinutes(10)};

    /** How far a fact is on its way into memory. */
    public enum Stage {
        LEARNING,
        REVIEW,
        RELEARNING
    }

    /** After the first time that the fact was asked for or shown. */
    public static Memory first(Fsrs.Grade grade, Instant when) {
        return scheduled(Fsrs.firstStability(grade), Fsrs.firstDifficulty(grade), grade, when, Stage.LEARNING, 0);
    }

    public Memory after(Fsrs.Grade grade, Instant when) {
        long days = Math.max(0, Duration.between(reviewed, when).toDays());
        double stability = days == 0
                ? Fsrs.sameDayStability(stabilityDays, grade)
                : Fsrs.nextStability(
                        difficulty, stabilityDays, Fsrs.retrievability((double) days, stabilityDays), grade);
        double nextDifficulty = Fsrs.nextDifficulty(difficulty, grade);
        if (stage == Stage.REVIEW && grade == Fsrs.Grade.AGAIN) {
            return new Memory(stability, nextDifficulty, when, when.plus(RELEARNING[0]), Stage.RELEARNING, 0);
        }
        return scheduled(stability, nextDifficulty, grade, when, stage, step);
    }

    /** The chance that it would be remembered now; fractions of days count. */
    public double chanceRight(Instant now) {
        double days = Math.max(0, (double) Duration.between(reviewed, now).toSeconds() / SECONDS_A_DAY);
        return Fsrs.retrievability(days, stabilityDays);
    }

    private static Memory scheduled(
            double stability, double difficulty, Fsrs.Grade grade, Instant when, Stage stage, int step) {
        Duration[] steps = stage == Stage.LEARNING ? LEARNING : RELEARNING;
        boolean through = stage == Stage.REVIEW
                || grade == Fsrs.Grade.EASY
                || (grade == Fsrs.Grade.GOOD && step + 1 >= steps.length);
        if (through) {
            Duration interval = Duration.ofDays(Fsrs.intervalDays(stability, WANTED));
            return new Memory(stability, difficulty, when, when.plus(interval), Stage.REVIEW, 0);
        }
        int next = grade == Fsrs.Grade.AGAIN ? 0 : grade == Fsrs.Grade.GOOD ? step + 1 : step;
        return new Memory(stability, difficulty, when, when.plus(wait(steps, next, grade)), stage, next);
    }

    /** A hard first step waits halfway to the second, or half as long again where there is none. */
    private static Duration wait(Duration[] steps, int step, Fsrs.Grade grade) {
        if (grade != Fsrs.Grade.HARD || step > 0) {
            return steps[step];
        }
        return steps.length > 1
                ? steps[0].plus(steps[1]).dividedBy(2)
                : steps[0].multipliedBy(3).dividedBy(2);
    }
}
