package telltally.trainer.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.trainer.logbook.DataFolder;
import telltally.trainer.logbook.Learner;
import telltally.trainer.logbook.Logbook;
import telltally.trainer.logbook.LogbookException;

@Command(
        name = "logbook",
        mixinStandardHelpOptions = true,
        description = {
            "The records of practice: who is in them, copies of them, and how to leave them.",
            "They are one file, logbook.sqlite, in your data folder."
        })
final class LogbookCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "The folder with the logbook (default: your data folder).")
    private @Nullable Path data;

    /** With its subcommands. */
    static CommandLine of(Streams streams) {
        LogbookCommand logbook = new LogbookCommand();
        return new CommandLine(logbook)
                .addSubcommand(new LearnersCommand(streams, logbook))
                .addSubcommand(new ExportCommand(streams, logbook))
                .addSubcommand(new ForgetCommand(streams, logbook));
    }

    @Override
    public Integer call() {
        throw new CommandLine.ParameterException(
                Objects.requireNonNull(spec).commandLine(), "expected learners, export or forget");
    }

    /** Something to do with the logbook. */
    interface Work {
        /** @return the exit status */
        int with(Logbook logbook) throws LogbookException, ProblemException;
    }

    /** Opens the logbook, which has to be there, and closes it afterwards. */
    int open(Work work) throws ProblemException {
        Path folder = data == null ? DataFolder.ofThisMachine().path() : data;
        Path file = Logbook.fileIn(folder);
        if (!Files.exists(file)) {
            throw new ProblemException(
                    Problem.of(file.toString(), "is not there; nobody has kept records in this folder"));
        }
        try (Logbook logbook = Logbook.open(folder)) {
            return work.with(logbook);
        } catch (LogbookException reason) {
            throw new ProblemException(Problem.of(reason.file().toString(), reason.sentence()));
        }
    }

    /** The learner of a name. */
    static Learner known(Logbook logbook, String name) throws LogbookException, ProblemException {
        return logbook.find(name)
                .orElseThrow(() -> new ProblemException(
                        Problem.of(logbook.file().toString(), "has no learner called " + Problem.quoted(name))));
    }

    static String counted(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
