package telltally.trainer.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import telltally.decoder.card.report.CaseText;
import telltally.decoder.reading.ReadingJson;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.SeedCase;
import telltally.decoder.score.SeedCases;
import telltally.decoder.score.SeedSet;
import telltally.decoder.timeline.TimelineSvg;
import telltally.simulator.Simulation;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.recording.Recording;
import telltally.simulator.recording.RecordingFiles;

/** One case of a seed set, made and read again. */
final class ScoreCase {
    private final SeedSet set;
    private final SeedCase given;

    private ScoreCase(SeedSet set, SeedCase given) {
        this.set = set;
        this.given = given;
    }

    /**
     * @param lesson which of the set's lessons; needed where it has several
     * @throws ProblemException if there is no such lesson, or it was left open which
     */
    static ScoreCase of(SeedSet set, long seed, Optional<String> lesson) throws ProblemException {
        List<SeedCase> cases = new SeedCases(set).of(seed);
        if (cases.size() == 1 && lesson.isEmpty()) {
            return new ScoreCase(set, cases.get(0));
        }
        String names = String.join(", ", cases.stream().map(SeedCase::origin).toList());
        if (lesson.isEmpty()) {
            throw new ProblemException(Problem.of("--lesson", "is missing; expected one of " + names));
        }
        return new ScoreCase(
                set,
                cases.stream()
                        .filter(each -> each.origin().equals(lesson.get()))
                        .findFirst()
                        .orElseThrow(() -> new ProblemException(Problem.of(
                                "--lesson",
                                "nothing is called " + Problem.quoted(lesson.get()) + "; expected one of " + names))));
    }

    Outcome read(Entrant entrant, Line line, boolean toldFormat) {
        boolean told = toldFormat || entrant.traits().wantsFormat();
        List<FlashFormat> candidates = given.candidates(set.candidates(FormatCatalog.shipped()), told);
        try (Entrant.Reader reader = entrant.open()) {
            return reader.read(line.train(given), candidates);
        }
    }

    String text(Line line, String decoder, Outcome outcome) {
        return CaseText.text(set.id(), given, line, decoder, outcome);
    }

    /** The recording as {@code simulate} writes one, and the reading with its timeline. */
    void write(Path folder, Line line, Outcome outcome) throws ProblemException {
        Recording recording = new Recording(
                given.origin(), given.seed(), Simulation.GENERATOR_VERSION, given.lamp(), given.pin(), given.truth());
        try {
            RecordingFiles.write(recording, folder, List.of());
            if (outcome instanceof Outcome.Read read) {
                String source = line.key() + ".csv";
                write(folder.resolve("reading.json"), new ReadingJson().text(read.reading(), source) + "\n");
                write(folder.resolve("timeline.svg"), TimelineSvg.text(line.train(given), read.reading(), source));
            }
        } catch (IOException e) {
            throw new ProblemException(Problem.of(
                    folder.toString(), "cannot be written: " + e.getClass().getSimpleName() + " " + e.getMessage()));
        }
    }

    private static void write(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}
