package telltally.decoder.outside;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import telltally.decoder.score.Outcome.Failure;

/**
 * The lines that a program has written and nobody has taken yet. One thread fills it, another takes from it; it never
 * holds more than its bound.
 */
final class LineInbox implements Runnable {
    private static final int CHUNK_BYTES = 1 << 13;

    private final InputStream in;
    private final Limits limits;
    private final Deque<byte[]> lines = new ArrayDeque<>();
    private final ByteArrayOutputStream begun = new ByteArrayOutputStream();
    private int untakenBytes;
    private boolean closed;
    private String flood = "";

    LineInbox(InputStream in, Limits limits) {
        this.in = in;
        this.limits = limits;
    }

    /** Fills the inbox until the program closes its output or writes more than is borne. */
    @Override
    public void run() {
        byte[] chunk = new byte[CHUNK_BYTES];
        try {
            int length = in.read(chunk);
            while (length >= 0 && add(chunk, length)) {
                length = in.read(chunk);
            }
        } catch (IOException e) {
            // The program was ended and its output with it.
        }
        close();
    }

    private synchronized void close() {
        closed = true;
        notifyAll();
    }

    /** Whether there is room for more. */
    private synchronized boolean add(byte[] chunk, int length) {
        int from = 0;
        for (int i = 0; i < length; i++) {
            if (chunk[i] == '\n') {
                write(chunk, from, i - from);
                lines.add(begun.toByteArray());
                untakenBytes += begun.size() + 1;
                begun.reset();
                from = i + 1;
            }
        }
        write(chunk, from, length - from);
        if (flood.isEmpty() && untakenBytes + begun.size() > limits.unreadBytes()) {
            flood = "wrote more than " + limits.unreadBytes() + " bytes that nobody asked for";
        }
        notifyAll();
        return flood.isEmpty();
    }

    private void write(byte[] chunk, int from, int length) {
        begun.write(chunk, from, length);
        if (begun.size() > limits.lineBytes()) {
            flood = "wrote a line of more than " + limits.lineBytes() + " bytes";
        }
    }

    /**
     * Takes the next line, without its end. Lines that came before a flood are taken first, so that it is a matter of
     * what was written, and not of who was faster, which session the flood belongs to.
     *
     * @param deadlineNanos by {@link System#nanoTime}
     * @return nothing where the deadline passed or the output was closed; {@link #isClosed} tells which
     * @throws Misbehaviour if the program has written more than is borne, and no line before that is left
     */
    synchronized Optional<byte[]> take(long deadlineNanos) throws Misbehaviour, InterruptedException {
        long leftNanos = deadlineNanos - System.nanoTime();
        while (flood.isEmpty() && lines.isEmpty() && !closed && leftNanos > 0) {
            // At least a millisecond: the wait counts in those, and 0 would mean for ever.
            TimeUnit.NANOSECONDS.timedWait(this, Math.max(leftNanos, 1_000_000));
            leftNanos = deadlineNanos - System.nanoTime();
        }
        byte[] line = lines.poll();
        if (line == null && !flood.isEmpty()) {
            throw new Misbehaviour(Failure.FLOODED, flood);
        }
        untakenBytes -= line == null ? 0 : line.length + 1;
        return Optional.ofNullable(line);
    }

    synchronized boolean holdsLine() {
        return !lines.isEmpty();
    }

    synchronized boolean isClosed() {
        return closed;
    }

    /** How much of a line was written whose end has not come. */
    synchronized int begunBytes() {
        return begun.size();
    }
}
