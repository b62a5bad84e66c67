package telltally.simulator.format;

import java.util.List;
import telltally.simulator.signal.Interval;

/** A group of flashes as it was sent. */
public record SentGroup(GroupKind kind, Segment segment, String digits, List<SentSign> signs) {
    public SentGroup {
        signs = List.copyOf(signs);
    }

    /** One digit or sign with its flashes; where the lamp rests lit, these are dark. */
    public record SentSign(String text, List<Interval> flashes) {
        public SentSign {
            flashes = List.copyOf(flashes);
        }

        SentSign later(long nanos) {
            return new SentSign(
                    text,
                    flashes.stream()
                            .map(flash ->
                                    new Interval(flash.lit(), flash.startNanos() + nanos, flash.endNanos() + nanos))
                            .toList());
        }
    }

    /** The same group sent later by so much. */
    public SentGroup later(long nanos) {
        return new SentGroup(
                kind,
                segment,
                digits,
                signs.stream().map(sign -> sign.later(nanos)).toList());
    }

    public long startNanos() {
        return signs.get(0).flashes().get(0).startNanos();
    }

    /** The end of the last flash. */
    public long endNanos() {
        List<Interval> last = signs.get(signs.size() - 1).flashes();
        return last.get(last.size() - 1).endNanos();
    }
}
