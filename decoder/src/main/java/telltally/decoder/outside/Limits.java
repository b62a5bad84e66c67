package telltally.decoder.outside;

import java.time.Duration;

/**
 * How much of a program is borne.
 *
 * @param start how long it may take to say what it can do
 * @param session how long it may take to answer one request
 * @param lineBytes the longest line that it may write
 * @param unreadBytes how much it may write that nobody asked for
 * @param errorBytes how much it may write to its standard error for one request
 * @param failuresInARow after so many failed sessions without a good one between, it is not started again
 * @param failures after so many failed sessions of one reader, it is not started again
 */
public record Limits(
        Duration start,
        Duration session,
        int lineBytes,
        int unreadBytes,
        int errorBytes,
        int failuresInARow,
        int failures) {
    public Limits {
        if (start.isNegative() || start.isZero() || session.isNegative() || session.isZero()) {
            throw new IllegalArgumentException("a program needs some time: " + start + ", " + session);
        }
        if (lineBytes < 1 || unreadBytes < lineBytes || errorBytes < 1 || failuresInARow < 1 || failures < 1) {
            throw new IllegalArgumentException("limits of at least 1 were expected, and room for one line");
        }
    }

    /** Ten seconds to start and for each answer, a mebibyte of output, three failures in a row, twenty in all. */
    public static Limits usual() {
        return new Limits(Duration.ofSeconds(10), Duration.ofSeconds(10), 1 << 20, 1 << 20, 1 << 20, 3, 20);
    }

    public Limits withTimes(Duration newStart, Duration newSession) {
        return new Limits(newStart, newSession, lineBytes, unreadBytes, errorBytes, failuresInARow, failures);
    }
}
