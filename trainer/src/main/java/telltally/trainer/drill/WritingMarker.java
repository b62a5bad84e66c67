package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.recording.Truth;
import telltally.trainer.drill.Answer.Entry;
import telltally.trainer.drill.Answer.Written;
import telltally.trainer.drill.Question.When;
import telltally.trainer.drill.Question.Write;
import telltally.trainer.lesson.Marking;
import telltally.trainer.lesson.Marking.Row;
import telltally.trainer.lesson.Slip;

/** Marks codes that were written down, and says which skill each error concerns. */
record WritingMarker(Drill drill, Write question) {
    private static final long NANOS_A_MILLISECOND = 1_000_000L;

    Marked mark(Written written) {
        Marking marking = marking(written);
        List<Mistake> mistakes = new ArrayList<>();
        marking.slips().forEach(slip -> mistakes.add(new Mistake.InWriting(slip)));
        if (question.when() == When.AT_ONCE) {
            late(written, marking).forEach(code -> mistakes.add(new Mistake.WrittenLate(code)));
        }
        return new Marked(mistakes.isEmpty(), mistakes, credits(written, marking, mistakes), Optional.of(marking));
    }

    /** Somebody who comes in midway may begin the list where it was joined or where it begins. */
    private Marking marking(Written written) {
        Marking first = Marking.of(drill.format(), drill.truth(), written.sheet());
        if (drill.skill() != Skill.FROM_THE_MIDDLE) {
            return first;
        }
        Marking best = first;
        List<String> codes = new ArrayList<>(drill.sent(Segment.CODES));
        for (int turn = 1; turn < codes.size(); turn++) {
            Collections.rotate(codes, 1);
            Truth turned = new Truth(
                    drill.truth().formatId(),
                    Map.of(Segment.CODES, List.copyOf(codes)),
                    drill.truth().groups());
            Marking marking = Marking.of(drill.format(), turned, written.sheet());
            best = marking.slips().size() < best.slips().size() ? marking : best;
        }
        return best;
    }

    /** Codes that were not yet written when the next one had ended. */
    private List<String> late(Written written, Marking marking) {
        List<SentGroup> codes = drill.truth().groups().stream()
                .filter(group -> group.kind() == GroupKind.CODE)
                .toList();
        List<String> late = new ArrayList<>();
        for (Row row : marking.rows()) {
            if (row.sent().isPresent() && row.written().isPresent()) {
                int place = firstPlace(codes, row.segment(), row.sent().get());
                boolean last = place + 1 >= codes.size();
                long byMillis = last ? Long.MAX_VALUE : codes.get(place + 1).endNanos() / NANOS_A_MILLISECOND;
                if (writtenAtMillis(written, row.segment(), row.written().get()) > byMillis) {
                    late.add(row.sent().get());
                }
            }
        }
        return late;
    }

    private static int firstPlace(List<SentGroup> codes, Segment segment, String code) {
        int place = 0;
        while (place < codes.size()
                && !(codes.get(place).segment() == segment
                        && codes.get(place).digits().equals(code))) {
            place++;
        }
        return place;
    }

    private static long writtenAtMillis(Written written, Segment segment, String code) {
        return written.entries().stream()
                .filter(entry -> entry.segment() == segment && entry.code().equals(code))
                .mapToLong(Entry::atMillis)
                .findFirst()
                .orElse(0);
    }

    private List<Credit> credits(Written written, Marking marking, List<Mistake> mistakes) {
        List<Credit> digits = digits(marking);
        boolean nothing = written.entries().isEmpty();
        if (drill.skill() == Skill.COUNT_A_DIGIT) {
            return digits.isEmpty() ? List.of(drill.own(false)) : digits;
        }
        List<Credit> credits = new ArrayList<>();
        credits.add(drill.own(!nothing && mistakes.stream().noneMatch(this::concernsTheSkill)));
        credits.addAll(digits);
        return credits;
    }

    /** Counting errors are left to the skill of counting where a drill is about something else. */
    private boolean concernsTheSkill(Mistake mistake) {
        if (!(mistake instanceof Mistake.InWriting writing)) {
            return true;
        }
        Slip slip = writing.slip();
        boolean counting = slip instanceof Slip.MiscountedDigit || slip instanceof Slip.MisreadSign;
        boolean insideCode = counting || slip instanceof Slip.SwappedDigits || slip instanceof Slip.MissingDigit;
        return switch (drill.skill()) {
            case END_OF_A_DIGIT, END_OF_A_CODE -> !counting && !(slip instanceof Slip.SwappedDigits);
            case WRITE_AT_ONCE, END_OF_THE_LIST, SEGMENTS_APART, SEPARATOR, CYLINDER_FLASHES, PASS_CODE -> !insideCode;
            case BULB_CHECK, BALANCE_RESULT -> !counting;
            default -> true;
        };
    }

    /** Each digit of each code that was written with all its digits, right or not. */
    private List<Credit> digits(Marking marking) {
        List<Credit> credits = new ArrayList<>();
        for (Row row : marking.rows()) {
            DigitPair.of(drill.format(), row)
                    .forEach(pair ->
                            credits.add(new Credit(Skill.COUNT_A_DIGIT, drill.level(), pair.sent(), pair.right())));
        }
        return drill.format().shape() instanceof CodeShape.Counted ? credits : List.of();
    }
}
