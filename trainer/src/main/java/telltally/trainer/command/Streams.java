package telltally.trainer.command;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import telltally.simulator.document.Problem;

/**
 * Where a command reads and writes. Text is UTF-8 with plain line feeds, whatever the machine's own habits.
 *
 * @param interactive whether a person sits at a terminal
 * @param progressSeen whether what is written as an error appears on a terminal at once, and not in a file
 */
record Streams(InputStream in, PrintStream out, PrintStream err, boolean interactive, boolean progressSeen) {
    Streams(InputStream in, PrintStream out, PrintStream err, boolean interactive) {
        this(in, out, err, interactive, false);
    }

    static Streams standard() {
        return new Streams(
                new FileInputStream(FileDescriptor.in),
                new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8),
                isTerminal(),
                errorIsTerminal());
    }

    void line(String text) {
        out.print(text);
        out.print('\n');
    }

    void error(String text) {
        err.print(text);
        err.print('\n');
        err.flush();
    }

    /** One line a problem. */
    void problems(List<Problem> problems) {
        problems.forEach(problem -> error(problem.toString()));
    }

    /** From JDK 22 on there is always a console, and it knows whether it is a terminal; before, only on terminals. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    /** Java knows of input and output only; where the system shows its files, it knows of the error stream, too. */
    private static boolean errorIsTerminal() {
        Path stream = Path.of("/proc/self/fd/2");
        if (!Files.isSymbolicLink(stream)) {
            return isTerminal();
        }
        try {
            String target = Files.readSymbolicLink(stream).toString();
            return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
        } catch (IOException e) {
            return false;
        }
    }
}
