package telltally.trainer.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.run.ReadingTimes;
import telltally.decoder.card.run.RunOrder;
import telltally.decoder.card.run.ScoreRun;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;

@Command(
        name = "score",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Scores a decoder on seed sets: what was sent is known, what is read is counted.",
            "Exit status 1 where it falls below a floor, a digest does not match, or a case cannot be run."
        })
final class ScoreCommand implements Callable<Integer> {
    private final Streams streams;

    @ArgGroup(heading = "%nWhat is scored:%n", validate = false)
    private ScoredSubject subject = new ScoredSubject();

    @ArgGroup(heading = "%nHow much of it:%n", validate = false)
    private ScoredAmount amount = new ScoredAmount();

    @ArgGroup(heading = "%nOne case instead of a score:%n", validate = false)
    private OneCase one = new OneCase();

    @ArgGroup(heading = "%nWhat comes of it:%n", validate = false)
    private ScoreAnswers answers = new ScoreAnswers();

    static final class OneCase {
        @Option(
                names = "--seed",
                paramLabel = "N",
                description = "Shows the case of this seed: what was sent beside what was read. Needs --set.")
        private @Nullable Long seed;

        @Option(names = "--lesson", paramLabel = "ID", description = "Which of the set's lessons, if it has several.")
        private @Nullable String lesson;

        @Option(
                names = "--out",
                paramLabel = "DIR",
                description = "Also writes the case as files: lamp, pin, truth, reading, timeline.")
        private @Nullable Path out;
    }

    ScoreCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws ProblemException {
        return one.seed == null ? score() : show(one.seed);
    }

    private int score() throws ProblemException {
        answers.check(subject, subject.partial() || amount.partial());
        Optional<ScoreCard> before = answers.before();
        ScoreCard card;
        Optional<ReadingTimes> times = Optional.empty();
        if (amount.merges()) {
            card = amount.merged();
        } else {
            ScoreRun.Result result = run();
            card = result.card();
            times = Optional.of(result.times());
        }
        answers.give(card, times, before, streams);
        answers.raiseFloors(card, subject, streams);
        return card.holds() ? ExitStatus.DONE : ExitStatus.FELL_SHORT;
    }

    private ScoreRun.Result run() throws ProblemException {
        Entrant entrant = subject.entrant(streams);
        RunOrder order = amount.order(subject);
        ScoreProgress progress = new ScoreProgress(streams, System::nanoTime);
        try {
            return ScoreRun.of(order, entrant, subject.arguments(), progress);
        } finally {
            progress.end();
        }
    }

    private int show(long seed) throws ProblemException {
        if (!subject.oneSet()) {
            throw new ProblemException(Problem.of("--seed", "needs exactly one --set, whose case it is"));
        }
        Entrant entrant = subject.entrant(streams);
        ScoreCase shown = ScoreCase.of(subject.sets().get(0), seed, Optional.ofNullable(one.lesson));
        for (Line line : subject.lines()) {
            Outcome outcome = shown.read(entrant, line, subject.toldFormat());
            streams.out().print(shown.text(line, entrant.id(), outcome));
            if (one.out != null) {
                shown.write(one.out, line, outcome);
            }
        }
        return ExitStatus.DONE;
    }
}
