package telltally.trainer.lesson;

import java.util.List;
import telltally.simulator.format.Segment;

/** The words that marking is told in. */
public final class Words {
    private static final List<String> NUMBERS =
            List.of("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");
    private static final List<String> ORDINALS = List.of("first", "second", "third", "fourth", "fifth", "sixth");

    private Words() {}

    static String number(int number) {
        return number < NUMBERS.size() ? NUMBERS.get(number) : Integer.toString(number);
    }

    static String flashes(int count) {
        return count == 1 ? "1 flash" : count + " flashes";
    }

    /** @param place counted from 0 */
    static String ordinal(int place) {
        return place < ORDINALS.size() ? ORDINALS.get(place) : (place + 1) + "th";
    }

    /** As it stands over a column of the work sheet, in lower case. */
    public static String title(Segment segment) {
        return segment.key();
    }

    static String yourList(Segment segment) {
        return segment == Segment.CODES ? "your codes" : "your " + title(segment) + " codes";
    }
}
