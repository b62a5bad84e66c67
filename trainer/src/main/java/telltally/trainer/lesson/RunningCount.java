package telltally.trainer.lesson;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.signal.Interval;

/**
 * How far somebody who counts along without a mistake has come.
 *
 * @param group the group under way, or the last one that ended; empty before the first
 * @param flashes flashes of the current digit that have begun
 * @param digits the digits that are complete, the current one being so once its last flash is over
 * @param repeat whether the same group was sent before in its segment
 */
public record RunningCount(Optional<SentGroup> group, int flashes, String digits, boolean repeat) {
    private static final RunningCount NOTHING_YET = new RunningCount(Optional.empty(), 0, "", false);

    /** @param groups all groups of a recording, in the order sent */
    public static RunningCount at(List<SentGroup> groups, long atNanos) {
        int begun = 0;
        while (begun < groups.size() && groups.get(begun).startNanos() <= atNanos) {
            begun++;
        }
        if (begun == 0) {
            return NOTHING_YET;
        }
        SentGroup group = groups.get(begun - 1);
        boolean repeat = groups.subList(0, begun - 1).stream()
                .anyMatch(earlier -> earlier.kind() == group.kind()
                        && earlier.segment() == group.segment()
                        && earlier.digits().equals(group.digits()));
        return within(group, repeat, atNanos);
    }

    private static RunningCount within(SentGroup group, boolean repeat, long atNanos) {
        StringBuilder digits = new StringBuilder();
        int flashes = 0;
        for (SentSign sign : group.signs()) {
            List<Interval> all = sign.flashes();
            long begun =
                    all.stream().filter(flash -> flash.startNanos() <= atNanos).count();
            if (begun > 0) {
                flashes = (int) begun;
            }
            if (!all.isEmpty() && all.get(all.size() - 1).endNanos() <= atNanos) {
                digits.append(sign.text());
            }
        }
        return new RunningCount(Optional.of(group), flashes, digits.toString(), repeat);
    }
}
