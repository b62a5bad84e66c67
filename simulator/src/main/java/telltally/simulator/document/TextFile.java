package telltally.simulator.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file of UTF-8 text that was looked at before it was trusted: it is there, it is a file, it is not empty and not too
 * large, and its bytes are text. A byte order mark at its head is left out.
 *
 * @param name as the user named it
 */
public record TextFile(String name, String text) {
    /** The most that a scenario, a format or any other JSON file may hold, in bytes. */
    public static final int DOCUMENT_BYTES = 1 << 20;

    /** The most that a recording may hold, in bytes. */
    public static final int RECORDING_BYTES = 64 << 20;

    /**
     * @param atMostBytes the size from which on the file is refused
     * @throws ProblemException if there is no such file, or it cannot be used as text
     */
    public static TextFile read(Path path, int atMostBytes) throws ProblemException {
        return decode(path.toString(), bytes(path, atMostBytes));
    }

    /**
     * Reads a stream to its end, such as standard input; the caller closes it.
     *
     * @throws ProblemException if it holds nothing, too much, or no text
     */
    public static TextFile read(String name, InputStream in, int atMostBytes) throws ProblemException {
        return decode(name, bytes(name, in, atMostBytes));
    }

    /**
     * The bytes of a stream to its end, none where it is empty; the caller closes it.
     *
     * @throws ProblemException if it holds too much or cannot be read
     */
    public static byte[] bytes(String name, InputStream in, int atMostBytes) throws ProblemException {
        try {
            byte[] bytes = in.readNBytes(atMostBytes + 1);
            if (bytes.length > atMostBytes) {
                throw new ProblemException(tooLarge(name, atMostBytes));
            }
            return bytes;
        } catch (IOException e) {
            throw new ProblemException(Problem.of(name, "cannot be read: " + reason(e)));
        }
    }

    /**
     * The bytes of a file that is there, is a file, is not empty and not too large.
     *
     * @throws ProblemException if it is not so
     */
    public static byte[] bytes(Path path, int atMostBytes) throws ProblemException {
        String name = path.toString();
        if (!Files.exists(path)) {
            throw new ProblemException(Problem.of(name, "no such file"));
        }
        if (Files.isDirectory(path)) {
            throw new ProblemException(Problem.of(name, "is a directory; a file was expected"));
        }
        try (InputStream in = Files.newInputStream(path)) {
            // Asked of the file system first, so that a huge file is refused without reading it.
            byte[] bytes = Files.size(path) > atMostBytes ? null : in.readNBytes(atMostBytes + 1);
            if (bytes == null || bytes.length > atMostBytes) {
                throw new ProblemException(tooLarge(name, atMostBytes));
            }
            if (bytes.length == 0) {
                throw new ProblemException(Problem.of(name, "is empty"));
            }
            return bytes;
        } catch (IOException e) {
            throw new ProblemException(Problem.of(name, "cannot be read: " + reason(e)));
        }
    }

    /**
     * @throws ProblemException if the bytes are none at all, or no UTF-8; the place is that of the first bad byte
     */
    public static TextFile decode(String name, byte[] bytes) throws ProblemException {
        if (bytes.length == 0) {
            throw new ProblemException(Problem.of(name, "is empty"));
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String decoded = out.flip().toString();
        String text = decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded;
        if (result.isError()) {
            throw new ProblemException(new Problem(name, placeAfter(text), "", "is not UTF-8 text"));
        }
        return new TextFile(name, text);
    }

    private static Place placeAfter(String text) {
        int lastBreak = text.lastIndexOf('\n');
        int lines = (int) text.chars().filter(letter -> letter == '\n').count();
        return new Place(lines + 1, text.length() - lastBreak);
    }

    private static Problem tooLarge(String name, int atMostBytes) {
        return Problem.of(name, "is larger than " + (atMostBytes >> 20) + " MiB, the most that is read");
    }

    private static String reason(IOException e) {
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }
}
