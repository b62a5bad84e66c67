package telltally.trainer.view;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;

/** The JavaFX toolkit in a test: started once, asked from outside, waited for by its own pulses. */
final class Toolkit {
    private static final int TIMEOUT_S = 60;

    /** Started when it is first looked at; the text is why it could not be. */
    private static final class Start {
        static final String FAILURE = start();

        private static String start() {
            Logger.getLogger("javafx").setLevel(Level.SEVERE);
            CountDownLatch started = new CountDownLatch(1);
            try {
                Platform.startup(started::countDown);
                Platform.setImplicitExit(false);
                return started.await(TIMEOUT_S, TimeUnit.SECONDS) ? "" : "the toolkit did not start in time";
            } catch (UnsupportedOperationException | UnsatisfiedLinkError e) {
                return "the toolkit cannot start here: " + e.getMessage();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return "interrupted";
            }
        }
    }

    private Toolkit() {}

    /** Skips the test where no toolkit can start; fails it where nothing may be skipped. */
    static void require() {
        if (!Start.FAILURE.isEmpty() && "no".equals(System.getenv("TELLTALLY_MAY_SKIP"))) {
            throw new AssertionError(Start.FAILURE);
        }
        assumeTrue(Start.FAILURE.isEmpty(), Start.FAILURE);
    }

    /** Starts it for a program that is no test. */
    static void startOrStop() {
        if (!Start.FAILURE.isEmpty()) {
            throw new IllegalStateException(Start.FAILURE);
        }
    }

    /** Does something on the toolkit's thread and waits for it. */
    static <T> T fx(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        try {
            return task.get(TIMEOUT_S, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            throw new AssertionError(e.getCause());
        } catch (InterruptedException | TimeoutException e) {
            throw new AssertionError("the toolkit did not answer", e);
        }
    }

    static void run(Runnable work) {
        fx(() -> {
            work.run();
            return true;
        });
    }

    /** Waits for two pulses, after which layout and style are done. */
    static void settle() {
        CountDownLatch pulses = new CountDownLatch(2);
        AnimationTimer timer = new AnimationTimer() {
            @Override
            public void handle(long now) {
                pulses.countDown();
                if (pulses.getCount() == 0) {
                    stop();
                }
            }
        };
        Platform.runLater(timer::start);
        try {
            if (!pulses.await(TIMEOUT_S, TimeUnit.SECONDS)) {
                throw new AssertionError("no pulse came");
            }
        } catch (InterruptedException e) {
            throw new AssertionError("interrupted", e);
        }
    }
}
