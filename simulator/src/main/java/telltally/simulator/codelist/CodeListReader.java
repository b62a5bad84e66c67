package telltally.simulator.codelist;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;

/** Reads a code list from its file. */
public final class CodeListReader {
    public static final String SCHEMA = "telltally/codelist/1";

    private CodeListReader() {}

    /** @throws ProblemException with every problem of the file */
    public static CodeList read(TextFile source) throws ProblemException {
        Problems problems = new Problems(source.name());
        Fields file = Fields.of(source, problems);
        file.schema(SCHEMA);
        String id = file.id("id");
        String title = file.text("title");
        String notes = file.optionalText("notes").orElse("");
        Map<String, String> meanings = meanings(file);
        file.close();
        problems.throwIfAny();
        return new CodeList(id, title, notes, meanings);
    }

    private static Map<String, String> meanings(Fields file) {
        Map<String, String> meanings = new LinkedHashMap<>();
        int before = file.problems().count();
        List<Fields> entries = file.objects("codes");
        if (entries.isEmpty() && file.problems().count() == before) {
            file.problem("codes", "is empty; at least one code with its meaning was expected");
        }
        for (Fields entry : entries) {
            String code = entry.text("code");
            String meaning = entry.text("meaning");
            if (!code.isBlank() && code.chars().anyMatch(Character::isWhitespace)) {
                entry.problem("code", Problem.quoted(code) + " has a space in it; a code has none");
            } else if (!code.isBlank() && meanings.putIfAbsent(code, meaning) != null) {
                entry.problem("code", Problem.quoted(code) + " stands here for the second time");
            }
            entry.close();
        }
        return meanings;
    }
}
