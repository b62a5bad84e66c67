package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;

/**
 * Reads how floors were lowered, and holds the floors to it: an entry lowers something, it begins no lower than the
 * entry before it ended, and the floor stands no lower than the last entry left it. Between entries it may have risen.
 */
final class LoweredFields {
    private final DecoderFloors floors;
    private final Fields set;
    private final List<LoweredFloor> read = new ArrayList<>();

    /** @param set the file itself, to tell of its floors */
    LoweredFields(DecoderFloors floors, Fields set) {
        this.floors = floors;
        this.set = set;
    }

    List<LoweredFloor> read(List<Fields> entries) {
        for (Fields each : entries) {
            int before = set.problems().count();
            FloorKind kind = each.choice("floor", List.of(FloorKind.values()), FloorKind::key);
            LoweredFloor entry = entry(each, kind);
            each.close();
            if (set.problems().count() == before) {
                check(entry, kind, each);
            }
            if (set.problems().count() == before) {
                read.add(entry);
            }
        }
        floors.byDecoder().forEach(this::checkNotUndercut);
        return read;
    }

    private static LoweredFloor entry(Fields entry, FloorKind kind) {
        String decoder = entry.optionalText("decoder").orElse(DecoderFloors.PLAIN);
        double from = entry.number("from", 0, kind.most());
        double to = entry.number("to", 0, kind.most());
        return new LoweredFloor(decoder, kind.key(), from, to, entry.text("why"));
    }

    private void check(LoweredFloor entry, FloorKind kind, Fields at) {
        if (!kind.asksLess(entry.to(), entry.from())) {
            boolean greater = kind.asksLess(1, 0);
            at.problem(
                    "to", "lowers nothing; expected a number " + (greater ? "greater" : "smaller") + " than \"from\"");
        }
        if (floors.own(entry.decoder()).isEmpty()) {
            at.problem("decoder", Problem.quoted(entry.decoder()) + " has no floors here");
        }
        lastOf(entry.decoder(), kind)
                .filter(last -> kind.asksLess(entry.from(), last.to()))
                .ifPresent(last -> at.problem(
                        "from",
                        "is lower than the entry before left it; every lowering was expected to have its entry"));
    }

    private void checkNotUndercut(String decoder, Floors held) {
        for (FloorKind kind : FloorKind.values()) {
            lastOf(decoder, kind)
                    .filter(last -> kind.asksLess(kind.of(held), last.to()))
                    .ifPresent(last -> set.problem(
                            "floors",
                            "the " + kind.key() + " of " + decoder + " stands lower than its last entry in \"lowered\""
                                    + " says; an entry with the reason was expected"));
        }
    }

    private Optional<LoweredFloor> lastOf(String decoder, FloorKind kind) {
        return read.stream()
                .filter(each -> each.decoder().equals(decoder) && each.floor().equals(kind.key()))
                .reduce((before, after) -> after);
    }
}
