package telltally.simulator.format;

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

/** Reads a flash format from its file and checks that what it says can be sent and told apart again. */
public final class FormatReader {
    public static final String SCHEMA = "telltally/format/1";

    static final long SHORTEST_NANOS = 1_000_000L;
    static final long LONGEST_NANOS = 3_600_000_000_000L;
    static final int MOST_FLASHES = 40;
    static final int MOST_CODES = 100;

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

    /** A format that stands within another file. Only to be used if it gave no problem. */
    public static FlashFormat read(Fields inner) {
        return new FormatReader(inner).format();
    }

    private FlashFormat format() {
        file.schema(SCHEMA);
        String id = file.id("id");
        String title = file.text("title");
        String notes = file.optionalText("notes").orElse("");
        boolean restsLit = file.flag("rests_lit", false);
        CodeShapeReader flashes = new CodeShapeReader(file);
        CodeShape shape = flashes.shape();
        Repeats repeats = repeats();
        Optional<LeadIn> leadIn = leadIn(flashes.longestFlashNanos());
        Gaps gaps = gaps(shape, repeats, leadIn.isPresent());
        Optional<Sessions> sessions = sessions(flashes, gaps, repeats);
        Optional<String> framingCode = file.optionalText("framing_code");
        framingCode.ifPresent(code -> mustBeSendable(file, "framing_code", code, shape));
        NothingToReport nothing = nothingToReport(shape, framingCode, sessions.isPresent());
        Optional<Burst> burst =
                file.optionalObject("burst").map(each -> closed(each, new Burst(each.whole("times_faster", 2, 1000))));
        file.close();
        return new FlashFormat(
                id, title, notes, restsLit, shape, gaps, repeats, leadIn, framingCode, nothing, sessions, burst);
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
            fields.problem("list_times", "a list that loops has no number of times; expected either of them");
        }
        int times = fields.whole("list_times", 1, 20, 1);
        int most = fields.whole("most_codes", 1, MOST_CODES, MOST_CODES);
        fields.close();
        return new Repeats(each, loops ? 0 : times, most);
    }

    private Optional<LeadIn> leadIn(long longestFlashNanos) {
        return file.optionalObject("lead_in").map(each -> {
            SaidLength lit = SaidLength.read(each, "lit_s", "the lead-in");
            lit.mustExceed(
                    SaidLength.known("the longest flash", longestFlashNanos),
                    each,
                    "the lead-in would be counted as a flash");
            return closed(each, new LeadIn(lit.nanos(), each.nanos("dark_after_s", SHORTEST_NANOS, LONGEST_NANOS)));
        });
    }

    private Gaps gaps(CodeShape shape, Repeats repeats, boolean announced) {
        return file.object("gaps")
                .map(new GapsReader(shape, repeats, announced)::read)
                .orElse(new Gaps(1, 1, 1, 1));
    }

    private Optional<Sessions> sessions(CodeShapeReader flashes, Gaps gaps, Repeats repeats) {
        return file.optionalObject("sessions").map(each -> {
            if (repeats.loops()) {
                file.problem(
                        "list",
                        "loops; with \"sessions\" it would never come to the next segment; expected \"list_times\"");
            }
            SaidLength around = SaidLength.read(each, "around_separator_s", "the gap around the separator");
            long listNanos = Math.max(gaps.betweenCodesNanos(), gaps.beforeRepeatNanos());
            around.mustExceed(
                    SaidLength.known("the longest gap between codes", listNanos),
                    each,
                    "separator and codes would run together");
            SaidLength test = SaidLength.read(each, "running_test_s", "the running test");
            test.mustExceed(around, each, "cylinder flashes and codes would run together");
            return closed(
                    each,
                    new Sessions(
                            each.whole("separator_flashes", 1, MOST_FLASHES),
                            around.nanos(),
                            flashes.flash(each),
                            test.nanos(),
                            each.whole("most_balance_flashes", 1, MOST_FLASHES)));
        });
    }

    private NothingToReport nothingToReport(CodeShape shape, Optional<String> framingCode, boolean segmented) {
        Optional<Fields> found = file.optionalObject("nothing_to_report");
        if (segmented && !found.map(each -> each.has("code")).orElse(false)) {
            file.problem(
                    "nothing_to_report",
                    "a format with \"sessions\" needs a code that says there is nothing to report, such as"
                            + " {\"code\": \"11\"}");
            return new NothingToReport.Dark();
        }
        return found.map(each -> each.has("code") ? passCode(each, shape, framingCode) : blinking(each))
                .orElse(new NothingToReport.Dark());
    }

    private static NothingToReport passCode(Fields fields, CodeShape shape, Optional<String> framingCode) {
        if (fields.has("blink_on_s") || fields.has("blink_off_s")) {
            fields.problem("says both a code and a blink; expected one of them");
            return new NothingToReport.Dark();
        }
        String code = fields.text("code");
        mustBeSendable(fields, "code", code, shape);
        if (framingCode.filter(code::equals).isPresent()) {
            fields.problem("code", "is the framing code; a reader could not tell the two apart");
        }
        return closed(fields, new NothingToReport.PassCode(code));
    }

    private static NothingToReport blinking(Fields fields) {
        if (!fields.has("blink_on_s") && !fields.has("blink_off_s")) {
            fields.problem("says neither a code nor a blink; expected \"code\", or \"blink_on_s\" and \"blink_off_s\"");
            return new NothingToReport.Dark();
        }
        return closed(
                fields,
                new NothingToReport.Blinking(
                        fields.nanos("blink_on_s", SHORTEST_NANOS, LONGEST_NANOS),
                        fields.nanos("blink_off_s", SHORTEST_NANOS, LONGEST_NANOS)));
    }

    private static void mustBeSendable(Fields at, String name, String code, CodeShape shape) {
        if (!code.isBlank()) {
            shape.refusal(code).ifPresent(reason -> at.problem(name, Problem.quoted(code) + ": " + reason));
        }
    }

    private static <T> T closed(Fields fields, T value) {
        fields.close();
        return value;
    }
}
