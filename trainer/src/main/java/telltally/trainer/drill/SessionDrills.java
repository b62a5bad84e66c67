package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;
import telltally.simulator.vehicle.BalanceVerdict;
import telltally.trainer.drill.Question.Option;
import telltally.trainer.drill.Question.When;

/** Drills on what stands around the codes of a test with segments. */
record SessionDrills(FormatCatalog formats) {
    private static final int THREE_DIGITS_FROM_LEVEL = 6;
    private static final int REPEATED_FROM_LEVEL = 9;
    private static final int MOST_POSITIONS = 3;
    private static final int ALL_CONTRIBUTE_FLASHES = BalanceVerdict.ALL_CONTRIBUTE_FLASHES;

    /** As the simulated controller lights its lamp; to begin with it is longer than any flash could be. */
    private static final double BULB_CHECK_S = 2;

    private static final double LONGEST_BULB_CHECK_S = 3.5;

    /** Where the single flash stood that was no code, or that there was none. */
    Drill separator(Order order) {
        FlashFormat format = sessions(order);
        boolean there = order.chance("there").happens(0.75);
        int most = order.ease().count(1, 2);
        int present = CodeDraw.digit(order.chance("present"), 1, most);
        int stored = CodeDraw.digit(order.chance("stored"), 1, most);
        List<String> codes = draw(order, format, present + stored);
        Encoder encoder = new Encoder(format);
        Tape tape = Tape.of(
                there
                        ? encoder.encode(
                                new Message.KeyOn(codes.subList(0, present), codes.subList(present, codes.size())),
                                order.pacing(around(format), 1))
                        : encoder.encodeList(Segment.PRESENT, codes, order.pacing(around(format), 1)));
        int times = format.repeats().listTimes();
        List<Option> options = places(order, times * codes.size(), there ? times * present : 0);
        return order.drill(format, tape, new Question.Choose(order.task(), options));
    }

    /** @param right after how many groups it stood; 0 where there was none */
    private static List<Option> places(Order order, int groups, int right) {
        TreeSet<Integer> places = new TreeSet<>();
        if (right > 0) {
            places.add(right);
        }
        Chance chance = order.chance("places");
        while (places.size() < Math.min(MOST_POSITIONS, groups - 1)) {
            places.add(1 + chance.below(groups - 1));
        }
        List<Option> options = new ArrayList<>();
        for (int place : places) {
            options.add(
                    new Option(Said.of("drill.option-separator-after", place), List.of(order.credit(place == right))));
        }
        options.add(new Option(Said.of("drill.option-no-separator"), List.of(order.credit(right == 0))));
        return options;
    }

    Drill segmentsApart(Order order) {
        FlashFormat format = sessions(order);
        int most = order.ease().count(1, 3);
        int present = CodeDraw.digit(order.chance("present"), 1, most);
        int stored = CodeDraw.digit(order.chance("stored"), 1, most);
        List<String> codes = draw(order, format, present + stored);
        Message message = new Message.KeyOn(codes.subList(0, present), codes.subList(present, codes.size()));
        Question question = new Question.Write(order.task(), List.of(Segment.PRESENT, Segment.STORED), When.ANY_TIME);
        return order.drill(format, tape(order, format, message), question);
    }

    /** Which of the two lists has a fault in it; codes that look like the pass code are the hard ones. */
    Drill passCode(Order order) {
        FlashFormat format = sessions(order);
        Chance chance = order.chance("lists");
        boolean present = chance.happens(0.5);
        boolean stored = chance.happens(0.5);
        Message message = new Message.KeyOn(
                present ? List.of(alike(order, format, "present")) : List.of(),
                stored ? List.of(alike(order, format, "stored")) : List.of());
        List<Option> options = List.of(
                new Option(Said.of("drill.option-no-fault"), List.of(order.credit(!present && !stored))),
                new Option(Said.of("drill.option-fault-present"), List.of(order.credit(present && !stored))),
                new Option(Said.of("drill.option-fault-stored"), List.of(order.credit(!present && stored))),
                new Option(Said.of("drill.option-fault-both"), List.of(order.credit(present && stored))));
        return order.drill(format, tape(order, format, message), new Question.Choose(order.task(), options));
    }

    /** The higher the level, the more often a code differs from the pass code in one digit only. */
    private static String alike(Order order, FlashFormat format, String segment) {
        String pass = format.passCode().orElseThrow();
        Chance chance = order.chance("alike/" + segment);
        if (!chance.happens(order.level().share())) {
            return new CodeDraw(format, places(format), order.ease().mostFlashes()).code(chance);
        }
        int place = chance.below(pass.length());
        return pass.substring(0, place) + (2 + chance.below(2)) + pass.substring(place + 1);
    }

    /** A steady light before the codes, which is none of them, or no such light. */
    Drill bulbCheck(Order order) {
        FlashFormat format = new FormatVariant(
                        formats.find(order.oneOf("format", List.of("pair-even", "long-short", "pair-loop")))
                                .orElseThrow())
                .listAlone()
                .sent(1, order.level().full() ? 2 : 1)
                .eased(order.ease().clock(), order.ease().gapStretch())
                .format();
        List<String> codes = new CodeDraw(format, 2, order.ease().mostFlashes())
                .codes(order.chance("codes"), order.ease().count(1, 2));
        Tape tape = new Tape();
        if (order.chance("there").happens(0.7)) {
            long litNanos = Math.round(order.ease().between(LONGEST_BULB_CHECK_S, BULB_CHECK_S) * 1e9);
            tape.dark(order.pacing(0, 1).leadNanos()).steadyLight(Segment.CODES, litNanos);
        }
        tape.append(order.list(format, codes, 1));
        Question question = new Question.Write(order.task(), List.of(Segment.CODES), When.ANY_TIME);
        return order.drill(format, tape, question);
    }

    Drill balanceResult(Order order) {
        FlashFormat format = new FormatVariant(formats.find("pair-even").orElseThrow())
                .eased(order.ease().clock(), 1)
                .format();
        boolean all = order.chance("all").happens(0.2);
        int most = Math.min(order.ease().mostFlashes(), ALL_CONTRIBUTE_FLASHES - 1);
        int flashes = all ? ALL_CONTRIBUTE_FLASHES : CodeDraw.digit(order.chance("cylinder"), 1, most);
        Tape tape = Tape.of(new Encoder(format)
                .encode(new Message.Balance(flashes), order.pacing(format.gaps().betweenDigitsNanos(), 1)));
        return order.drill(format, tape, new Question.Choose(order.task(), results(order, flashes)));
    }

    private static List<Option> results(Order order, int flashes) {
        boolean all = flashes == ALL_CONTRIBUTE_FLASHES;
        List<Option> options = new ArrayList<>();
        int last = Math.min(ALL_CONTRIBUTE_FLASHES, Math.max(3, flashes + 1));
        for (int cylinder = last - 2; cylinder <= last; cylinder++) {
            boolean right = cylinder == flashes && !all;
            // Another cylinder's number was counted wrong but understood; nine is no cylinder of these engines.
            List<Credit> says = right || all
                    ? List.of(order.credit(right))
                    : List.of(order.credit(true), order.digit(flashes, false));
            options.add(new Option(Said.of("drill.option-weak-cylinder", cylinder), says));
        }
        options.add(new Option(Said.of("drill.option-all-contribute"), List.of(order.credit(all))));
        options.add(new Option(Said.of("drill.option-trouble-code", flashes), List.of(order.credit(false))));
        return options;
    }

    private Tape tape(Order order, FlashFormat format, Message message) {
        return Tape.of(new Encoder(format).encode(message, order.pacing(around(format), 1)));
    }

    private static long around(FlashFormat format) {
        return format.sessions().map(Sessions::aroundSeparatorNanos).orElseThrow();
    }

    /** Two digits, later on three as well; the lists are sent once until the learner is good at it. */
    private FlashFormat sessions(Order order) {
        boolean three = order.level().value() >= THREE_DIGITS_FROM_LEVEL
                && order.chance("format").happens(0.3);
        return new FormatVariant(
                        formats.find(three ? "triple-even" : "pair-even").orElseThrow())
                .sent(1, order.level().value() >= REPEATED_FROM_LEVEL ? 2 : 1)
                .eased(order.ease().clock(), order.ease().gapStretch())
                .format();
    }

    private static List<String> draw(Order order, FlashFormat format, int count) {
        return new CodeDraw(format, places(format), order.ease().mostFlashes()).codes(order.chance("codes"), count);
    }

    private static int places(FlashFormat format) {
        return ((Counted) format.shape()).places().size();
    }
}
