package telltally.trainer.mastery;

import java.time.Instant;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;

/**
 * A counting skill: how many errors are to be expected, and from that the level.
 *
 * @param errors what is believed of them
 * @param easier how many drills in a row were below the full level
 */
public record CountingGrasp(ErrorRate errors, int easier) implements Grasp {
    static final CountingGrasp BEGINNING = new CountingGrasp(ErrorRate.ofBeginners(), 0);

    /** From this chance on only the full level can show mastery, and easier drills would hold somebody back. */
    private static final double FULL_FROM = 0.73;

    /** What an easier drill should at least be answered with: a little below 85 % (Wilson, Shenhav et al. 2019). */
    private static final double TARGET = 0.8;

    private static final double LEARNT_FROM = 0.85;

    /** After so many easier drills in a row the full level is tried, in case they do not help. */
    static final int MOST_EASIER = 40;

    @Override
    public Grasp after(Credit credit, Instant when) {
        boolean full = credit.level().full();
        return new CountingGrasp(errors.after(credit.level(), credit.right()), full ? 0 : easier + 1);
    }

    @Override
    public double chanceRight(Level level, Instant now) {
        return errors.chanceRight(level);
    }

    @Override
    public Level nextLevel() {
        if (triesFullLevel() || errors.chanceRight(Level.FULL) >= FULL_FROM) {
            return Level.FULL;
        }
        for (int level = Level.HIGHEST - 1; level > Level.LOWEST; level--) {
            if (errors.chanceRight(new Level(level)) >= TARGET) {
                return new Level(level);
            }
        }
        return Level.EASIEST;
    }

    /** Whether easier drills have gone on for so long that they may not help. */
    boolean triesFullLevel() {
        return easier >= MOST_EASIER;
    }

    @Override
    public boolean learnt() {
        return errors.chanceRight(Level.FULL) >= LEARNT_FROM;
    }

    @Override
    public boolean mastered(Window atFullLevel) {
        return MasteryRule.shown(atFullLevel);
    }
}
