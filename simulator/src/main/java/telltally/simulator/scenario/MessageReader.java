package telltally.simulator.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.Problems;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;

/**
 * Reads the codes of a lesson, by segment. Where the format or the code list is not known, because it was told of
 * before, everything else is still checked.
 */
final class MessageReader {
    /** A balance result that says every cylinder contributes; common practice, no source. */
    private static final int ALL_CONTRIBUTE = 9;

    private final Fields file;
    private final Fields codes;
    private final Problems problems;
    private final Optional<FlashFormat> format;
    private final Optional<CodeList> codeList;

    MessageReader(Fields file, Fields codes, Optional<FlashFormat> format, Optional<CodeList> codeList) {
        this.file = file;
        this.codes = codes;
        this.problems = codes.problems();
        this.format = format;
        this.codeList = codeList;
    }

    /**
     * @param cylinders 0 where the file does not say
     * @return empty where a problem was found
     */
    Optional<Message> read(int cylinders, boolean prompt) {
        int before = problems.count();
        List<String> tests = tests();
        if (prompt && !codes.has(Segment.RUNNING.key())) {
            file.problem("prompt", "has no meaning here; only a running test prompts");
        }
        Message message = tests.size() == 1 ? message(cylinders, prompt) : notOneTest(tests);
        codes.close();
        format.ifPresent(this::checkSegments);
        if (problems.count() == before) {
            format.flatMap(message::refusal).ifPresent(codes::problem);
        }
        return problems.count() == before ? Optional.of(message) : Optional.empty();
    }

    /** The tests that segments are given for: the engine-off test has two, the others one each. */
    private List<String> tests() {
        List<String> tests = new ArrayList<>();
        if (codes.has(Segment.PRESENT.key()) || codes.has(Segment.STORED.key())) {
            tests.add("present and stored");
        }
        for (Segment segment : List.of(Segment.RUNNING, Segment.BALANCE, Segment.CODES)) {
            if (codes.has(segment.key())) {
                tests.add(segment.key());
            }
        }
        return tests;
    }

    private Message notOneTest(List<String> tests) {
        codes.problem("holds " + (tests.isEmpty() ? "no segment" : String.join(", ", tests))
                + "; expected the codes of one test: present and stored, or running, or balance, or codes");
        for (Segment segment : Segment.values()) {
            codes.optionalTexts(segment.key());
        }
        return new Message.Codes(List.of());
    }

    private Message message(int cylinders, boolean prompt) {
        if (codes.has(Segment.RUNNING.key())) {
            checkHalf(cylinders);
            return new Message.Running(cylinders, prompt, list(Segment.RUNNING));
        }
        if (codes.has(Segment.BALANCE.key())) {
            return balance(cylinders);
        }
        return codes.has(Segment.CODES.key())
                ? new Message.Codes(list(Segment.CODES))
                : new Message.KeyOn(list(Segment.PRESENT), list(Segment.STORED));
    }

    private void checkHalf(int cylinders) {
        if (cylinders == 0) {
            file.problem("cylinders", "is missing; a running test opens with half the number of cylinders");
        } else if (cylinders % 2 != 0) {
            file.problem(
                    "cylinders",
                    "is " + cylinders + "; expected an even number, as a running test opens with half of it");
        }
    }

    /** A balance result is a count; its last zero, where it is written, sends no flash. */
    private Message balance(int cylinders) {
        int before = problems.count();
        List<PlacedText> found = codes.texts(Segment.BALANCE.key());
        String text = found.size() == 1 ? found.get(0).text() : "";
        if (!text.matches("[1-9]0?")) {
            if (problems.count() == before) {
                codes.problem(
                        Segment.BALANCE.key(),
                        "expected one result: the flashes 1 to 9, with or without the zero that is written after them");
            }
            return new Message.Balance(1);
        }
        int flashes = text.charAt(0) - '0';
        if (cylinders > 0 && flashes > cylinders && flashes != ALL_CONTRIBUTE) {
            tell(
                    found.get(0),
                    " names a cylinder too many; expected 1 to " + cylinders + ", or " + ALL_CONTRIBUTE
                            + " where every cylinder contributes");
        }
        return new Message.Balance(flashes);
    }

    private List<String> list(Segment segment) {
        List<PlacedText> found = codes.optionalTexts(segment.key());
        List<String> list = new ArrayList<>();
        for (PlacedText code : found) {
            refusal(code.text(), list, found.size()).ifPresent(reason -> tell(code, reason));
            list.add(code.text());
        }
        return list;
    }

    private Optional<String> refusal(String code, List<String> before, int codesInList) {
        Optional<String> unsendable = format.flatMap(known -> known.refusal(code));
        if (unsendable.isPresent()) {
            return unsendable.map(reason -> ": " + reason);
        }
        if (codeList.isPresent() && codeList.get().meaning(code).isEmpty()) {
            return Optional.of(" is not in the code list " + codeList.get().id());
        }
        if (before.contains(code)) {
            return Optional.of(" stands twice; a list has each code once");
        }
        boolean pass =
                format.flatMap(FlashFormat::passCode).filter(code::equals).isPresent();
        return pass && codesInList > 1
                ? Optional.of(" says that there is nothing to report; it cannot stand beside other codes")
                : Optional.empty();
    }

    private void checkSegments(FlashFormat known) {
        for (Segment segment : Segment.values()) {
            if (codes.has(segment.key()) && !known.segments().contains(segment)) {
                List<String> expected =
                        known.segments().stream().map(Segment::key).toList();
                codes.problem(
                        segment.key(),
                        "is no segment of the format " + known.id() + "; expected " + String.join(", ", expected));
            }
        }
    }

    private void tell(PlacedText code, String what) {
        problems.add(code.place(), code.pointer(), Problem.quoted(code.text()) + what);
    }
}
