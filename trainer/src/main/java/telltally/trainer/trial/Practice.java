package telltally.trainer.trial;

import telltally.trainer.drill.Skill;
import telltally.trainer.trial.Assumptions.Value;

/**
 * What practice has made of one learner for one skill, at one moment: the chances that go into an answer.
 *
 * @param slip per flash, from counting at large
 * @param own per flash or pause, what the skill itself still adds
 * @param glances away per second
 * @param gapSpread of felt gaps
 * @param load how much counting on disturbs what is held
 * @param overflow the chance to lose a code that is more than can be held at once
 */
record Practice(double slip, double own, double glances, double gapSpread, double load, double overflow, int capacity) {
    private static final double MOST_SLIP = 0.6;

    static Practice of(Person person, Assumptions assumed, double digits, double ownDigits) {
        double scale = assumed.of(Value.SLIP_DIGITS) * person.pace();
        double left = StrictMath.exp(-ownDigits / (assumed.of(Value.OWN_DIGITS) * person.pace()));
        return new Practice(
                least(Counting.practised(
                        assumed.of(Value.FIRST_SLIP) * person.slip(), assumed.of(Value.LAST_SLIP), digits, scale)),
                least(assumed.of(Value.OWN_SLIP) * person.slip() * left),
                person.glances()
                        * Counting.practised(
                                assumed.of(Value.FIRST_GLANCES), assumed.of(Value.LAST_GLANCES), digits, scale),
                person.gaps()
                        * Counting.practised(
                                assumed.of(Value.FIRST_GAP_SPREAD), assumed.of(Value.LAST_GAP_SPREAD), digits, scale),
                assumed.of(Value.HOLDING_LOAD) * left,
                left,
                person.capacity());
    }

    private static double least(double slip) {
        return Math.min(slip, MOST_SLIP);
    }

    /** The chance to count one digit rightly. */
    double digit(Task task, int flashes) {
        return Counting.chanceRight(flashes, Math.min(slip + (ownInDigits(task) ? own : 0), MOST_SLIP));
    }

    /** The chance that every digit is counted rightly. */
    double digits(Task task) {
        double all = 1;
        for (int flashes : task.flashes()) {
            all *= digit(task, flashes);
        }
        return all;
    }

    /** The chance that all is well that is not the counting of digits. */
    double rest(Task task, double glanceHarm) {
        double lost = 1 - StrictMath.exp(-glances * task.flashSeconds() * glanceHarm);
        // Somebody who looked away knows it, and looks again when the list is repeated.
        double seen = 1 - Counting.power(lost, task.passes());
        return seen * gaps(task) * heldAll(task);
    }

    private double gaps(Task task) {
        switch (task.skill()) {
            case SEPARATOR_PAUSE -> {
                double told = 1 - Counting.gapsSwapped(task.codeRatio(), gapSpread);
                return Counting.power(told * (1 - own), task.codePauses());
            }
            case END_OF_A_DIGIT -> {
                return Counting.power(1 - own, task.digitPauses() + 1) * told(task);
            }
            case END_OF_A_CODE, END_OF_THE_LIST -> {
                return Counting.power(1 - own, task.codePauses() + 1) * told(task);
            }
            case MISSED_FLASH, GHOST_FLASH -> {
                int flashes = task.flashes().stream().mapToInt(each -> each).sum();
                return Counting.power(1 - own, flashes);
            }
            default -> {
                return told(task);
            }
        }
    }

    private double told(Task task) {
        double digits = 1 - Counting.gapMisread(task.digitRatio(), gapSpread);
        double codes = 1 - Counting.gapMisread(task.codeRatio(), gapSpread);
        return Counting.power(digits, task.digitPauses()) * Counting.power(codes, task.codePauses());
    }

    private double heldAll(Task task) {
        double all = 1;
        for (int code = 0; code < task.heldSeconds().size(); code++) {
            all *= Counting.held(task.heldSeconds().get(code), load) * (code < capacity ? 1 : 1 - overflow);
        }
        return all;
    }

    /** Whether a miscounted digit makes an answer in this skill wrong. */
    static boolean countsDigits(Task task) {
        return task.skill() == Skill.COUNT_A_DIGIT || ownInDigits(task);
    }

    /** Whether the skill is counting under some circumstance, which adds to the slips. */
    private static boolean ownInDigits(Task task) {
        return switch (task.skill()) {
            case HOLD_TWO_DIGITS,
                    LONG_AND_SHORT,
                    FROM_THE_MIDDLE,
                    DIM_LAMP,
                    NEEDLE,
                    BY_EAR,
                    INTERRUPTION,
                    LIST_IN_THE_HEAD -> true;
            default -> false;
        };
    }
}
