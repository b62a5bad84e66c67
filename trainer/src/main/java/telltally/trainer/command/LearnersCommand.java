package telltally.trainer.command;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import telltally.simulator.document.ProblemException;
import telltally.trainer.logbook.Learner;

@Command(
        name = "learners",
        mixinStandardHelpOptions = true,
        description = "Lists who practises: name, since when, drills and lessons answered, with tabs between.")
final class LearnersCommand implements Callable<Integer> {
    private final Streams streams;
    private final LogbookCommand logbook;

    LearnersCommand(Streams streams, LogbookCommand logbook) {
        this.streams = streams;
        this.logbook = logbook;
    }

    @Override
    public Integer call() throws ProblemException {
        return logbook.open(open -> {
            for (Learner learner : open.learners()) {
                streams.line(String.join(
                        "\t",
                        learner.name(),
                        LocalDate.ofInstant(learner.since(), ZoneId.systemDefault())
                                .toString(),
                        LogbookCommand.counted(open.drills(learner).size(), "drill"),
                        LogbookCommand.counted(open.lessons(learner).size(), "lesson")));
            }
            return ExitStatus.DONE;
        });
    }
}
