package telltally.decoder.outside;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * The end of what a program wrote to its standard error, for telling why it died. Everything is read, however much it
 * is, so that the program never waits; next to nothing is kept.
 */
final class ErrorTail implements Runnable {
    private static final int KEPT_BYTES = 2048;

    private final InputStream in;
    private final byte[] kept = new byte[KEPT_BYTES];
    private long writtenBytes;

    ErrorTail(InputStream in) {
        this.in = in;
    }

    @Override
    public void run() {
        byte[] chunk = new byte[KEPT_BYTES];
        try {
            int length = in.read(chunk);
            while (length >= 0) {
                keep(chunk, length);
                length = in.read(chunk);
            }
        } catch (IOException e) {
            // The program was ended.
        }
    }

    private synchronized void keep(byte[] chunk, int length) {
        for (int i = 0; i < length; i++) {
            kept[(int) (writtenBytes++ % KEPT_BYTES)] = chunk[i];
        }
    }

    /** The last line that says anything; empty where there is none. */
    synchronized String lastLine() {
        byte[] ordered = new byte[(int) Math.min(writtenBytes, KEPT_BYTES)];
        for (int i = 0; i < ordered.length; i++) {
            ordered[i] = kept[(int) ((writtenBytes - ordered.length + i) % KEPT_BYTES)];
        }
        return new String(ordered, StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.isBlank())
                .reduce("", (before, line) -> line.strip());
    }
}
