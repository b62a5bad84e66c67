package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;
import telltally.trainer.drill.Question.Option;
import telltally.trainer.drill.Question.When;

/** The opening of the running test: half the number of cylinders, then a long dark, then the codes. */
record RunningDrills(FormatCatalog formats) {
    /** On a vehicle the dark lasts a minute or two; nothing is to be counted in it, so it is cut to half of one. */
    private static final double LONGEST_DARK_S = 30;

    private static final double SHORTEST_DARK_S = 7;
    private static final List<Integer> CYLINDERS = List.of(4, 6, 8);

    /** How many cylinders the controller takes the engine to have, or the codes without the opening. */
    Drill cylinderFlashes(Order order) {
        FlashFormat format = new FormatVariant(formats.find("pair-even").orElseThrow())
                .sent(1, order.level().full() ? 2 : 1)
                .eased(order.ease().clock(), order.ease().gapStretch())
                .runningTest(Math.round(order.ease().between(SHORTEST_DARK_S, LONGEST_DARK_S) * 1e9))
                .format();
        int cylinders = order.oneOf("cylinders", CYLINDERS);
        List<String> codes = new CodeDraw(format, 2, order.ease().mostFlashes())
                .codes(order.chance("codes"), order.ease().count(1, 2));
        Tape tape = Tape.of(new Encoder(format)
                .encode(
                        new Message.Running(cylinders, false, codes),
                        order.pacing(format.gaps().betweenCodesNanos(), 1)));
        Question question = order.chance("kind").happens(0.5)
                ? new Question.Write(Said.of("drill.task-running-codes"), List.of(Segment.RUNNING), When.ANY_TIME)
                : new Question.Choose(order.task(), options(order, cylinders));
        return order.drill(format, tape, question);
    }

    private static List<Option> options(Order order, int cylinders) {
        int flashes = cylinders / 2;
        TreeSet<Integer> numbers = new TreeSet<>(CYLINDERS);
        numbers.add(flashes);
        List<Option> options = new ArrayList<>();
        for (int number : numbers) {
            options.add(new Option(Said.of("drill.option-cylinders", number), says(order, number, flashes)));
        }
        options.add(new Option(Said.of("drill.option-trouble-code", flashes), List.of(order.credit(false))));
        return options;
    }

    /** Who gives the flashes themselves does not know the rule; any other number was doubled but counted wrong. */
    private static List<Credit> says(Order order, int number, int flashes) {
        if (number == 2 * flashes) {
            return List.of(order.credit(true), order.digit(flashes, true));
        }
        return number == flashes
                ? List.of(order.credit(false))
                : List.of(order.credit(true), order.digit(flashes, false));
    }
}
