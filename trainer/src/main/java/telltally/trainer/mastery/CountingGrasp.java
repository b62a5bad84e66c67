package telltally.trainer.mastery;

import java.time.Instant;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;

/**
 * A counting skill: a rating of ability against the difficulty of a level, on the scale of Rasch's model.
 *
 * @param rating in logits above what the full level asks for
 * @param fullAnswers how many answers were given at full level
 * @param easier how the present row of easier drills has gone
 */
public record CountingGrasp(Elo rating, int fullAnswers, Spell easier) implements Grasp {
    static final CountingGrasp BEGINNING = new CountingGrasp(Elo.at(0), 0, Spell.NONE);

    /** How much easier than the full level the easiest one is, in logits. Common practice, no source. */
    private static final double SPAN = 3;

    /** A learner changes, so that the rating never comes to rest. */
    private static final double LEAST_STEP = 0.3;

    /** From this chance at full level on, easier drills would keep somebody below what is examined. */
    private static final double FULL_FROM = 0.7;

    /** What an easier drill should be answered with: about 85 % (Wilson, Shenhav, Straccia and Cohen 2019). */
    private static final double TARGET = 0.8;

    private static final double LEARNT_FROM = 0.8;
    private static final int LEARNT_ANSWERS = 3;

    /**
     * Drills below the full level in a row.
     *
     * @param from the rating at its beginning
     */
    public record Spell(double from, int answers) {
        static final Spell NONE = new Spell(0, 0);
    }

    @Override
    public Grasp after(Credit credit, Instant when) {
        double difficulty = difficulty(credit.level());
        Elo next = rating.after(difficulty, credit.right(), Math.max(rating.step(), LEAST_STEP));
        boolean full = credit.level().full();
        Spell spell = full
                ? Spell.NONE
                : new Spell(easier.answers() == 0 ? rating.ability() : easier.from(), easier.answers() + 1);
        return new CountingGrasp(next, fullAnswers + (full ? 1 : 0), spell);
    }

    @Override
    public double chanceRight(Level level, Instant now) {
        return rating.chanceRight(difficulty(level));
    }

    @Override
    public Level nextLevel() {
        if (rating.chanceRight(0) >= FULL_FROM) {
            return Level.FULL;
        }
        for (int level = Level.HIGHEST - 1; level > Level.LOWEST; level--) {
            if (rating.chanceRight(difficulty(new Level(level))) >= TARGET) {
                return new Level(level);
            }
        }
        return Level.EASIEST;
    }

    @Override
    public boolean learnt() {
        return fullAnswers >= LEARNT_ANSWERS && rating.chanceRight(0) >= LEARNT_FROM;
    }

    @Override
    public boolean mastered(Window atFullLevel) {
        return MasteryRule.shown(atFullLevel);
    }

    private static double difficulty(Level level) {
        return -SPAN * (1 - level.share());
    }
}
