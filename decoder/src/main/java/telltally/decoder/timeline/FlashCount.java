package telltally.decoder.timeline;

import java.util.List;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.signal.Interval;

/** Numbers flashes within their groups, one after the other in the order of time. */
final class FlashCount {
    private final List<Group> groups;
    private int group;
    private int count;

    /** @param groups in order of time */
    FlashCount(List<Group> groups) {
        this.groups = groups;
    }

    /** The number of this flash within its group, from 1; 0 where it is in none. */
    int next(Interval flash) {
        while (group < groups.size() && groups.get(group).endNanos() <= flash.startNanos()) {
            group++;
            count = 0;
        }
        boolean within = group < groups.size() && groups.get(group).startNanos() < flash.endNanos();
        return within ? ++count : 0;
    }
}
