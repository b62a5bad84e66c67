package telltally.trainer.lesson;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.scenario.ScenarioReader;

/** The lessons to choose from: those that ship, by file name, then those of the instructor's own folder. */
public record LessonShelf(List<Entry> entries) {
    /** Where the lessons lie that ship with Telltally. */
    public static final String SHIPPED = "telltally/scenarios/lessons";

    public LessonShelf {
        entries = List.copyOf(entries);
    }

    /** One file. */
    public sealed interface Entry {
        /** As the user would look for it. */
        String file();

        record Ready(String file, Scenario scenario) implements Entry {}

        /** A file that cannot be played, with the reasons; it does not keep the others from being played. */
        record Broken(String file, List<Problem> problems) implements Entry {
            public Broken {
                problems = List.copyOf(problems);
            }
        }
    }

    /** @param own a folder with the instructor's lessons, {@code *.json} */
    public static LessonShelf of(Optional<Path> own) {
        return of(new ResourceFolder(SHIPPED), own, ScenarioReader.shipped());
    }

    public static LessonShelf of(ResourceFolder shipped, Optional<Path> own, ScenarioReader reader) {
        List<Entry> entries = new ArrayList<>();
        for (TextFile file : shipped.read()) {
            entries.add(entry(file.name(), () -> reader.read(file, Optional.empty())));
        }
        own.ifPresent(folder -> addOwn(entries, folder, reader));
        return new LessonShelf(entries);
    }

    /** Those that can be played. */
    public List<Scenario> scenarios() {
        return entries.stream()
                .filter(Entry.Ready.class::isInstance)
                .map(entry -> ((Entry.Ready) entry).scenario())
                .toList();
    }

    /** The first lesson of that id. */
    public Optional<Scenario> find(String id) {
        return scenarios().stream().filter(scenario -> scenario.id().equals(id)).findFirst();
    }

    private static void addOwn(List<Entry> entries, Path folder, ScenarioReader reader) {
        try (Stream<Path> found = Files.list(folder)) {
            found.filter(each -> each.toString().endsWith(".json"))
                    .sorted()
                    .forEach(file -> entries.add(entry(file.toString(), () -> reader.read(file))));
        } catch (IOException e) {
            String name = folder.toString();
            entries.add(new Entry.Broken(name, List.of(Problem.of(name, "is no folder that can be read"))));
        }
    }

    private interface Reading {
        Scenario read() throws ProblemException;
    }

    private static Entry entry(String name, Reading reading) {
        try {
            return new Entry.Ready(name, reading.read());
        } catch (ProblemException e) {
            return new Entry.Broken(name, e.problems());
        }
    }
}
