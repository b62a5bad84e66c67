package telltally.trainer.drill;

import telltally.trainer.lesson.Slip;

/** One error in an answer, with what there is to explain about it. */
public sealed interface Mistake {
    /** Something wrong in what was written. */
    record InWriting(Slip slip) implements Mistake {}

    /** Written, but too late for the habit. */
    record WrittenLate(String code) implements Mistake {}

    /** The options by what they say. */
    record WrongChoice(Said chosen, Said right) implements Mistake {}

    record WrongNumber(int given, int right) implements Mistake {}

    record NoAnswer() implements Mistake {}
}
