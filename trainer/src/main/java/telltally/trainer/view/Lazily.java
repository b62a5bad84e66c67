package telltally.trainer.view;

import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Something that takes a while to make; begun beside everything else, waited for by whoever asks first. */
final class Lazily<T> implements Supplier<T> {
    private final FutureTask<T> task;

    Lazily(Supplier<T> made) {
        this.task = new FutureTask<>(made::get);
    }

    /** Begins on a thread of its own. */
    void begin() {
        Thread thread = new Thread(task, "lessons");
        thread.setDaemon(true);
        thread.start();
    }

    /** @throws CompletionException with the cause if it could not be made */
    @Override
    public T get() {
        // Does nothing where it is under way or done.
        task.run();
        try {
            return task.get();
        } catch (ExecutionException e) {
            throw new CompletionException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CompletionException(e);
        }
    }
}
