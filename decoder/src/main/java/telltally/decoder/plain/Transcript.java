package telltally.decoder.plain;

import java.util.List;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.simulator.signal.Seconds;

/** What is written down of an attempt: the groups of a reading, and what is doubtful about them. */
record Transcript(List<Group> groups, List<Warning> warnings) {
    Transcript {
        groups = List.copyOf(groups);
        warnings = List.copyOf(warnings);
    }

    /** To a hundredth of a second; nobody reads more off a lamp. */
    static String text(long nanos) {
        return Seconds.text((nanos + 5_000_000) / 10_000_000 * 10_000_000) + " s";
    }
}
