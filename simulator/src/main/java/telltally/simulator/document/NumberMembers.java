package telltally.simulator.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import telltally.simulator.signal.Seconds;

/** Members that are numbers, each within bounds; {@link Fields} says what comes of those that are not. */
final class NumberMembers {
    private final Members members;

    NumberMembers(Members members) {
        this.members = members;
    }

    int whole(String name, int from, int to) {
        Json value = members.required(name, "a whole number");
        if (value instanceof Json.JsonNumber number) {
            BigDecimal found = number.number();
            // Compared before it is made an int: 1e999999999 must not be multiplied out.
            if (found.compareTo(BigDecimal.valueOf(from)) < 0 || found.compareTo(BigDecimal.valueOf(to)) > 0) {
                members.problem(name, "is " + shown(found) + "; expected a whole number from " + from + " to " + to);
                return from;
            }
            if (found.stripTrailingZeros().scale() > 0) {
                members.problem(name, "is " + shown(found) + "; expected a whole number");
                return from;
            }
            return found.intValue();
        }
        members.wrongKind(name, value, "a whole number");
        return from;
    }

    long wholeLong(String name) {
        Json value = members.required(name, "a whole number");
        if (value instanceof Json.JsonNumber number) {
            try {
                return number.number().longValueExact();
            } catch (ArithmeticException e) {
                members.problem(name, "is " + shown(number.number()) + "; expected a whole number of at most 63 bits");
                return 0;
            }
        }
        members.wrongKind(name, value, "a whole number");
        return 0;
    }

    double number(String name, double from, double to) {
        Json value = members.required(name, "a number");
        if (value instanceof Json.JsonNumber number) {
            BigDecimal found = number.number();
            if (found.compareTo(BigDecimal.valueOf(from)) < 0 || found.compareTo(BigDecimal.valueOf(to)) > 0) {
                members.problem(
                        name, "is " + shown(found) + "; expected a number from " + plain(from) + " to " + plain(to));
                return from;
            }
            return found.doubleValue();
        }
        members.wrongKind(name, value, "a number");
        return from;
    }

    long nanos(String name, long fromNanos, long toNanos) {
        Json value = members.required(name, "a number of seconds");
        if (value instanceof Json.JsonNumber number) {
            BigDecimal found = number.number();
            BigDecimal from = BigDecimal.valueOf(fromNanos, 9);
            BigDecimal to = BigDecimal.valueOf(toNanos, 9);
            if (found.compareTo(from) < 0 || found.compareTo(to) > 0) {
                members.problem(
                        name,
                        "is " + shown(found) + "; expected seconds from " + Seconds.text(fromNanos) + " to "
                                + Seconds.text(toNanos));
                return fromNanos;
            }
            return Seconds.nanos(found);
        }
        members.wrongKind(name, value, "a number of seconds");
        return fromNanos;
    }

    List<Double> numbers(String name, double from, double to) {
        List<Double> found = new ArrayList<>();
        List<Json> elements = members.elements(name, "an array of numbers");
        for (int i = 0; i < elements.size(); i++) {
            String expected = "a number from " + plain(from) + " to " + plain(to);
            if (!(elements.get(i) instanceof Json.JsonNumber number)) {
                members.wrongElement(name, i, elements.get(i), expected);
            } else if (number.number().compareTo(BigDecimal.valueOf(from)) < 0
                    || number.number().compareTo(BigDecimal.valueOf(to)) > 0) {
                members.problem(name, i, number, "is " + shown(number.number()) + "; expected " + expected);
            } else {
                found.add(number.number().doubleValue());
            }
        }
        return found;
    }

    private static String shown(BigDecimal number) {
        // As a long: the exponent may be as large as an int.
        String text = (long) number.precision() - number.scale() > 30 || number.scale() > 30
                ? number.toString()
                : number.toPlainString();
        return text.length() > 40 ? text.substring(0, 40) + "..." : text;
    }

    private static String plain(double bound) {
        return BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString();
    }
}
