package telltally.trainer.logbook;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Works with a logbook away from whoever asks: the file is opened when it is first needed, and what is asked is done in
 * the order asked. Answers come back by the executor of the asker, the toolkit's thread for a window.
 */
public final class LogbookKeeper implements AutoCloseable {
    private static final int PATIENCE_S = 10;

    private final Path folder;
    private final Executor worker;
    private final Executor asker;
    private final Runnable stop;
    private @Nullable Logbook logbook;

    /** Something to do with the logbook. */
    public interface Request<T> {
        T of(Logbook logbook) throws LogbookException;
    }

    /** @param worker does one thing after another */
    public LogbookKeeper(Path folder, Executor worker, Executor asker) {
        this(folder, worker, asker, () -> {});
    }

    private LogbookKeeper(Path folder, Executor worker, Executor asker, Runnable stop) {
        this.folder = folder;
        this.worker = worker;
        this.asker = asker;
        this.stop = stop;
    }

    /** With a thread of its own, which keeps no program alive; {@link #close} waits for what was asked before. */
    public static LogbookKeeper onItsOwn(Path folder, Executor asker) {
        ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "logbook");
            thread.setDaemon(true);
            return thread;
        });
        return new LogbookKeeper(folder, worker, asker, () -> finish(worker));
    }

    /**
     * Asks for something.
     *
     * @param then given the answer
     * @param otherwise given the reason why there is none
     */
    public <T> void ask(Request<T> request, Consumer<T> then, Consumer<LogbookException> otherwise) {
        worker.execute(() -> {
            try {
                T answer = request.of(open());
                asker.execute(() -> then.accept(answer));
            } catch (LogbookException reason) {
                asker.execute(() -> otherwise.accept(reason));
            }
        });
    }

    /**
     * Asks for something and waits until it is done.
     *
     * @throws LogbookException with the reason why it cannot be done
     */
    public <T> T askAndWait(Request<T> request) throws LogbookException {
        CompletableFuture<T> answer = new CompletableFuture<>();
        worker.execute(() -> {
            try {
                answer.complete(request.of(open()));
            } catch (LogbookException | RuntimeException reason) {
                answer.completeExceptionally(reason);
            }
        });
        try {
            return answer.join();
        } catch (CompletionException failure) {
            if (failure.getCause() instanceof LogbookException reason) {
                throw reason;
            }
            throw failure;
        }
    }

    /** Where the file is or would be. */
    public Path file() {
        return Logbook.fileIn(folder);
    }

    @Override
    public void close() {
        worker.execute(this::shut);
        stop.run();
    }

    private Logbook open() throws LogbookException {
        Logbook open = logbook;
        if (open == null) {
            open = Logbook.open(folder);
            logbook = open;
        }
        return open;
    }

    private void shut() {
        Logbook open = logbook;
        logbook = null;
        if (open != null) {
            try {
                open.close();
            } catch (LogbookException nothingIsLost) {
                // Every answer was written when it was asked to be; the system closes the file with the program.
                return;
            }
        }
    }

    private static void finish(ExecutorService worker) {
        worker.shutdown();
        try {
            if (!worker.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)) {
                worker.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
