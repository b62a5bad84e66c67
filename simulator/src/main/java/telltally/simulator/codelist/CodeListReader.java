package telltally.simulator.codelist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.codelist.CodeList.Rule;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.Segment;

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
        List<Rule> rules = new ArrayList<>();
        Map<String, String> meanings = meanings(file, rules);
        file.close();
        problems.throwIfAny();
        return new CodeList(id, title, notes, meanings, rules);
    }

    private static void rules(Fields entry, String code, List<Rule> rules) {
        List<Fields> causes = entry.optionalObjects("set_by");
        if (entry.has("set_by") && causes.isEmpty()) {
            entry.problem("set_by", "is empty; expected at least one condition, or no \"set_by\"");
        }
        for (Fields setBy : causes) {
            rules.add(new Rule(code, setBy.id("condition"), segments(setBy)));
            setBy.close();
        }
    }

    private static List<Segment> segments(Fields setBy) {
        int before = setBy.problems().count();
        List<Segment> segments = new ArrayList<>();
        for (PlacedText named : setBy.texts("in")) {
            Optional<Segment> segment = Arrays.stream(Segment.values())
                    .filter(each -> each != Segment.BALANCE && each.key().equals(named.text()))
                    .findFirst();
            if (segment.isEmpty() || segments.contains(segment.get())) {
                setBy.problems()
                        .add(
                                named.place(),
                                named.pointer(),
                                "is " + Problem.quoted(named.text())
                                        + "; expected \"present\", \"stored\", \"running\" or \"codes\", each once");
            }
            segment.ifPresent(segments::add);
        }
        if (segments.isEmpty() && setBy.problems().count() == before) {
            setBy.problem("in", "is empty; expected at least one segment that tells of the condition");
        }
        return segments;
    }

    private static Map<String, String> meanings(Fields file, List<Rule> rules) {
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
            rules(entry, code, rules);
            entry.close();
        }
        return meanings;
    }
}
