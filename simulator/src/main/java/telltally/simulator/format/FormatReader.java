package telltally.simulator.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat.Burst;
import telltally.simulator.format.FlashFormat.Gaps;
import telltally.simulator.format.FlashFormat.LeadIn;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.FlashFormat.Repeats;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.signal.Seconds;

/** Reads a flash format from its file and checks that what it says can be sent and told apart again. */
public final class FormatReader {
    public static final String SCHEMA = "telltally/format/1";

    private static final long SHORTEST_NANOS = 1_000_000L;
    private static final long LONGEST_NANOS = 3_600_000_000_000L;
    private static final int MOST_FLASHES = 40;
    private static final int MOST_CODES = 100;

    private final Fields file;

    private FormatReader(Fields file) {
        this.file = file;
    }

    /** @throws ProblemException with every problem of the file */
    public static FlashFormat read(TextFile source) throws ProblemException {
        Problems problems = new Problems(source.name());
        FlashFormat format = new FormatReader(Fields.of(source, problems)).format();
        problems.throwIfAny();
        return format;
    }

    private FlashFormat format() {
        file.schema(SCHEMA);
        String id = file.id("id");
        String title = file.text("title");
        String notes = file.optionalText("notes").orElse("");
        boolean restsLit = file.flag("rests_lit", false);
        Map<String, FlashKind> kinds = flashKinds();
        CodeShape shape = shape(kinds);
        Repeats repeats = repeats();
        Optional<LeadIn> leadIn = leadIn();
        Gaps gaps = gaps(shape, repeats, leadIn.isPresent());
        Optional<Sessions> sessions = sessions(kinds, gaps);
        Optional<String> framingCode = code("framing_code", shape);
        NothingToReport nothing = nothingToReport(shape, sessions.isPresent());
        Optional<Burst> burst =
                file.optionalObject("burst").map(each -> closed(each, new Burst(each.whole("times_faster", 2, 1000))));
        file.close();
        return new FlashFormat(
                id, title, notes, restsLit, shape, gaps, repeats, leadIn, framingCode, nothing, sessions, burst);
    }

    private Map<String, FlashKind> flashKinds() {
        Map<String, FlashKind> kinds = new LinkedHashMap<>();
        file.object("flashes_s").ifPresent(flashes -> {
            for (String name : flashes.names()) {
                kinds.put(name, new FlashKind(name, flashes.nanos(name, SHORTEST_NANOS, LONGEST_NANOS)));
            }
            if (kinds.isEmpty()) {
                flashes.problem("is empty; at least one flash with its seconds was expected");
            }
        });
        if (kinds.isEmpty()) {
            kinds.put("", new FlashKind("", SHORTEST_NANOS));
        }
        return kinds;
    }

    private CodeShape shape(Map<String, FlashKind> kinds) {
        Optional<Fields> code = file.object("code");
        if (code.isEmpty()) {
            return new CodeShape.Counted(List.of());
        }
        Fields fields = code.get();
        if (fields.has("places") == fields.has("signs")) {
            fields.problem("either \"places\" (counted digits) or \"signs\" (a table of flashes) was expected");
            fields.names();
            return new CodeShape.Counted(List.of());
        }
        CodeShape shape = fields.has("places") ? counted(fields, kinds) : spelled(fields, kinds);
        fields.close();
        return shape;
    }

    private CodeShape counted(Fields code, Map<String, FlashKind> kinds) {
        List<CodeShape.Place> places = new ArrayList<>();
        List<Fields> all = code.objects("places");
        for (Fields each : all) {
            FlashKind flash = flash(each, kinds);
            Map<String, Integer> counts = new LinkedHashMap<>();
            if (each.has("counts")) {
                each.object("counts").ifPresent(table -> {
                    for (String digit : table.names()) {
                        int count = table.whole(digit, 1, MOST_FLASHES);
                        if (counts.containsValue(count)) {
                            table.problem(digit, "has as many flashes as another digit; they could not be told apart");
                        }
                        if (digit.isEmpty() || (all.size() > 1 && digit.length() > 1)) {
                            table.problem(digit, "is no single character; each of several places takes one");
                        }
                        counts.put(digit, count);
                    }
                });
            } else {
                int from = each.whole("from", 1, MOST_FLASHES);
                int to = each.whole("to", 1, MOST_FLASHES);
                if (to < from) {
                    each.problem("to", "is " + to + "; expected at least " + from + ", where \"from\" begins");
                }
                if (all.size() > 1 && to > 9) {
                    each.problem("to", "is " + to + "; each of several places takes one figure, 1 to 9");
                }
                for (int count = from; count <= to; count++) {
                    counts.put(Integer.toString(count), count);
                }
            }
            each.close();
            if (counts.isEmpty()) {
                counts.put("1", 1);
            }
            places.add(new CodeShape.Place(flash, counts));
        }
        if (all.isEmpty() && code.has("places")) {
            code.problem("places", "is empty; at least one place was expected");
        }
        return new CodeShape.Counted(places);
    }

    private CodeShape spelled(Fields code, Map<String, FlashKind> kinds) {
        Map<String, List<FlashKind>> table = new LinkedHashMap<>();
        code.object("signs")
                .ifPresent(signs -> signs.textsByName().forEach((sign, flashes) -> {
                    List<FlashKind> row = new ArrayList<>();
                    for (String name :
                            flashes.chars().mapToObj(Character::toString).toList()) {
                        FlashKind kind = kinds.get(name);
                        if (kind == null) {
                            signs.problem(
                                    sign,
                                    "names a flash " + Problem.quoted(name) + "; expected "
                                            + String.join(" or ", kinds.keySet()) + " of /flashes_s");
                            break;
                        }
                        row.add(kind);
                    }
                    if (sign.length() != 1) {
                        signs.problem(sign, "is no single character; each sign is one");
                    }
                    if (table.containsValue(row) && !row.isEmpty()) {
                        signs.problem(sign, "has the same flashes as another sign; they could not be told apart");
                    }
                    table.put(sign, row);
                }));
        return new CodeShape.Spelled(table, code.whole("longest", 1, MOST_CODES));
    }

    private FlashKind flash(Fields at, Map<String, FlashKind> kinds) {
        String name = at.text("flash");
        FlashKind kind = kinds.get(name);
        if (kind == null && !name.isBlank()) {
            at.problem(
                    "flash",
                    "is " + Problem.quoted(name) + "; expected " + String.join(" or ", kinds.keySet())
                            + " of /flashes_s");
        }
        return kind == null ? kinds.values().iterator().next() : kind;
    }

    private Repeats repeats() {
        Optional<Fields> list = file.object("list");
        if (list.isEmpty()) {
            return new Repeats(1, 1, MOST_CODES);
        }
        Fields fields = list.get();
        int each = fields.whole("each_code_times", 1, 20, 1);
        boolean loops = fields.flag("loops", false);
        if (loops && fields.has("list_times")) {
            fields.problem("list_times", "a list that loops has no number of times");
        }
        int times = fields.whole("list_times", 1, 20, 1);
        int most = fields.whole("most_codes", 1, MOST_CODES, MOST_CODES);
        fields.close();
        return new Repeats(each, loops ? 0 : times, most);
    }

    private Optional<LeadIn> leadIn() {
        return file.optionalObject("lead_in")
                .map(each -> closed(
                        each,
                        new LeadIn(
                                each.nanos("lit_s", SHORTEST_NANOS, LONGEST_NANOS),
                                each.nanos("dark_after_s", SHORTEST_NANOS, LONGEST_NANOS))));
    }

    private Gaps gaps(CodeShape shape, Repeats repeats, boolean announced) {
        Optional<Fields> found = file.object("gaps");
        if (found.isEmpty()) {
            return new Gaps(1, 1, 1, 1);
        }
        Fields gaps = found.get();
        long within = gaps.nanos("within_digit_s", SHORTEST_NANOS, LONGEST_NANOS);
        boolean onePlace =
                shape instanceof CodeShape.Counted counted && counted.places().size() == 1;
        long digits = onePlace && !gaps.has("between_digits_s")
                ? within
                : gaps.nanos("between_digits_s", SHORTEST_NANOS, LONGEST_NANOS);
        boolean oneCode = repeats.mostCodes() == 1 && repeats.eachCodeTimes() == 1;
        Optional<Long> beforeRepeat = gaps.optionalNanos("before_repeat_s", SHORTEST_NANOS, LONGEST_NANOS);
        long codes = oneCode && !gaps.has("between_codes_s") && beforeRepeat.isPresent()
                ? beforeRepeat.get()
                : gaps.nanos("between_codes_s", SHORTEST_NANOS, LONGEST_NANOS);
        longer(gaps, "between_digits_s", digits, within, "within a digit", onePlace || flashesDiffer(shape), "digits");
        longer(gaps, "between_codes_s", codes, digits, "between digits", announced, "codes");
        gaps.close();
        return new Gaps(within, digits, codes, beforeRepeat.orElse(codes));
    }

    /** Where the digits are told apart by the kind of their flashes, their gap need not do it. */
    private static boolean flashesDiffer(CodeShape shape) {
        return shape instanceof CodeShape.Counted counted
                && counted.flashKinds().size() == counted.places().size();
    }

    private static void longer(
            Fields gaps,
            String name,
            long nanos,
            long thanNanos,
            String than,
            boolean anyway,
            String whatRunsTogether) {
        if (gaps.has(name) && nanos <= thanNanos && !anyway) {
            gaps.problem(
                    name,
                    Seconds.text(nanos) + " is not longer than the gap " + than + " (" + Seconds.text(thanNanos) + "); "
                            + whatRunsTogether + " would run together");
        }
    }

    private Optional<Sessions> sessions(Map<String, FlashKind> kinds, Gaps gaps) {
        return file.optionalObject("sessions").map(each -> {
            long around = each.nanos("around_separator_s", SHORTEST_NANOS, LONGEST_NANOS);
            longer(
                    each,
                    "around_separator_s",
                    around,
                    gaps.betweenCodesNanos(),
                    "between codes",
                    false,
                    "separator and codes");
            long test = each.nanos("running_test_s", SHORTEST_NANOS, LONGEST_NANOS);
            longer(each, "running_test_s", test, around, "around the separator", false, "cylinder flashes and codes");
            return closed(
                    each,
                    new Sessions(
                            each.whole("separator_flashes", 1, MOST_FLASHES),
                            around,
                            flash(each, kinds),
                            test,
                            each.whole("most_balance_flashes", 1, MOST_FLASHES)));
        });
    }

    private NothingToReport nothingToReport(CodeShape shape, boolean segmented) {
        Optional<Fields> found = file.optionalObject("nothing_to_report");
        if (found.isEmpty()) {
            return new NothingToReport.Dark();
        }
        Fields fields = found.get();
        if (fields.has("code")) {
            String code = fields.text("code");
            shape.refusal(code).ifPresent(reason -> fields.problem("code", Problem.quoted(code) + " " + reason));
            return closed(fields, new NothingToReport.PassCode(code));
        }
        if (segmented) {
            fields.problem("a format with segments needs a code that says there is nothing to report");
        }
        return closed(
                fields,
                new NothingToReport.Blinking(
                        fields.nanos("blink_on_s", SHORTEST_NANOS, LONGEST_NANOS),
                        fields.nanos("blink_off_s", SHORTEST_NANOS, LONGEST_NANOS)));
    }

    private Optional<String> code(String name, CodeShape shape) {
        Optional<String> code = file.optionalText(name);
        code.flatMap(shape::refusal).ifPresent(reason -> file.problem(name, Problem.quoted(code.get()) + " " + reason));
        return code;
    }

    private static <T> T closed(Fields fields, T value) {
        fields.close();
        return value;
    }
}
