package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.trainer.drill.Answer.Chosen;
import telltally.trainer.drill.Answer.Counted;
import telltally.trainer.drill.Answer.Entry;
import telltally.trainer.drill.Answer.Written;
import telltally.trainer.drill.Question.Choose;
import telltally.trainer.drill.Question.HowMany;
import telltally.trainer.drill.Question.Option;
import telltally.trainer.drill.Question.Write;

/** Marks answers to one drill. */
record DrillMarker(Drill drill) {
    private static final long NANOS_A_MILLISECOND = 1_000_000L;

    Marked mark(Answer answer) {
        Question question = drill.question();
        if (question instanceof Write write && answer instanceof Written written) {
            return new WritingMarker(drill, write).mark(written);
        }
        if (question instanceof Choose choose
                && answer instanceof Chosen chosen
                && chosen.option() >= 0
                && chosen.option() < choose.options().size()) {
            return chosen(choose, choose.options().get(chosen.option()));
        }
        if (question instanceof HowMany number && answer instanceof Counted counted) {
            return counted(number, counted.number());
        }
        return new Marked(false, List.of(new Mistake.NoAnswer()), List.of(drill.own(false)), Optional.empty());
    }

    private static Marked chosen(Choose choose, Option option) {
        List<Mistake> mistakes = option.right()
                ? List.of()
                : List.of(new Mistake.WrongChoice(
                        option.text(), choose.options().get(choose.right()).text()));
        return new Marked(option.right(), mistakes, option.says(), Optional.empty());
    }

    private Marked counted(HowMany number, int given) {
        boolean right = given == number.right();
        List<Mistake> mistakes = right ? List.of() : List.of(new Mistake.WrongNumber(given, number.right()));
        return new Marked(right, mistakes, List.of(drill.own(right)), Optional.empty());
    }

    Answer perfectAnswer() {
        if (drill.question() instanceof Choose choose) {
            return new Chosen(choose.right());
        }
        if (drill.question() instanceof HowMany number) {
            return new Counted(number.right());
        }
        List<Entry> entries = new ArrayList<>();
        for (Segment segment : ((Write) drill.question()).segments()) {
            for (String code : drill.sent(segment)) {
                long at = firstSent(segment, code).map(SentGroup::endNanos).orElse(drill.lampNanos());
                entries.add(new Entry(segment, code, at / NANOS_A_MILLISECOND));
            }
        }
        return new Written(entries);
    }

    private Optional<SentGroup> firstSent(Segment segment, String code) {
        return drill.truth().groups().stream()
                .filter(group -> group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE)
                .filter(group -> group.segment() == segment && group.digits().equals(code))
                .findFirst();
    }
}
