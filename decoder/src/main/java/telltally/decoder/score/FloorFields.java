package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import telltally.simulator.document.Fields;

/** Reads the floors of a seed set and how they were lowered. */
final class FloorFields {
    private static final String LISTS_RIGHT = "lists_right";
    private static final String CODES_RIGHT = "codes_right";
    private static final String INVENTED_CODES = "invented_codes";
    private static final List<String> NAMES = List.of(LISTS_RIGHT, CODES_RIGHT, INVENTED_CODES);
    private static final int MOST_INVENTED = 1_000_000;

    private FloorFields() {}

    static Floors floors(Fields floors) {
        Floors read = new Floors(
                floors.number(LISTS_RIGHT, 0, 1),
                floors.number(CODES_RIGHT, 0, 1),
                floors.whole(INVENTED_CODES, 0, MOST_INVENTED));
        floors.close();
        return read;
    }

    static List<LoweredFloor> lowered(List<Fields> entries) {
        List<LoweredFloor> lowered = new ArrayList<>();
        for (Fields each : entries) {
            lowered.add(lowered(each));
            each.close();
        }
        return lowered;
    }

    private static LoweredFloor lowered(Fields entry) {
        int before = entry.problems().count();
        String floor = entry.choice("floor", NAMES, Function.identity());
        boolean invented = floor.equals(INVENTED_CODES);
        double most = invented ? MOST_INVENTED : 1;
        double from = entry.number("from", 0, most);
        double to = entry.number("to", 0, most);
        boolean lower = invented ? to > from : to < from;
        if (!lower && entry.problems().count() == before) {
            entry.problem(
                    "to", "lowers nothing; expected a number " + (invented ? "greater" : "smaller") + " than \"from\"");
        }
        return new LoweredFloor(floor, from, to, entry.text("why"));
    }
}
