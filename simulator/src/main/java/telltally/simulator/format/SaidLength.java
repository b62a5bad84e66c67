package telltally.simulator.format;

import telltally.simulator.document.Fields;
import telltally.simulator.signal.Seconds;

/**
 * A length of time as a format file says it.
 *
 * @param what as a problem says it: {@code the gap between digits}
 * @param sound whether it is known, and within bounds; only then can it be compared
 */
record SaidLength(String name, String what, long nanos, boolean sound) {
    /** One that is known without a look at the file. */
    static SaidLength known(String what, long nanos) {
        return new SaidLength("", what, nanos, true);
    }

    /** One that must be there. */
    static SaidLength read(Fields at, String name, String what) {
        int before = at.problems().count();
        long nanos = at.nanos(name, FormatReader.SHORTEST_NANOS, FormatReader.LONGEST_NANOS);
        return new SaidLength(name, what, nanos, at.problems().count() == before);
    }

    /** One that has another length where the file does not say it. */
    static SaidLength readOr(Fields at, String name, String what, long otherwiseNanos) {
        int before = at.problems().count();
        long nanos = at.optionalNanos(name, FormatReader.SHORTEST_NANOS, FormatReader.LONGEST_NANOS)
                .orElse(otherwiseNanos);
        return new SaidLength(name, what, nanos, at.has(name) && at.problems().count() == before);
    }

    /** Tells if this one is not longer than the other, and what would come of it. */
    void mustExceed(SaidLength other, Fields at, String otherwise) {
        if (sound && other.sound && nanos <= other.nanos) {
            at.problem(
                    name,
                    Seconds.text(nanos) + " is not longer than " + other.what + " (" + Seconds.text(other.nanos) + "); "
                            + otherwise);
        }
    }
}
