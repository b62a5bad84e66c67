package telltally.decoder.outside;

import java.time.Duration;

/**
 * How much of a program is borne.
 *
 * @param start how long it may take to say what it can do
 * @param session how long it may take to answer one request
 * @param lineBytes the longest line that it may write
 * @param unreadBytes how much it may write that nobody asked for
 * @param failuresInARow after so many failed sessions of one reader without a good one between, it is not started again
 * @param hangs after so many sessions of one reader that it did not answer in time, it is not started again
 */
public record Limits(Duration start, Duration session, int lineBytes, int unreadBytes, int failuresInARow, int hangs) {
    public Limits {
        if (start.isNegative() || start.isZero() || session.isNegative() || session.isZero()) {
            throw new IllegalArgumentException("a program needs some time: " + start + ", " + session);
        }
        if (lineBytes < 1 || unreadBytes < lineBytes || failuresInARow < 1 || hangs < 1) {
            throw new IllegalArgumentException("limits of at least 1 were expected, and room for one line");
        }
    }

    /** Ten seconds to start and for each answer, a mebibyte of output, twenty failures in a row, ten hangs. */
    public static Limits usual() {
        return new Limits(Duration.ofSeconds(10), Duration.ofSeconds(10), 1 << 20, 1 << 20, 20, 10);
    }

    public Limits withTimes(Duration newStart, Duration newSession) {
        return new Limits(newStart, newSession, lineBytes, unreadBytes, failuresInARow, hangs);
    }
}
