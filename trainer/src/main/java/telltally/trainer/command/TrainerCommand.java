package telltally.trainer.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.text.Texts;
import telltally.trainer.view.TrainerSettings;
import telltally.trainer.view.TrainerWindow;

/** What happens where no command is named: the window, or the drill where there is no display for one. */
@Command(
        name = "telltally",
        mixinStandardHelpOptions = true,
        versionProvider = Telltally.Version.class,
        description = "Practise reading lamp-flash trouble codes, and trust what was read.",
        footer = {
            "",
            "Without a command the trainer's window opens; with no display, the terminal drill.",
            "Exit status: 0 done, 1 the thing checked fell short, 2 bad usage or bad input, 3 a fault in Telltally."
        })
final class TrainerCommand implements Callable<Integer> {
    private static final double SMALLEST_TEXT = 0.75;
    private static final double LARGEST_TEXT = 3;

    private final Streams streams;

    @Option(names = "--lessons", paramLabel = "DIR", description = "A folder with lessons of your own.")
    private @Nullable Path lessons;

    @Option(names = "--lesson", paramLabel = "ID", description = "The lesson to begin with.")
    private @Nullable String lesson;

    @Option(
            names = "--text-scale",
            paramLabel = "X",
            description = "Size of all text, 0.75 to 3 (default: ${DEFAULT-VALUE}).")
    private double textScale = TrainerSettings.usualTextScale();

    @Option(
            names = "--language",
            paramLabel = "en|de",
            description = "Language of the window (default: that of the system, or English).")
    private @Nullable String language;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Seed of everything random; another one each time without.")
    private @Nullable Long seed;

    TrainerCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws ProblemException {
        TrainerSettings settings = settings();
        Optional<String> obstacle = Display.start();
        if (obstacle.isPresent()) {
            streams.line(
                    "No window can be opened here (" + obstacle.get() + "): the drill runs in the terminal instead.");
            return DrillCommand.insteadOfTheWindow(streams, lessons, lesson, seed)
                    .call();
        }
        TrainerWindow.open(settings, new LatticeDecoder());
        Display.stop();
        return ExitStatus.DONE;
    }

    private Locale language() throws ProblemException {
        if (language == null) {
            return Locale.getDefault();
        }
        List<String> known = Texts.LANGUAGES.stream().map(Locale::getLanguage).toList();
        if (!known.contains(language)) {
            throw new ProblemException(Problem.of(
                    "--language", "is " + Problem.quoted(language) + "; expected " + String.join(" or ", known)));
        }
        return Locale.forLanguageTag(language);
    }

    private TrainerSettings settings() throws ProblemException {
        if (lessons != null && !Files.isDirectory(lessons)) {
            throw new ProblemException(
                    Problem.of(lessons.toString(), "is no folder; a folder with lessons was expected"));
        }
        if (!(textScale >= SMALLEST_TEXT && textScale <= LARGEST_TEXT)) {
            throw new ProblemException(Problem.of("--text-scale", "is " + textScale + "; expected 0.75 to 3"));
        }
        if (lesson != null) {
            DrillCommand.byId(lesson, LessonShelf.of(Optional.ofNullable(lessons)), "");
        }
        OptionalLong chosen = seed == null ? OptionalLong.empty() : OptionalLong.of(seed);
        return new TrainerSettings(
                Optional.ofNullable(lessons), Optional.ofNullable(lesson), textScale, language(), chosen);
    }
}
