package telltally.trainer.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.lesson.LessonShelf.Entry;

/**
 * What lessons, formats and code lists say, in another language: text by text, so that one translation serves every file
 * that says the same. What has none stays as it was written.
 *
 * @param texts the translation by the original
 */
public record Translation(Map<String, String> texts) {
    public static final String SCHEMA = "telltally/translation/1";

    private static final String SHIPPED = "telltally/scenarios/translations";

    public Translation {
        texts = Map.copyOf(texts);
    }

    /** The one that ships for a language; one that changes nothing where there is none. */
    public static Translation into(Locale language) {
        String name = language.getLanguage() + ".json";
        if (language.getLanguage().equals(Locale.ENGLISH.getLanguage())) {
            return new Translation(Map.of());
        }
        return new ResourceFolder(SHIPPED)
                .read().stream()
                        .filter(file -> file.name().equals(name))
                        .findFirst()
                        .map(Translation::shipped)
                        .orElseGet(() -> new Translation(Map.of()));
    }

    private static Translation shipped(TextFile file) {
        try {
            return read(file);
        } catch (ProblemException e) {
            throw new IllegalStateException("a shipped translation is broken: " + e.getMessage(), e);
        }
    }

    /** @throws ProblemException with every problem of the file */
    public static Translation read(TextFile source) throws ProblemException {
        Problems problems = new Problems(source.name());
        Fields file = Fields.of(source, problems);
        file.schema(SCHEMA);
        String language = file.text("language");
        if (!language.isBlank() && !language.matches("[a-z]{2}")) {
            file.problem("language", "is " + Problem.quoted(language) + "; expected two small letters, such as de");
        }
        Map<String, String> texts =
                file.object("texts").map(Fields::textsByName).orElse(Map.of());
        file.close();
        problems.throwIfAny();
        return new Translation(texts);
    }

    public String of(String text) {
        return texts.getOrDefault(text, text);
    }

    /** The same lesson in other words: it is sent and marked as before. */
    public Scenario of(Scenario scenario) {
        return new Scenario(
                scenario.id(),
                of(scenario.title()),
                scenario.briefing().stream().map(this::of).toList(),
                of(scenario.task()),
                of(scenario.format()),
                scenario.codeList().map(this::of),
                scenario.content(),
                scenario.display(),
                scenario.loops(),
                scenario.channel());
    }

    public LessonShelf of(LessonShelf shelf) {
        return new LessonShelf(shelf.entries().stream().map(this::of).toList());
    }

    private Entry of(Entry entry) {
        return entry instanceof Entry.Ready ready ? new Entry.Ready(ready.file(), of(ready.scenario())) : entry;
    }

    public CodeListCatalog of(CodeListCatalog lists) {
        List<CodeList> all = lists.ids().stream()
                .flatMap(id -> lists.find(id).stream())
                .map(this::of)
                .toList();
        return CodeListCatalog.of(all);
    }

    private CodeList of(CodeList list) {
        Map<String, String> meanings = new LinkedHashMap<>();
        list.meanings().forEach((code, meaning) -> meanings.put(code, of(meaning)));
        return new CodeList(list.id(), of(list.title()), of(list.notes()), meanings, list.rules());
    }

    private FlashFormat of(FlashFormat format) {
        return new FlashFormat(
                format.id(),
                of(format.title()),
                format.notes(),
                format.restsLit(),
                format.shape(),
                format.gaps(),
                format.repeats(),
                format.leadIn(),
                format.framingCode(),
                format.nothingToReport(),
                format.sessions(),
                format.burst());
    }
}
