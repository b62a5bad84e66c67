package telltally.trainer.drill;

/**
 * Somebody asks the learner something while the lamp goes on.
 *
 * @param fromNanos from the start of the drill's pulses
 * @param question what is asked; to be answered aloud, it is not marked
 */
public record Interruption(long fromNanos, long toNanos, Said question) {
    public Interruption {
        if (fromNanos < 0 || toNanos <= fromNanos) {
            throw new IllegalArgumentException("no stretch of time: " + fromNanos + " to " + toNanos + " ns");
        }
    }

    public boolean at(long nanos) {
        return fromNanos <= nanos && nanos < toNanos;
    }
}
