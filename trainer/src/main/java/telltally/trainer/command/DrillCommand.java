package telltally.trainer.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.scenario.ScenarioReader;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.Translation;
import telltally.trainer.text.Texts;

@Command(
        name = "drill",
        mixinStandardHelpOptions = true,
        description = {
            "Counting practice in the terminal: watch the lamp, write the codes down, see what was right.",
            "On a terminal the lamp blinks in one line; elsewhere, or with --text, the flashes are written as a strip."
        })
final class DrillCommand implements Callable<Integer> {
    private final Streams streams;

    @Option(names = "--lesson", paramLabel = "ID", description = "A lesson's id, or a scenario file ending in .json.")
    private @Nullable String lesson;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of everything random (default: ${DEFAULT-VALUE}).")
    private long seed = 1;

    @Option(names = "--text", description = "Write the flashes as a strip of text that does not blink.")
    private boolean text;

    @Option(
            names = "--learner",
            paramLabel = "NAME",
            description = "Keep the answers in the logbook under this name (default: nothing is kept).")
    private @Nullable String learner;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "The folder with the logbook (default: your data folder).")
    private @Nullable Path data;

    @Option(
            names = "--language",
            paramLabel = "en|de",
            description = "Language of the drill (default: that of the system).")
    private @Nullable String language;

    /** A folder with lessons of one's own; only the trainer's own options name one. */
    private @Nullable Path lessons;

    DrillCommand(Streams streams) {
        this.streams = streams;
    }

    /** The drill that stands in for the window, with what the window was to be opened with. */
    static DrillCommand insteadOfTheWindow(
            Streams streams,
            @Nullable Path lessons,
            @Nullable String lesson,
            @Nullable Long seed,
            @Nullable String language) {
        DrillCommand drill = new DrillCommand(streams);
        drill.lessons = lessons;
        drill.lesson = lesson;
        drill.language = language;
        drill.seed = seed == null ? drill.seed : seed;
        return drill;
    }

    @Override
    public Integer call() throws ProblemException {
        Texts texts = Texts.in(Language.named(language).orElse(Locale.getDefault()));
        LessonShelf shelf = Translation.into(texts.language()).of(LessonShelf.of(Optional.ofNullable(lessons)));
        Optional<Scenario> asked = lesson == null ? Optional.empty() : Optional.of(named(lesson, shelf));
        try (TerminalRecords records = learner == null ? TerminalRecords.none() : TerminalRecords.of(learner, data)) {
            new TerminalDrill(streams, texts, shelf, records, text).run(asked, seed);
        }
        return ExitStatus.DONE;
    }

    private static Scenario named(String lesson, LessonShelf shelf) throws ProblemException {
        if (lesson.endsWith(".json")) {
            return ScenarioReader.shipped().read(Path.of(lesson));
        }
        return byId(lesson, shelf, " or a file ending in .json");
    }

    /** @param orElse what else the option takes, in words that follow the ids */
    static Scenario byId(String lesson, LessonShelf shelf, String orElse) throws ProblemException {
        List<String> ids = shelf.scenarios().stream().map(Scenario::id).toList();
        return shelf.find(lesson)
                .orElseThrow(() -> new ProblemException(Problem.of(
                        "--lesson",
                        "no lesson is called " + Problem.quoted(lesson) + "; expected " + String.join(", ", ids)
                                + orElse)));
    }
}
