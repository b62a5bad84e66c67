package telltally.trainer.mastery;

import java.util.List;

/**
 * An up-and-down rule on a difficulty that the program sets (Levitt 1971, Journal of the Acoustical Society of America
 * 49:467-477; weighted steps: Kaernbach 1991, Perception and Psychophysics 49:227-229). A lower value is harder, as with
 * the strength of a stimulus.
 *
 * @param rule how it moves
 * @param value what the next question has
 * @param streak right answers since the last move
 * @param direction -1 while going down, 1 while going up, 0 before the first move
 * @param reversals how often it turned
 */
public record Staircase(Rule rule, double value, int streak, int direction, int reversals) {

    /** Whether steps are added or multiply, in decibels of a twentieth of a power of ten. */
    public enum Scale {
        LINEAR,
        DECIBEL
    }

    /**
     * @param rightsDown so many right answers in a row make it harder
     * @param down how far a right streak goes down: one length for each reversal so far, the last one for all later
     * @param up how far one wrong answer goes up, likewise
     * @param scale of both
     * @param quickStart whether each right answer goes down until the first reversal
     * @param least the hardest value
     * @param most the easiest value
     */
    public record Rule(
            int rightsDown,
            List<Double> down,
            List<Double> up,
            Scale scale,
            boolean quickStart,
            double least,
            double most) {
        public Rule {
            down = List.copyOf(down);
            up = List.copyOf(up);
            if (rightsDown < 1 || down.isEmpty() || up.isEmpty() || least > most) {
                throw new IllegalArgumentException("no rule for a staircase");
            }
        }

        /** One up, so many down, in steps of one length without bounds. */
        public static Rule transformed(int rightsDown, double step) {
            return weighted(rightsDown, step, step);
        }

        public static Rule weighted(int rightsDown, double down, double up) {
            return new Rule(
                    rightsDown,
                    List.of(down),
                    List.of(up),
                    Scale.LINEAR,
                    false,
                    Double.NEGATIVE_INFINITY,
                    Double.POSITIVE_INFINITY);
        }

        /** The share of right answers that the last, lasting steps lead to: (up/(up + down))^(1/rightsDown). */
        public double target() {
            double lastUp = up.get(up.size() - 1);
            double lastDown = down.get(down.size() - 1);
            return StrictMath.pow(lastUp / (lastUp + lastDown), 1.0 / rightsDown);
        }
    }

    public static Staircase from(double value, Rule rule) {
        return new Staircase(rule, value, 0, 0, 0);
    }

    public Staircase after(boolean right) {
        if (!right) {
            return moved(1);
        }
        boolean enough = streak + 1 >= rule.rightsDown() || (rule.quickStart() && reversals == 0);
        return enough ? moved(-1) : new Staircase(rule, value, streak + 1, direction, reversals);
    }

    private Staircase moved(int towards) {
        int turns = reversals + (direction == -towards ? 1 : 0);
        List<Double> steps = towards < 0 ? rule.down() : rule.up();
        double step = steps.get(Math.min(turns, steps.size() - 1)) * towards;
        double next = rule.scale() == Scale.LINEAR ? value + step : value * StrictMath.pow(10, step / 20);
        double within = Math.min(Math.max(next, rule.least()), rule.most());
        return new Staircase(rule, within, 0, towards, turns);
    }
}
