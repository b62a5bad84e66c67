package telltally.trainer.lesson;

import java.util.List;
import java.util.OptionalInt;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;

/** How the codes of one segment are read as signs, each a row of flashes. */
record CodeSigns(FlashFormat format, Segment segment) {
    /** A code as it is compared: a balance result is written with or without the zero that sends no flash. */
    String plain(String code) {
        boolean writtenZero = segment == Segment.BALANCE && code.length() == 2 && code.endsWith("0");
        return writtenZero ? code.substring(0, 1) : code;
    }

    /** Whether a code is a single count, so that 12 means twelve flashes. */
    boolean oneCount() {
        return segment == Segment.BALANCE
                || (format.shape() instanceof Counted counted
                        && counted.places().size() == 1);
    }

    /** What is one unit of counting: a digit, or the whole code where it is a single count. */
    List<String> split(String code) {
        return oneCount()
                ? List.of(code)
                : code.chars().mapToObj(Character::toString).toList();
    }

    /**
     * How many flashes a digit is; empty where signs are no counts.
     *
     * @param place counted from 0, of the code that was sent
     */
    OptionalInt flashes(int place, String digit) {
        if (segment != Segment.BALANCE && !(format.shape() instanceof Counted)) {
            return OptionalInt.empty();
        }
        if (segment != Segment.BALANCE
                && format.shape() instanceof Counted counted
                && place < counted.places().size()) {
            CodeShape.Place known = counted.places().get(place);
            Integer count = known.counts().get(digit);
            if (count != null) {
                return OptionalInt.of(count);
            }
        }
        return digit.matches("[0-9]{1,4}") ? OptionalInt.of(Integer.parseInt(digit)) : OptionalInt.empty();
    }

    /** Whether this can be no code of the segment at all. */
    boolean refuses(String code) {
        return segment == Segment.BALANCE
                ? !code.matches("[0-9]")
                : format.refusal(code).isPresent();
    }
}
