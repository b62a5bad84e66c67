package telltally.decoder.outside;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import telltally.decoder.score.Outcome.Failure;

/**
 * A running program that is spoken to in lines. Three threads keep its pipes moving, so that nothing here waits longer
 * than it is told to. Not for sharing between threads.
 */
final class Program implements AutoCloseable {
    private static final long GRACE_MILLIS = 500;

    /** Queued to say that nothing more will be sent. */
    private static final byte[] END = {};

    private final Process process;
    private final ProcessTree tree;
    private final LineInbox inbox;
    private final ErrorTail errors;
    private final Thread errorReader;
    private final Thread atExit;
    private final BlockingQueue<byte[]> outbox = new ArrayBlockingQueue<>(1);

    private Program(Process process, String mark, Limits limits) {
        this.process = process;
        this.tree = new ProcessTree(process, mark);
        this.inbox = new LineInbox(process.getInputStream(), limits);
        this.errors = new ErrorTail(process.getErrorStream());
        this.errorReader = daemon("errors", errors);
        this.atExit = new Thread(tree::end, "telltally-outside-exit");
    }

    /** @throws Misbehaviour if there is no such program */
    static Program start(List<String> command, Limits limits) throws Misbehaviour {
        String mark = UUID.randomUUID().toString();
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put(ProcessTree.MARK, mark);
        try {
            Program program = new Program(builder.start(), mark, limits);
            program.begin();
            return program;
        } catch (IOException e) {
            throw new Misbehaviour(Failure.DIED, "cannot be started: " + e.getMessage());
        }
    }

    private void begin() throws Misbehaviour {
        try {
            Runtime.getRuntime().addShutdownHook(atExit);
        } catch (IllegalStateException e) {
            tree.end();
            throw new Misbehaviour(Failure.DIED, "was not started: Telltally is being ended");
        }
        errorReader.start();
        daemon("output", inbox).start();
        daemon("input", this::send).start();
    }

    private static Thread daemon(String what, Runnable work) {
        Thread thread = new Thread(work, "telltally-outside-" + what);
        thread.setDaemon(true);
        return thread;
    }

    /** Passes lines on; waits where the program does not read, but nobody waits for this thread. */
    private void send() {
        try (OutputStream out = process.getOutputStream()) {
            byte[] line = outbox.take();
            while (line.length > 0) {
                out.write(line);
                out.write('\n');
                out.flush();
                line = outbox.take();
            }
        } catch (IOException | InterruptedException e) {
            // It reads no more; that is told by what it does not answer.
        }
    }

    /**
     * Sends one line and takes one.
     *
     * @throws Misbehaviour if none comes in time, or one was there before it was asked for
     */
    byte[] ask(String line, Duration within) throws Misbehaviour {
        if (inbox.holdsLine()) {
            throw unasked();
        }
        if (!outbox.offer(line.getBytes(StandardCharsets.UTF_8))) {
            throw new Misbehaviour(Failure.HUNG, "does not read its standard input");
        }
        try {
            Optional<byte[]> answer = inbox.take(System.nanoTime() + within.toNanos());
            if (answer.isEmpty()) {
                throw inbox.isClosed() ? died() : hung(within);
            }
            return answer.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Misbehaviour(Failure.HUNG, "had not answered when the run was interrupted");
        }
    }

    /** A line that answers nothing. */
    static Misbehaviour unasked() {
        return new Misbehaviour(Failure.OUT_OF_ORDER, "wrote a line that nobody had asked for");
    }

    private Misbehaviour hung(Duration within) {
        int begun = inbox.begunBytes();
        return new Misbehaviour(
                Failure.HUNG,
                "no answer within " + within.toMillis() + " ms"
                        + (begun == 0 ? "" : "; " + begun + " bytes of a line that does not end"));
    }

    private Misbehaviour died() throws InterruptedException {
        Optional<Integer> status = tree.status(GRACE_MILLIS);
        if (status.isEmpty()) {
            return new Misbehaviour(Failure.DIED, "closed its standard output");
        }
        errorReader.join(GRACE_MILLIS);
        String last = errors.lastLine();
        String begun = inbox.begunBytes() == 0 ? "" : " in the middle of a line";
        return new Misbehaviour(
                Failure.DIED,
                "ended" + begun + " with status " + status.get()
                        + (last.isEmpty() ? "" : "; its last words: " + shown(last)));
    }

    private static String shown(String words) {
        return words.replaceAll("\\p{Cntrl}", "?");
    }

    /** Lets the program end by itself, for a moment; then ends it with all that it started. */
    @Override
    public void close() {
        try {
            if (outbox.offer(END)) {
                process.waitFor(GRACE_MILLIS, TimeUnit.MILLISECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        end();
    }

    /** Ends the program with all that it started, at once. */
    void end() {
        tree.end();
        // Wakes the thread that waits for something to send.
        outbox.clear();
        outbox.offer(END);
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // The machine is going down, and the hook with it.
        }
    }
}
