package telltally.trainer.command;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import telltally.simulator.document.ProblemException;

/** The program: one jar, a command for each job, and the trainer's window where no command is given. */
public final class Telltally {
    private Telltally() {}

    public static void main(String[] args) {
        Streams streams = Streams.standard();
        int status = run(streams, args);
        streams.out().flush();
        System.exit(status);
    }

    /** Runs one command; what {@link #main} does without leaving the process. */
    static int run(Streams streams, String... args) {
        try {
            int status =
                    args.length == 0 ? window(streams) : commandLine(streams).execute(args);
            streams.out().flush();
            return status;
        } catch (Throwable fault) { // whatever it is, it must not look like a result
            return fault(streams, fault);
        }
    }

    /** What no arguments mean, without the machinery for arguments: it takes longer to load than the window. */
    private static int window(Streams streams) {
        try {
            return new TrainerCommand(streams).call();
        } catch (ProblemException failure) {
            streams.problems(failure.problems());
            return ExitStatus.BAD_INPUT;
        }
    }

    private static CommandLine commandLine(Streams streams) {
        CommandLine line = new CommandLine(new TrainerCommand(streams))
                .addSubcommand(new SimulateCommand(streams))
                .addSubcommand(new DecodeCommand(streams))
                .addSubcommand(new CheckCommand(streams))
                .addSubcommand(new ScoreCommand(streams))
                .addSubcommand(new FormatsCommand(streams))
                .addSubcommand(new DrillCommand(streams))
                .addSubcommand(new TrialCommand(streams))
                .addSubcommand(LogbookCommand.of(streams));
        line.setOut(writer(streams.out()));
        line.setErr(writer(streams.err()));
        line.setExpandAtFiles(false);
        line.setParameterExceptionHandler((wrong, args) -> {
            String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
            streams.error(
                    command + ": " + firstLine(String.valueOf(wrong.getMessage())) + " (see " + command + " --help)");
            return ExitStatus.BAD_INPUT;
        });
        line.setExecutionExceptionHandler((failure, at, parsed) -> {
            if (failure instanceof ProblemException problems) {
                streams.problems(problems.problems());
                return ExitStatus.BAD_INPUT;
            }
            return fault(streams, failure);
        });
        return line;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    /** One line and where the rest is. */
    private static int fault(Streams streams, Throwable fault) {
        StringWriter trace = new StringWriter();
        fault.printStackTrace(new PrintWriter(trace));
        String where;
        try {
            Path log = Files.createTempFile("telltally-fault-", ".log");
            Files.writeString(log, trace.toString());
            where = "the log is " + log;
        } catch (IOException e) {
            where = "no log could be written: " + e.getMessage();
        }
        streams.error("telltally: a fault in Telltally itself: " + firstLine(fault.toString()) + "; " + where);
        return ExitStatus.FAULT;
    }

    private static String firstLine(String text) {
        return text.lines().findFirst().orElse("");
    }

    static String version() {
        String version = Telltally.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }

    /** Says its version, read from where the build put it. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"telltally " + version()};
        }
    }
}
