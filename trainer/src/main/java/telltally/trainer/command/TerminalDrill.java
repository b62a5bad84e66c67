package telltally.trainer.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import telltally.simulator.format.Segment;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.drill.FlashStrip;
import telltally.trainer.drill.MarkedSheet;
import telltally.trainer.lesson.AnswerSheet;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.Marking;
import telltally.trainer.lesson.Words;
import telltally.trainer.playback.FlashRate;
import telltally.trainer.text.Texts;

/** Lessons in a terminal: told, blinked or written as a strip, asked and marked. */
final class TerminalDrill {
    private static final int LINE_LETTERS = 78;

    /** How records call flashes that are written as text. */
    private static final String STRIP = "strip";

    private final Streams streams;
    private final LinePrompt prompt;
    private final Texts texts;
    private final LessonShelf shelf;
    private final TerminalRecords records;
    private final boolean asText;

    /** @param asText whether flashes are written where they could blink */
    TerminalDrill(Streams streams, Texts texts, LessonShelf shelf, TerminalRecords records, boolean asText) {
        this.streams = streams;
        this.prompt = new LinePrompt(streams);
        this.texts = texts;
        this.shelf = shelf;
        this.records = records;
        this.asText = asText;
    }

    /**
     * Lesson after lesson until the learner has enough.
     *
     * @param asked the lesson to begin with; empty where the learner is to choose
     * @param seed of the first; each further one takes the next
     */
    void run(Optional<Scenario> asked, long seed) {
        wrapped(texts.of("terminal.warning"));
        Optional<Scenario> next = asked.isPresent() ? asked : choose();
        long nextSeed = seed;
        while (next.isPresent()) {
            if (!round(Lesson.play(next.get(), nextSeed++))) {
                break;
            }
            Optional<String> again = ask("terminal.again");
            if (again.isEmpty() || again.get().equalsIgnoreCase("q")) {
                break;
            }
            if (again.get().equalsIgnoreCase("l")) {
                next = choose();
            }
        }
    }

    private Optional<Scenario> choose() {
        List<Scenario> lessons = shelf.scenarios();
        streams.line("");
        for (int i = 0; i < lessons.size(); i++) {
            streams.line((i < 9 ? " " : "") + (i + 1) + "  " + lessons.get(i).title());
        }
        while (true) {
            Optional<String> answer = ask("terminal.which-lesson", lessons.size());
            if (answer.isEmpty() || answer.get().equalsIgnoreCase("q")) {
                return Optional.empty();
            }
            String typed = answer.get().isEmpty() ? "1" : answer.get();
            if (typed.matches("[0-9]{1,4}")
                    && Integer.parseInt(typed) >= 1
                    && Integer.parseInt(typed) <= lessons.size()) {
                return Optional.of(lessons.get(Integer.parseInt(typed) - 1));
            }
            streams.line(texts.of("terminal.please-a-number", lessons.size()));
        }
    }

    /** One lesson, shown, asked and marked; false where the input ended or the learner stopped. */
    private boolean round(Lesson shown) {
        streams.line("");
        streams.line(shown.scenario().title());
        shown.scenario().briefing().forEach(paragraph -> {
            streams.line("");
            wrapped(paragraph);
        });
        streams.line("");
        shown.cautions().forEach(caution -> wrapped(texts.of("terminal.caution", caution.sentence(texts))));
        streams.line("");
        wrapped(shown.scenario().task());
        boolean blinking = !asText && streams.interactive() && FlashRate.mayFlash(shown.pulses());
        if (blinking) {
            Optional<String> go = ask("terminal.start");
            if (go.isEmpty() || go.get().equalsIgnoreCase("q")) {
                return false;
            }
            new TerminalLamp(streams).play(shown.pulses());
        } else {
            streams.line(texts.of("terminal.strip"));
            FlashStrip.lines(shown.pulses(), texts).forEach(streams::line);
        }
        AnswerSheet sheet = AnswerSheet.empty();
        for (Segment segment : shown.segments()) {
            Optional<String> written = segment == Segment.CODES
                    ? ask("terminal.counted")
                    : ask("terminal.counted-in", new Words(texts).title(segment));
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

    private Optional<String> ask(String key, Object... arguments) {
        return prompt.ask(texts.of(key, arguments) + " ");
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
