package telltally.simulator.format;

/**
 * A flash of one length, under the name by which places and signs refer to it.
 *
 * @param onNanos how long the lamp is lit; where the lamp rests lit, how long it is dark
 */
public record FlashKind(String name, long onNanos) {
    public FlashKind {
        if (onNanos <= 0) {
            throw new IllegalArgumentException("a flash needs a length: " + onNanos + " ns");
        }
    }
}
