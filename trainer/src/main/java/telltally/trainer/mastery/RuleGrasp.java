package telltally.trainer.mastery;

import java.time.Instant;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;

/**
 * A rule, followed by knowledge tracing. Rules are asked as a choice among few or by writing codes down, so a quarter of
 * the answers may be right by guessing and one in ten wrong by a slip: the caps that keep the model sane (Baker, Corbett
 * and Aleven 2008: guess at most 0.3, slip at most 0.1). What is known at the start and learnt at each occasion: common
 * practice, no source.
 */
public record RuleGrasp(KnowledgeTracing tracing) implements Grasp {
    static final RuleGrasp BEGINNING =
            new RuleGrasp(new KnowledgeTracing(0.2, new KnowledgeTracing.Rates(0.15, 0.1, 0.25)));

    private static final double FULL_FROM = 0.7;

    @Override
    public Grasp after(Credit credit, Instant when) {
        return new RuleGrasp(tracing.after(credit.right()));
    }

    @Override
    public double chanceRight(Level level, Instant now) {
        return tracing.chanceRight();
    }

    /** A rule is met in its plainest form, which is also the shortest, and shown at full level. */
    @Override
    public Level nextLevel() {
        return tracing.known() < FULL_FROM ? Level.EASIEST : Level.FULL;
    }

    @Override
    public boolean learnt() {
        return tracing.known() >= MasteryRule.KNOWN;
    }

    @Override
    public boolean mastered(Window atFullLevel) {
        return tracing.known() >= MasteryRule.KNOWN && MasteryRule.followed(atFullLevel);
    }
}
