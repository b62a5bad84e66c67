package telltally.simulator.format;

import java.util.List;
import java.util.stream.Stream;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/**
 * The lengths of a train's flashes and gaps in turn, in seconds: {@code 0.5 2.0 0.5} is a flash, a gap of two seconds
 * and a flash.
 */
final class OnOff {
    private OnOff() {}

    /** Without what lies before the first flash and after the last. */
    static List<String> of(PulseTrain train) {
        List<String> all = whole(train);
        return all.subList(1, all.size() - 1);
    }

    static List<String> whole(PulseTrain train) {
        return train.intervals().stream()
                .map(each -> Seconds.text(each.lengthNanos()))
                .toList();
    }

    /** As a test spells it out, blanks and line breaks between the figures. */
    static List<String> spelled(String... lines) {
        return Stream.of(lines)
                .flatMap(line -> Stream.of(line.trim().split("\\s+")))
                .toList();
    }
}
