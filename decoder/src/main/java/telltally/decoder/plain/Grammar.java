package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.plain.Role.Sort;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.Segment;

/**
 * Which role may follow which in a format, after what gap. Everything is possible, most of it at a cost: recordings
 * begin midway and stop early, and a decoder has to say something sensible then.
 */
final class Grammar {
    /** A running test takes at least a sixth of the usual time: 15 s of 90 s. With a prompt within, each part half of it. */
    private static final int LEAST_PART_OF_TEST = 6;

    /** Something that happens, but not often. */
    private static final double UNUSUAL = 2;

    /**
     * A way from one role to the next.
     *
     * @param toll what it costs beside the length of the gap
     */
    record Step(int from, GapRule gap, double toll) {}

    private final FlashFormat format;
    private final Lengths lengths;
    private final List<Role> roles = new ArrayList<>();
    private final List<List<Step>> stepsTo = new ArrayList<>();
    private final List<Double> endings = new ArrayList<>();
    private final Step[][] steps;

    Grammar(FlashFormat format, Lengths lengths) {
        this.format = format;
        this.lengths = lengths;
        int start = role(Sort.START, format.segments().get(0), 0, 0);
        int steady = role(Sort.STEADY, format.segments().get(0), 0, 0);
        step(start, steady, GapRule.any(), 0);
        step(steady, steady, GapRule.any(), 0);
        List<Integer> openers = List.of(start, steady);
        if (format.sessions().isPresent()) {
            sessions(openers, format.sessions().get());
        } else {
            enter(openers, list(Segment.CODES, 0), GapRule.any(), 0);
        }
        for (int i = steady + 1; i < roles.size(); i++) {
            step(i, steady, GapRule.any(), endings.get(i) > 0 ? Cost.UNREADABLE : UNUSUAL);
        }
        steps = stepsTo.stream().map(each -> each.toArray(Step[]::new)).toArray(Step[][]::new);
    }

    int size() {
        return roles.size();
    }

    Role role(int index) {
        return roles.get(index);
    }

    /** Every way to a role; not for writing. */
    Step[] stepsTo(int role) {
        return steps[role];
    }

    /** What it costs that the recording ends after this role. */
    double ending(int role) {
        return endings.get(role);
    }

    /** The roles of one list of codes: where it is entered, where it may be left. */
    private record CodeList(int entry, int afterLeadIn, int lost, List<Integer> exits) {}

    private void sessions(List<Integer> openers, Sessions each) {
        double around = Lengths.log(each.aroundSeparatorNanos());
        GapRule test = GapRule.atLeast(Lengths.log(each.runningTestNanos() / LEAST_PART_OF_TEST));
        GapRule partOfTest = GapRule.atLeast(Lengths.log(each.runningTestNanos() / LEAST_PART_OF_TEST / 2));
        CodeList present = list(Segment.PRESENT, 2 * Cost.RULE_BROKEN);
        CodeList stored = list(Segment.STORED, 0);
        CodeList running = list(Segment.RUNNING, 0);
        int separator = role(Sort.SEPARATOR, Segment.PRESENT, 0, Cost.RULE_BROKEN);
        int cylinders = role(Sort.CYLINDERS, Segment.RUNNING, 0, 2 * Cost.RULE_BROKEN);
        int prompt = role(Sort.PROMPT, Segment.RUNNING, 0, 2 * Cost.RULE_BROKEN);
        int balance = role(Sort.BALANCE, Segment.BALANCE, 0, 0);
        enter(openers, present, GapRule.any(), 0);
        steps(openers, cylinders, GapRule.any(), 0);
        steps(openers, balance, GapRule.any(), 0);
        steps(present.exits(), separator, GapRule.near(around).atMost(Cost.ACCIDENT), 0);
        // A long fast list on the wire needs more room than the usual gap.
        enter(List.of(separator), stored, GapRule.near(around).orAtLeast(around), 0);
        step(cylinders, prompt, partOfTest, 0);
        enter(List.of(cylinders), running, test, 0);
        enter(List.of(prompt), running, partOfTest, 0);
        for (List<Integer> ends : List.of(stored.exits(), running.exits(), List.of(balance))) {
            steps(ends, cylinders, test, UNUSUAL);
            steps(ends, balance, test, UNUSUAL);
            enter(ends, present, test, Cost.RULE_BROKEN);
        }
    }

    private CodeList list(Segment segment, double endingEarly) {
        GapRule nextCode = GapRule.near(lengths.betweenCodes(), lengths.beforeRepeat());
        int lost = role(Sort.LOST, segment, 0, endingEarly);
        List<Integer> signs = signs(segment, endingEarly);
        List<Integer> exits =
                new ArrayList<>(signs.subList(lengths.places() == 0 ? 0 : signs.size() - 1, signs.size()));
        exits.add(lost);
        int first = signs.get(0);
        int entry = first;
        if (format.leadIn().isPresent()) {
            entry = role(Sort.LEAD_IN, segment, 0, Cost.RULE_BROKEN);
            double after = Lengths.log(format.leadIn().get().darkAfterNanos());
            step(entry, first, GapRule.near(after).atMost(Cost.ACCIDENT), 0);
            step(entry, lost, GapRule.any(), 0);
        }
        for (int exit : exits) {
            step(exit, entry, nextCode.atMost(exit == lost ? Cost.CHANCE : Cost.ACCIDENT), 0);
            if (entry != first) {
                step(exit, first, nextCode.atMost(Cost.ACCIDENT), Cost.UNREADABLE);
            }
        }
        for (int sign : signs) {
            step(sign, lost, GapRule.any(), 0);
        }
        step(lost, lost, GapRule.any(), 0);
        return new CodeList(entry, first, lost, exits);
    }

    /** The digits of a code one after the other, or a first sign and any number of later ones. */
    private List<Integer> signs(Segment segment, double endingEarly) {
        GapRule nextSign = GapRule.near(lengths.betweenDigits());
        if (lengths.places() == 0) {
            int first = role(Sort.FIRST_SIGN, segment, 0, endingEarly);
            int later = role(Sort.LATER_SIGN, segment, 0, endingEarly);
            step(first, later, nextSign, 0);
            step(later, later, nextSign, 0);
            return List.of(first, later);
        }
        List<Integer> digits = new ArrayList<>();
        for (int place = 0; place < lengths.places(); place++) {
            boolean last = place == lengths.places() - 1;
            digits.add(role(Sort.DIGIT, segment, place, last ? endingEarly : Cost.UNREADABLE + endingEarly));
            if (place > 0) {
                step(digits.get(place - 1), digits.get(place), nextSign, 0);
            }
        }
        return digits;
    }

    private void enter(List<Integer> from, CodeList list, GapRule gap, double toll) {
        steps(from, list.entry(), gap, toll);
        steps(from, list.lost(), gap, toll);
        if (list.entry() != list.afterLeadIn()) {
            steps(from, list.afterLeadIn(), gap, toll + Cost.RULE_BROKEN);
        }
    }

    private void steps(List<Integer> from, int to, GapRule gap, double toll) {
        from.forEach(each -> step(each, to, gap, toll));
    }

    private void step(int from, int to, GapRule gap, double toll) {
        stepsTo.get(to).add(new Step(from, gap, toll));
    }

    private int role(Sort sort, Segment segment, int place, double ending) {
        roles.add(new Role(sort, segment, place));
        stepsTo.add(new ArrayList<>());
        endings.add(ending);
        return roles.size() - 1;
    }
}
