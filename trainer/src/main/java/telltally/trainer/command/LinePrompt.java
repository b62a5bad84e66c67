package telltally.trainer.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Asks for lines. */
final class LinePrompt {
    private static final int LONGEST_LINE = 1000;

    private final Streams streams;
    private final BufferedReader in;

    LinePrompt(Streams streams) {
        this.streams = streams;
        this.in = new BufferedReader(new InputStreamReader(streams.in(), StandardCharsets.UTF_8));
    }

    /** What was typed, without blanks around it; empty at the end of the input. */
    Optional<String> ask(String question) {
        streams.out().print(question);
        streams.out().flush();
        try {
            String line = in.readLine();
            if (line == null) {
                streams.line("");
                return Optional.empty();
            }
            return Optional.of(
                    line.length() > LONGEST_LINE
                            ? line.substring(0, LONGEST_LINE).strip()
                            : line.strip());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
