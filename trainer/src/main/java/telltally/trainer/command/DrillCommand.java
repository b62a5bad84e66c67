package telltally.trainer.command;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.Segment;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.scenario.ScenarioReader;
import telltally.trainer.drill.FlashStrip;
import telltally.trainer.drill.MarkedSheet;
import telltally.trainer.drill.Notices;
import telltally.trainer.lesson.AnswerSheet;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.Marking;
import telltally.trainer.lesson.Words;
import telltally.trainer.playback.FlashRate;
import telltally.trainer.text.Texts;

@Command(
        name = "drill",
        mixinStandardHelpOptions = true,
        description = {
            "Counting practice in the terminal: watch the lamp, write the codes down, see what was right.",
            "On a terminal the lamp blinks in one line; elsewhere, or with --text, the flashes are written as a strip."
        })
final class DrillCommand implements Callable<Integer> {
    private static final int LINE_LETTERS = 78;

    /** How records call flashes that are written as text. */
    private static final String STRIP = "strip";

    private final Streams streams;
    private final LinePrompt prompt;

    /** The terminal speaks English; only the window has a choice. */
    private final Texts texts = Texts.in(Locale.ENGLISH);

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

    /** A folder with lessons of one's own; only the trainer's own options name one. */
    private @Nullable Path lessons;

    DrillCommand(Streams streams) {
        this.streams = streams;
        this.prompt = new LinePrompt(streams);
    }

    /** The drill that stands in for the window, with what the window was to be opened with. */
    static DrillCommand insteadOfTheWindow(
            Streams streams, @Nullable Path lessons, @Nullable String lesson, @Nullable Long seed) {
        DrillCommand drill = new DrillCommand(streams);
        drill.lessons = lessons;
        drill.lesson = lesson;
        drill.seed = seed == null ? drill.seed : seed;
        return drill;
    }

    @Override
    public Integer call() throws ProblemException {
        LessonShelf shelf = LessonShelf.of(Optional.ofNullable(lessons));
        Optional<Scenario> asked = lesson == null ? Optional.empty() : Optional.of(named(lesson, shelf));
        try (TerminalRecords records = learner == null ? TerminalRecords.none() : TerminalRecords.of(learner, data)) {
            Notices.BEFORE_THE_FIRST_FLASH.forEach(streams::line);
            rounds(shelf, asked.isPresent() ? asked : choose(shelf), records);
        }
        return ExitStatus.DONE;
    }

    private void rounds(LessonShelf shelf, Optional<Scenario> first, TerminalRecords records) {
        Optional<Scenario> next = first;
        while (next.isPresent()) {
            if (!round(Lesson.play(next.get(), seed++), records)) {
                break;
            }
            Optional<String> again = prompt.ask("Enter for the same lesson, l for another, q to stop: ");
            if (again.isEmpty() || again.get().equalsIgnoreCase("q")) {
                break;
            }
            if (again.get().equalsIgnoreCase("l")) {
                next = choose(shelf);
            }
        }
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

    private Optional<Scenario> choose(LessonShelf shelf) {
        List<Scenario> lessons = shelf.scenarios();
        streams.line("");
        for (int i = 0; i < lessons.size(); i++) {
            streams.line((i < 9 ? " " : "") + (i + 1) + "  " + lessons.get(i).title());
        }
        while (true) {
            Optional<String> answer =
                    prompt.ask("Which lesson, 1 to " + lessons.size() + "? (Enter for 1, q to stop) ");
            if (answer.isEmpty() || answer.get().equalsIgnoreCase("q")) {
                return Optional.empty();
            }
            String typed = answer.get().isEmpty() ? "1" : answer.get();
            if (typed.matches("[0-9]{1,4}")
                    && Integer.parseInt(typed) >= 1
                    && Integer.parseInt(typed) <= lessons.size()) {
                return Optional.of(lessons.get(Integer.parseInt(typed) - 1));
            }
            streams.line("Please type a number from 1 to " + lessons.size() + ".");
        }
    }

    /** One lesson, shown, asked and marked; false where the input ended or the learner stopped. */
    private boolean round(Lesson shown, TerminalRecords records) {
        streams.line("");
        streams.line(shown.scenario().title());
        shown.scenario().briefing().forEach(paragraph -> {
            streams.line("");
            wrapped(paragraph);
        });
        streams.line("");
        shown.cautions().forEach(caution -> wrapped("! " + caution.sentence(texts)));
        streams.line("");
        wrapped(shown.scenario().task());
        boolean blinking = !text && streams.interactive() && FlashRate.mayFlash(shown.pulses());
        if (blinking) {
            Optional<String> go = prompt.ask("Enter starts the lamp. ");
            if (go.isEmpty() || go.get().equalsIgnoreCase("q")) {
                return false;
            }
            new TerminalLamp(streams).play(shown.pulses());
        } else {
            streams.line("Each # is a quarter of a second of light, each . a quarter of a second of dark:");
            FlashStrip.lines(shown.pulses()).forEach(streams::line);
        }
        AnswerSheet sheet = AnswerSheet.empty();
        for (Segment segment : shown.segments()) {
            Optional<String> written = prompt.ask(
                    "What did you count" + (segment == Segment.CODES ? "" : ", " + new Words(texts).title(segment))
                            + "? (codes with blanks between) ");
            if (written.isEmpty()) {
                return false;
            }
            sheet = sheet.with(segment, Arrays.asList(written.get().split("[\\s,;]+", -1)));
        }
        Marking marking = shown.mark(sheet);
        records.keep(shown, marking, blinking ? Display.LAMP.key() : STRIP)
                .ifPresent(problem -> streams.problems(List.of(problem)));
        MarkedSheet.lines(texts, shown, marking).forEach(streams::line);
        return true;
    }

    /** Broken between words, so that a paragraph can be read in a usual terminal. */
    private void wrapped(String paragraph) {
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > LINE_LETTERS) {
                streams.line(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        streams.line(line.toString());
    }
}
