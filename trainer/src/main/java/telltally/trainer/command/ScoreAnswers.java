package telltally.trainer.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.CardReader;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.compare.Comparison;
import telltally.decoder.card.report.CardHtml;
import telltally.decoder.card.report.CardText;
import telltally.decoder.card.report.ComparisonText;
import telltally.decoder.card.run.ReadingTimes;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;

/** What comes of a score: on the screen, in files, in the floors of the seed sets. */
final class ScoreAnswers {
    @Option(names = "--json", description = "The card as JSON instead of text.")
    private boolean json;

    @Option(names = "--save", paramLabel = "FILE", description = "Also writes the card's JSON into a file.")
    private @Nullable Path save;

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "Also writes a page with curves and tables that opens from disk.")
    private @Nullable Path html;

    @Option(
            names = "--raise-floors",
            description = "Raises the floors in the files of --seeds to what was reached; none is lowered.")
    private boolean raiseFloors;

    @Option(
            names = "--against",
            paramLabel = "FILE",
            description = "Compares with a saved card: what got better or worse beyond chance.")
    private @Nullable Path against;

    /**
     * What can be known to go wrong before a run, which may take long.
     *
     * @param partial whether floors cannot be judged by this run
     */
    void check(ScoredSubject subject, boolean partial) throws ProblemException {
        for (Path file : files()) {
            Path folder = file.toAbsolutePath().getParent();
            if (Files.isDirectory(file) || folder == null || !Files.isDirectory(folder)) {
                throw new ProblemException(
                        Problem.of(file.toString(), "cannot be written; expected a file in a folder that is there"));
            }
        }
        if (raiseFloors && subject.places().isEmpty()) {
            throw new ProblemException(
                    Problem.of("--raise-floors", "needs --seeds: the files in which floors are to rise"));
        }
        if (raiseFloors && partial) {
            throw new ProblemException(Problem.of(
                    "--raise-floors",
                    "goes with neither --sessions, --times, --shard, --line, --merge nor --told-format:"
                            + " floors stand for a set's own cases, whole"));
        }
    }

    private List<Path> files() {
        return Stream.of(save, html).filter(Objects::nonNull).toList();
    }

    /** The older card that is compared with; empty where none is. */
    Optional<ScoreCard> before() throws ProblemException {
        return against == null ? Optional.empty() : Optional.of(CardReader.read(against));
    }

    /** @param times empty where the card was not run just now */
    void give(ScoreCard card, Optional<ReadingTimes> times, Optional<ScoreCard> before, Streams streams)
            throws ProblemException {
        String text = CardJson.text(card);
        Optional<Comparison> comparison = before.map(each -> Comparison.of(card, each));
        streams.out().print(json ? text : CardText.text(card, times));
        if (comparison.isPresent()) {
            // JSON stays alone on its stream, so that another program can read it.
            (json ? streams.err() : streams.out())
                    .print(ComparisonText.text(comparison.get(), String.valueOf(against)));
        }
        write(save, text);
        if (html != null) {
            write(html, CardHtml.text(card, times, comparison));
        }
    }

    void raiseFloors(ScoreCard card, ScoredSubject subject, Streams streams) throws ProblemException {
        if (!raiseFloors) {
            return;
        }
        if (card.sets().stream().anyMatch(set -> !set.flaws().isEmpty())) {
            streams.error("--raise-floors: nothing rises while a digest does not match or a case cannot be run");
            return;
        }
        new FloorRaises(subject.places()).raise(card).forEach(streams::error);
    }

    private static void write(@Nullable Path file, String text) throws ProblemException {
        if (file == null) {
            return;
        }
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new ProblemException(Problem.of(
                    file.toString(), "cannot be written: " + e.getClass().getSimpleName() + " " + e.getMessage()));
        }
    }
}
