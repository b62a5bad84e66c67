package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import telltally.decoder.lattice.ListStructure.Column;
import telltally.decoder.reading.Reading.Alternative;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** The groups of one segment, and the list that they send. */
final class Region {
    private static final double SURE = 0.9999;

    final Segment segment;
    final ListStructure structure;
    private final List<Found> groups;

    /** A group as it is reported. */
    record Reported(
            GroupKind kind,
            Segment segment,
            String digits,
            double probability,
            int first,
            int last,
            List<Alternative> alternatives) {
        Reported {
            alternatives = List.copyOf(alternatives);
        }
    }

    final List<String> codes = new ArrayList<>();
    final List<Reported> reported = new ArrayList<>();

    Region(Segment segment, List<Found> groups, ListStructure structure) {
        this.segment = segment;
        this.groups = List.copyOf(groups);
        this.structure = structure;
    }

    /** The first flash of the first sending that, alone, would be read otherwise than all together. */
    OptionalInt differing() {
        for (Column column : structure.columns) {
            for (Found group : column.evidence().groups) {
                if (!group.begunBefore && !group.unfinished && !group.digits().equals(column.code())) {
                    return OptionalInt.of(group.firstFlash);
                }
            }
        }
        return OptionalInt.empty();
    }

    /** Settles the list, with a look at what stands before and after this region. */
    void settle(FormatTrial trial, boolean cut) {
        FormatModel model = trial.model;
        List<Found> all = trial.finder().groups;
        int from = 0;
        int to = groups.size();
        while (from < to && !readable(groups.get(from))) {
            from++;
        }
        while (to > from && !readable(groups.get(to - 1))) {
            to--;
        }
        if (from == to || (!cut && isPlain())) {
            plain();
            return;
        }
        int before = all.indexOf(groups.get(from)) - 1;
        int after = all.indexOf(groups.get(to - 1)) + 1;
        boolean lead = before >= 0
                && all.get(before).kind == GroupKind.STEADY
                && model.format.leadIn().isPresent();
        boolean separatorBefore = from == 0 && before >= 0 && all.get(before).kind == GroupKind.SEPARATOR;
        boolean separatorAfter =
                to == groups.size() && after < all.size() && all.get(after).kind == GroupKind.SEPARATOR;
        int firstFlash = lead || separatorBefore ? all.get(before).firstFlash : groups.get(from).firstFlash;
        int lastFlash = separatorAfter ? all.get(after).lastFlash : groups.get(to - 1).lastFlash;
        Flashes slice = trial.flashes.slice(firstFlash, lastFlash + 1);
        ListWeigher weigher =
                new ListWeigher(model, slice, trial.channel, structure, separatorBefore, separatorAfter, trial.stock);
        if (!weigher.explains()) {
            plain();
            return;
        }
        for (Found group : groups.subList(0, from)) {
            reported.add(unreadable(group));
        }
        List<ListWeigher.Seen> seenGroups = weigher.groups();
        for (String code : weigher.codes()) {
            // A code seen only at the brink of the recording, and more likely cut than whole, was not read.
            boolean sent = seenGroups.stream()
                    .anyMatch(each ->
                            each.kind() == GroupKind.CODE && each.digits().equals(code));
            if (sent && (weigher.probability(code) >= 0.5 || !onlyAtBrink(code, seenGroups))) {
                codes.add(code);
            }
        }
        for (ListWeigher.Seen seen : seenGroups) {
            if (seen.kind() == GroupKind.CODE || (seen.kind() == GroupKind.SEPARATOR && !isSeparator(model, seen))) {
                boolean code = seen.kind() == GroupKind.CODE;
                double probability = code ? weigher.probability(seen.digits()) : 1;
                reported.add(new Reported(
                        code && !codes.contains(seen.digits()) ? GroupKind.UNREADABLE : seen.kind(),
                        segment,
                        seen.digits(),
                        probability,
                        firstFlash + seen.first(),
                        firstFlash + seen.last(),
                        weigher.alternatives(seen.digits())));
            }
        }
        for (Found group : groups.subList(to, groups.size())) {
            reported.add(unreadable(group));
        }
    }

    /** Whether a code was sent once only, as the first or the last of all that was seen. */
    private static boolean onlyAtBrink(String code, List<ListWeigher.Seen> seen) {
        List<ListWeigher.Seen> sent =
                seen.stream().filter(each -> each.kind() == GroupKind.CODE).toList();
        long times = sent.stream().filter(each -> each.digits().equals(code)).count();
        return times == 1
                && (sent.get(0).digits().equals(code)
                        || sent.get(sent.size() - 1).digits().equals(code));
    }

    private static boolean isSeparator(FormatModel model, ListWeigher.Seen seen) {
        return model.format.framingCode().filter(seen.digits()::equals).isEmpty();
    }

    private boolean readable(Found group) {
        if (structure.framing.contains(group)) {
            return true;
        }
        for (Column column : structure.columns) {
            if (column.evidence().groups.contains(group)) {
                return column.evidence().complete && column.evidence().whole;
            }
        }
        return false;
    }

    /** Whether nothing about the list is open. */
    private boolean isPlain() {
        return structure.whole
                && structure.columns.stream().allMatch(column -> column.probability() > SURE)
                && structure.columns.stream()
                        .allMatch(column -> column.evidence().groups.stream()
                                .allMatch(group -> group.digits().equals(column.code())));
    }

    private void plain() {
        for (Found group : groups) {
            if (structure.framing.contains(group)) {
                reported.add(new Reported(
                        GroupKind.SEPARATOR,
                        segment,
                        structure.framingCode(),
                        1,
                        group.firstFlash,
                        group.lastFlash,
                        List.of()));
                continue;
            }
            Reported as = unreadable(group);
            for (Column column : structure.columns) {
                if (column.evidence().groups.contains(group) && column.evidence().complete && column.evidence().whole) {
                    as = new Reported(
                            GroupKind.CODE,
                            segment,
                            column.code(),
                            column.probability(),
                            group.firstFlash,
                            group.lastFlash,
                            List.of());
                }
            }
            reported.add(as);
        }
        for (Column column : structure.columns) {
            if (column.evidence().complete && column.evidence().whole && !codes.contains(column.code())) {
                codes.add(column.code());
            }
        }
    }

    private Reported unreadable(Found group) {
        return new Reported(
                GroupKind.UNREADABLE, segment, group.digits(), 1, group.firstFlash, group.lastFlash, List.of());
    }
}
