package telltally.trainer.drill;

import java.util.List;
import telltally.simulator.channel.MeterNeedle;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import telltally.simulator.scenario.Display;
import telltally.trainer.drill.Question.When;

/** Codes on something else than a bright lamp. */
record WatchedDrills(FormatCatalog formats) {
    /** A lamp on a battery that is nearly flat gives about a tenth of its light. */
    private static final double FAINTEST_VOLTS = 6.5;

    /** A needle that follows almost at once. */
    private static final double QUICKEST_HERTZ = 5;

    Drill dimLamp(Order order) {
        double volts = order.ease().between(Observer.CHARGED_VOLTS - 1.5, FAINTEST_VOLTS);
        return codes(order).shownBy(Display.LAMP, Observer.usual().withSupply(volts));
    }

    Drill needle(Order order) {
        MeterNeedle standard = MeterNeedle.standard();
        MeterNeedle needle = new MeterNeedle(
                order.ease().between(QUICKEST_HERTZ, standard.naturalHertz()), standard.damping(), standard.marks());
        return codes(order).shownBy(Display.METER, Observer.usual().withNeedle(needle));
    }

    Drill byEar(Order order) {
        return codes(order).shownBy(Display.SOUNDER, Observer.usual());
    }

    private Drill codes(Order order) {
        FlashFormat format = new FormatVariant(
                        formats.find(order.oneOf("format", List.of("pair-even", "pair-loop", "pair-thrice")))
                                .orElseThrow())
                .listAlone()
                .sent(1, order.level().full() ? 2 : 1)
                .eased(order.ease().clock(), order.ease().gapStretch())
                .format();
        List<String> codes = new CodeDraw(format, 2, order.ease().mostFlashes())
                .codes(order.chance("codes"), order.ease().count(1, 3));
        Question question = new Question.Write(order.task(), List.of(Segment.CODES), When.ANY_TIME);
        return order.drill(format, order.list(format, codes, 1), question);
    }
}
