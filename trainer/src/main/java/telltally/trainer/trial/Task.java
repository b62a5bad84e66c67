package telltally.trainer.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.Interval;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Question;
import telltally.trainer.drill.Skill;

/**
 * What a real drill asks of whoever watches it.
 *
 * @param lampSeconds how long the lamp runs
 * @param flashes of each digit, every code once
 * @param digitPauses between the digits of a code, and {@code digitRatio} how many times longer they are than the next
 *     shorter kind of gap
 * @param codePauses between codes, likewise
 * @param flashSeconds of flashes and the gaps within digits, in one pass of the list
 * @param passes how often the list comes
 * @param heldSeconds for each code, how long it has to be kept in mind; empty where it can be written at once
 * @param written whether digits are written down
 */
record Task(
        Skill skill,
        Level level,
        double lampSeconds,
        List<Integer> flashes,
        int digitPauses,
        double digitRatio,
        int codePauses,
        double codeRatio,
        double flashSeconds,
        int passes,
        List<Double> heldSeconds,
        boolean written) {
    private static final double SECOND = 1e9;

    static Task of(Drill drill) {
        List<SentGroup> sent = drill.truth().groups().stream()
                .filter(group -> group.kind() != GroupKind.STEADY)
                .toList();
        List<SentGroup> codes = new ArrayList<>();
        for (SentGroup group : sent) {
            if (codes.stream().noneMatch(known -> same(known, group))) {
                codes.add(group);
            }
        }
        List<Integer> flashes = codes.stream()
                .flatMap(code -> code.signs().stream())
                .map(sign -> sign.flashes().size())
                .toList();
        FlashFormat.Gaps gaps = drill.format().gaps();
        boolean pauseTold = drill.skill() == Skill.SEPARATOR_PAUSE;
        boolean afterwards =
                drill.question() instanceof Question.Write write && write.when() == Question.When.AFTERWARDS;
        return new Task(
                drill.skill(),
                drill.level(),
                drill.lampNanos() / SECOND,
                flashes,
                flashes.size() - codes.size(),
                ratio(gaps.betweenDigitsNanos(), gaps.withinDigitNanos()),
                codes.size() - 1,
                pauseTold ? longestRatio(sent) : ratio(gaps.betweenCodesNanos(), gaps.betweenDigitsNanos()),
                codes.stream().mapToDouble(Task::counting).sum(),
                Math.max(1, sent.size() / codes.size()),
                afterwards ? held(drill, codes, sent) : List.of(),
                drill.question() instanceof Question.Write);
    }

    private static boolean same(SentGroup one, SentGroup other) {
        return one.kind() == other.kind()
                && one.segment() == other.segment()
                && one.digits().equals(other.digits());
    }

    /** A kind that a format lacks is taken for no other. */
    private static double ratio(long longer, long shorter) {
        return longer == 0 || shorter == 0 ? Double.MAX_VALUE : Math.max(1, (double) longer / shorter);
    }

    private static double longestRatio(List<SentGroup> groups) {
        List<Long> pauses = new ArrayList<>();
        for (int i = 1; i < groups.size(); i++) {
            pauses.add(groups.get(i).startNanos() - groups.get(i - 1).endNanos());
        }
        pauses.sort(null);
        return ratio(pauses.get(pauses.size() - 1), pauses.get(pauses.size() - 2));
    }

    private static double counting(SentGroup code) {
        double seconds = 0;
        for (SentGroup.SentSign sign : code.signs()) {
            List<Interval> all = sign.flashes();
            seconds += (all.get(all.size() - 1).endNanos() - all.get(0).startNanos()) / SECOND;
        }
        return seconds;
    }

    /** From the last time that a code was sent to the end of the last code. */
    private static List<Double> held(Drill drill, List<SentGroup> codes, List<SentGroup> sent) {
        long end = sent.stream().mapToLong(SentGroup::endNanos).max().orElse(drill.lampNanos());
        return codes.stream()
                .map(code -> (end
                                - sent.stream()
                                        .filter(group -> same(group, code))
                                        .mapToLong(SentGroup::endNanos)
                                        .max()
                                        .orElse(end))
                        / SECOND)
                .toList();
    }

    /** One line, to be looked at. */
    String line() {
        return String.format(
                Locale.ROOT,
                "%-18s %2d  %6.1f s  digits %s  held %s",
                skill,
                level.value(),
                lampSeconds,
                flashes,
                heldSeconds.stream().map(Math::round).toList());
    }
}
