package telltally.trainer.lesson;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.scenario.Content;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.scenario.ScenarioReader;

/** Lessons for tests, played with a fixed seed. */
public final class SampleLessons {
    private SampleLessons() {}

    /** What the code list of the samples says; invented. */
    public static CodeList meanings() {
        return new CodeList(
                "bench",
                "Bench",
                "Invented.",
                Map.of(
                        "34", "Throttle sensor: voltage too high",
                        "42", "Coolant sensor: circuit open",
                        "15", "Stored values lost"));
    }

    /** Knows the shipped formats and the code list {@code bench}. */
    public static ScenarioReader reader() {
        return new ScenarioReader(FormatCatalog.shipped(), CodeListCatalog.of(List.of(meanings())));
    }

    public static LessonShelf shelf() {
        return LessonShelf.of(new ResourceFolder("telltally/trainer/lessons"), Optional.empty(), reader());
    }

    public static Lesson keyOn(List<String> present, List<String> stored) {
        return in("pair-even", new Message.KeyOn(present, stored));
    }

    public static Lesson in(String format, Message message) {
        FlashFormat known = FormatCatalog.shipped().find(format).orElseThrow();
        Scenario scenario = new Scenario(
                "sample",
                "A sample",
                List.of("A briefing."),
                "Write the codes down.",
                known,
                Optional.of(meanings()),
                new Content.Outright(message),
                Display.LAMP,
                2);
        return Lesson.play(scenario, 7);
    }
}
