package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.trainer.drill.Question.Option;

/**
 * Groups of flashes with pauses between them: all but one are those between codes, one is that around a separator.
 * Nothing but its length tells which.
 */
record PauseDrills(FormatCatalog formats) {
    /** On the vehicle the pause around the separator is half as long again; to begin with it is far longer. */
    private static final double PLAINEST_RATIO = 2.5;

    private static final int MOST_FLASHES = 3;
    private static final long TAIL_NANOS = 100_000_000L;
    private static final int THREE_PAUSES_FROM_LEVEL = 6;

    Drill separatorPause(Order order) {
        FlashFormat shipped = formats.find("pair-even").orElseThrow();
        long separatorNanos = shipped.sessions().orElseThrow().aroundSeparatorNanos();
        double nominal = (double) separatorNanos / shipped.gaps().betweenCodesNanos();
        long codesNanos = Math.round(separatorNanos / order.ease().between(PLAINEST_RATIO, nominal));
        int pauses = order.level().value() < THREE_PAUSES_FROM_LEVEL ? 2 : 3;
        int longer = order.chance("longer").below(pauses);
        FlashFormat format = new FormatVariant(shipped)
                .listAlone()
                .places(1, MOST_FLASHES)
                .sent(1, 1)
                .format();
        Tape tape = new Tape();
        long waitNanos = order.pacing(0, 1).leadNanos();
        for (int group = 0; group <= pauses; group++) {
            String code = new CodeDraw(format, 1, MOST_FLASHES).code(order.chance("group" + group));
            Pacing pacing = new Pacing(waitNanos, TAIL_NANOS, 1);
            tape.send(new Encoder(format).encode(new Message.Codes(List.of(code)), pacing));
            waitNanos = (group == longer ? separatorNanos : codesNanos) - TAIL_NANOS;
        }
        tape.dark(order.pacing(0, 1).tailNanos());
        return order.drill(format, tape, new Question.Choose(order.task(), options(order, pauses, longer)));
    }

    private static List<Option> options(Order order, int pauses, int longer) {
        List<Option> options = new ArrayList<>();
        for (int pause = 0; pause < pauses; pause++) {
            Said text = Said.of("drill.option-pause", pause + 1);
            options.add(new Option(text, List.of(order.credit(pause == longer))));
        }
        return options;
    }
}
