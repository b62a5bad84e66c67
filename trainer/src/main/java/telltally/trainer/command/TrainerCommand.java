package telltally.trainer.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.logbook.DataFolder;
import telltally.trainer.settings.Overridden;
import telltally.trainer.settings.SettingsFile;
import telltally.trainer.settings.SettingsStore;
import telltally.trainer.text.Texts;
import telltally.trainer.view.Opening;
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
            description = "Size of all text, 0.75 to 3 (default: as set in the window).")
    private @Nullable Double textScale;

    @Option(
            names = "--language",
            paramLabel = "en|de",
            description = "Language of the window (default: as set in the window, else that of the system).")
    private @Nullable String language;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "The folder with logbook and settings (default: your data folder).")
    private @Nullable Path data;

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
        Opening opening = opening();
        Optional<String> obstacle = Display.start();
        if (obstacle.isPresent()) {
            Texts texts = Texts.in(Language.named(language).orElse(Locale.getDefault()));
            streams.line(texts.of("terminal.no-window", obstacle.get()));
            return DrillCommand.insteadOfTheWindow(streams, lessons, lesson, seed, language)
                    .call();
        }
        TrainerWindow.open(opening, new LatticeDecoder());
        Display.stop();
        return ExitStatus.DONE;
    }

    private OptionalInt textPercent() throws ProblemException {
        if (textScale == null) {
            return OptionalInt.empty();
        }
        if (!(textScale >= SMALLEST_TEXT && textScale <= LARGEST_TEXT)) {
            throw new ProblemException(Problem.of("--text-scale", "is " + textScale + "; expected 0.75 to 3"));
        }
        return OptionalInt.of((int) Math.round(textScale * 100));
    }

    private SettingsStore settings() throws ProblemException {
        SettingsStore kept = new SettingsFile(folder().resolve(SettingsFile.NAME));
        return new Overridden(kept, Language.named(language), textPercent());
    }

    private Path folder() {
        return data == null ? DataFolder.ofThisMachine().path() : data;
    }

    private Opening opening() throws ProblemException {
        if (lessons != null && !Files.isDirectory(lessons)) {
            throw new ProblemException(
                    Problem.of(lessons.toString(), "is no folder; a folder with lessons was expected"));
        }
        if (lesson != null) {
            DrillCommand.byId(lesson, LessonShelf.of(Optional.ofNullable(lessons)), "");
        }
        OptionalLong chosen = seed == null ? OptionalLong.empty() : OptionalLong.of(seed);
        return new Opening(
                Optional.ofNullable(lessons),
                Optional.ofNullable(lesson),
                settings(),
                chosen,
                folder(),
                Telltally.version());
    }
}
