package telltally.trainer.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import telltally.simulator.document.ProblemException;
import telltally.trainer.logbook.Learner;

@Command(
        name = "forget",
        mixinStandardHelpOptions = true,
        description = "Deletes a learner and every answer of theirs, for good.")
final class ForgetCommand implements Callable<Integer> {
    private final Streams streams;
    private final LogbookCommand logbook;

    @Parameters(paramLabel = "NAME", description = "As \"learners\" lists it.")
    private String name = "";

    @Option(names = "--yes", description = "Do not ask whether it is meant.")
    private boolean sure;

    ForgetCommand(Streams streams, LogbookCommand logbook) {
        this.streams = streams;
        this.logbook = logbook;
    }

    @Override
    public Integer call() throws ProblemException {
        return logbook.open(open -> {
            Learner learner = LogbookCommand.known(open, name);
            int answers = open.drills(learner).size() + open.lessons(learner).size();
            if (!sure && !confirmed(learner, answers)) {
                streams.line("Nothing was deleted.");
                return ExitStatus.FELL_SHORT;
            }
            open.forget(learner);
            streams.line("Deleted: " + learner.name() + " and " + LogbookCommand.counted(answers, "answer") + ".");
            return ExitStatus.DONE;
        });
    }

    private boolean confirmed(Learner learner, int answers) {
        Optional<String> typed = new LinePrompt(streams)
                .ask("This deletes " + learner.name() + " and " + LogbookCommand.counted(answers, "answer")
                        + " for good. Type the name to go on: ");
        return typed.filter(text -> Learner.tidied(text).equals(learner.name())).isPresent();
    }
}
