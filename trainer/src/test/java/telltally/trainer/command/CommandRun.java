package telltally.trainer.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What one command gave back. */
record CommandRun(int status, String out, String err) {
    static CommandRun fed(String input, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Streams streams = new Streams(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        int status = Telltally.run(streams, args);
        streams.out().flush();
        return new CommandRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static CommandRun of(String... args) {
        return fed("", args);
    }

    List<String> outLines() {
        return out.lines().toList();
    }

    List<String> errorLines() {
        return err.lines().toList();
    }
}
