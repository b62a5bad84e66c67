package telltally.trainer.command;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;

/** The window toolkit, started only where there is a display for it. */
final class Display {
    /** Held on to: the logging system itself would let it go, and the level with it. */
    private static final Logger TOOLKIT_LOG = Logger.getLogger("javafx");

    private Display() {}

    /**
     * Starts the toolkit.
     *
     * @return why it cannot be started, in a few words; empty where it runs
     */
    static Optional<String> start() {
        // The toolkit warns that it was not loaded as modules; it works all the same.
        TOOLKIT_LOG.setLevel(Level.SEVERE);
        CountDownLatch started = new CountDownLatch(1);
        try {
            Platform.startup(started::countDown);
            Platform.setImplicitExit(false);
            started.await();
            return Optional.empty();
        } catch (UnsupportedOperationException | UnsatisfiedLinkError | NoClassDefFoundError e) {
            return Optional.of(reason(e));
        } catch (RuntimeException e) {
            // The toolkit's own door tells a missing native library in this way.
            return Optional.of(reason(e));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of("interrupted");
        }
    }

    static void stop() {
        Platform.exit();
    }

    private static String reason(Throwable e) {
        String message = e.getMessage();
        return message == null
                ? e.getClass().getSimpleName()
                : message.lines().findFirst().orElse("");
    }
}
