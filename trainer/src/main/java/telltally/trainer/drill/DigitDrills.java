package telltally.trainer.drill;

import java.util.List;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import telltally.trainer.drill.Question.When;

/** Drills on one code: counting its digits and telling where one ends. */
record DigitDrills(FormatCatalog formats) {
    private static final double WIDEST_DIGIT_GAP = 2;
    private static final double LONGEST_LONG = 1.5;

    /** Three rates ship; the faster ones come in last. The fastest is a flash in 0.6 s. */
    private static final List<String> BY_RATE = List.of("pair-even", "pair-thrice", "count-loop");

    private static final int FASTER_FROM_LEVEL = 8;

    Drill countADigit(Order order) {
        int rates = Math.max(1, order.level().value() - FASTER_FROM_LEVEL + 1);
        FlashFormat shipped = format(BY_RATE.get(order.chance("rate").below(rates)));
        int most = order.ease().mostFlashes();
        int digit = order.item().isEmpty()
                ? CodeDraw.digit(order.chance("digit"), 1, most)
                : Integer.parseInt(order.item());
        FlashFormat format = new FormatVariant(shipped)
                .listAlone()
                .places(1, Math.max(most, digit))
                .sent(1, 1)
                .eased(order.ease().clock(), 1)
                .format();
        return written(order, format, List.of(Integer.toString(digit)), 1);
    }

    Drill holdTwoDigits(Order order) {
        FlashFormat format = pair(order)
                .eased(order.ease().clock(), order.ease().gapStretch())
                .format();
        return written(order, format, draw(order, format, 2, 1), 1);
    }

    /** Sometimes only how many digits there were is asked. */
    Drill endOfADigit(Order order) {
        int most = order.ease().count(2, 4);
        int places = CodeDraw.digit(order.chance("places"), 2, most);
        FlashFormat format = pair(order)
                .places(places, order.ease().mostFlashes())
                .timed(order.ease().clock(), order.ease().between(WIDEST_DIGIT_GAP, 1), 1)
                .format();
        List<String> codes = draw(order, format, places, 1);
        return order.chance("kind").happens(0.25)
                ? order.drill(
                        format,
                        order.list(format, codes, 1),
                        new Question.HowMany(Said.of("drill.task-how-many-digits"), places))
                : written(order, format, codes, 1);
    }

    Drill longAndShort(Order order) {
        FlashFormat format = new FormatVariant(format("long-short"))
                .firstPlaceLonger(order.ease().between(LONGEST_LONG, 1))
                .eased(order.ease().clock(), order.ease().gapStretch())
                .format();
        List<String> codes = draw(order, format, 2, order.ease().count(1, 3));
        return written(order, format, codes, order.level().full() ? 2 : 1);
    }

    private Drill written(Order order, FlashFormat format, List<String> codes, int loops) {
        Question question = new Question.Write(order.task(), List.of(Segment.CODES), When.ANY_TIME);
        return order.drill(format, order.list(format, codes, loops), question);
    }

    private static List<String> draw(Order order, FlashFormat format, int places, int count) {
        return new CodeDraw(format, places, order.ease().mostFlashes()).codes(order.chance("codes"), count);
    }

    /** A code of two digits sent once. */
    private FormatVariant pair(Order order) {
        return new FormatVariant(format(order.oneOf("format", List.of("pair-even", "pair-loop", "pair-thrice"))))
                .listAlone()
                .sent(1, 1);
    }

    private FlashFormat format(String id) {
        return formats.find(id).orElseThrow();
    }
}
