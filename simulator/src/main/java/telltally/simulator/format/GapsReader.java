package telltally.simulator.format;

import java.util.List;
import telltally.simulator.document.Fields;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.CodeShape.Place;
import telltally.simulator.format.CodeShape.Spelled;
import telltally.simulator.format.FlashFormat.Gaps;
import telltally.simulator.format.FlashFormat.Repeats;

/** Reads the gaps of a format and checks that each says by its length what it stands between. */
final class GapsReader {
    private final CodeShape shape;
    private final Repeats repeats;
    private final boolean announced;

    /** @param announced whether a lead-in tells where each code begins, so that no gap need do it */
    GapsReader(CodeShape shape, Repeats repeats, boolean announced) {
        this.shape = shape;
        this.repeats = repeats;
        this.announced = announced;
    }

    Gaps read(Fields gaps) {
        SaidLength within = read(gaps, "within_digit_s", "the gap within a digit", oneFlashADigit());
        SaidLength digits = read(gaps, "between_digits_s", "the gap between digits", oneDigitACode());
        // A lone code has no neighbour but its own repeat, so that one of the two gaps is enough.
        boolean lone = repeats.mostCodes() == 1 && repeats.eachCodeTimes() == 1 && !gaps.has("between_codes_s");
        SaidLength codes = SaidLength.read(gaps, lone ? "before_repeat_s" : "between_codes_s", "the gap between codes");
        SaidLength repeat =
                lone ? codes : SaidLength.readOr(gaps, "before_repeat_s", "the gap before a repeat", codes.nanos());
        gaps.close();
        compare(gaps, within, digits, lone ? List.of(codes) : List.of(codes, repeat));
        return gaps(within, digits, codes, repeat);
    }

    /** What is never sent and not said stays below all that is, so that no reader takes one for the other. */
    private static Gaps gaps(SaidLength within, SaidLength digits, SaidLength codes, SaidLength repeat) {
        long shortestNanos = Math.min(codes.nanos(), repeat.nanos());
        if (digits.sound()) {
            shortestNanos = Math.min(shortestNanos, digits.nanos());
        }
        long withinNanos = within.sound() ? within.nanos() : shortestNanos / 2;
        long digitsNanos = digits.sound() ? digits.nanos() : withinNanos;
        return new Gaps(withinNanos, digitsNanos, codes.nanos(), repeat.nanos());
    }

    private static SaidLength read(Fields gaps, String name, String what, boolean mayLack) {
        return mayLack
                ? SaidLength.readOr(gaps, name, what, FormatReader.SHORTEST_NANOS)
                : SaidLength.read(gaps, name, what);
    }

    private void compare(Fields gaps, SaidLength within, SaidLength digits, List<SaidLength> codes) {
        if (!oneDigitACode() && !flashesDiffer()) {
            digits.mustExceed(within, gaps, "digits would run together");
        }
        if (!announced) {
            boolean gapInsideIsShort = oneDigitACode() || (shape instanceof Counted && groupsTellTheirPlace());
            SaidLength inside = gapInsideIsShort ? within : digits;
            codes.forEach(each -> each.mustExceed(inside, gaps, "codes would run together"));
        }
    }

    private List<Place> places() {
        return shape instanceof Counted counted ? counted.places() : List.of();
    }

    /** Said of a shape that could not be read as well: nothing is asked of its gaps that it may not need. */
    private boolean oneDigitACode() {
        return shape instanceof Spelled spelled ? spelled.longest() == 1 : places().size() <= 1;
    }

    private boolean oneFlashADigit() {
        return shape instanceof Spelled spelled
                ? spelled.table().values().stream().allMatch(row -> row.size() <= 1)
                : places().stream().allMatch(place -> place.mostFlashes() == 1);
    }

    /** Where the digits are told apart by the kind of their flashes, their gap need not do it. */
    private boolean flashesDiffer() {
        return !places().isEmpty()
                && places().stream().map(Place::flash).distinct().count() == places().size();
    }

    private record Group(FlashKind flash, int count) {}

    /** Where no group may stand at two places, it tells by itself whether a new code begins with it. */
    private boolean groupsTellTheirPlace() {
        List<Group> groups = places().stream()
                .flatMap(place -> place.counts().values().stream().map(count -> new Group(place.flash(), count)))
                .toList();
        return groups.stream().distinct().count() == groups.size();
    }
}
