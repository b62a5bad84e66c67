package telltally.decoder.score;

import java.util.List;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Transmission;

/**
 * Random messages. Each seed draws a format, a session where the format has any, and its lists; each of them from a
 * stream of its own.
 *
 * @param formats one or more
 * @param sessions one or more; unused by formats without segments
 * @param codes how many in each list; a format that sends fewer at a time sends as many as it can
 * @param cylinders even numbers; unused where no engine runs
 * @param loops how often a list is sent that loops until the key is off
 */
public record MessageRecipe(
        List<FlashFormat> formats,
        List<SessionKind> sessions,
        WholeRange codes,
        WholeRange cylinders,
        WholeRange loops) {
    /** Stands in where a file has none that could be read; nothing can be drawn from it. */
    static final MessageRecipe NONE =
            new MessageRecipe(List.of(), List.of(), new WholeRange(0, 0), new WholeRange(2, 2), new WholeRange(1, 1));

    private static final long MILLISECOND = 1_000_000L;

    public MessageRecipe {
        formats = List.copyOf(formats);
        sessions = List.copyOf(sessions);
    }

    /** @param format the one it was drawn in */
    record Drawn(FlashFormat format, Transmission sent) {}

    Drawn drawnFrom(Chance chance) {
        FlashFormat format = LegalCodes.oneOf(formats, chance.stream("format"));
        Message message = format.sessions().isPresent()
                ? session(format, format.sessions().get(), chance)
                : new Message.Codes(list(format, chance.stream("codes")));
        // As on a vehicle, nobody knows when the first flash comes.
        long leadNanos = (2_000 + chance.stream("lead").below(3_000)) * MILLISECOND;
        Pacing pacing = new Pacing(leadNanos, Pacing.usual().tailNanos(), loops.drawnFrom(chance.stream("loops")));
        return new Drawn(format, new Encoder(format).encode(message, pacing));
    }

    private Message session(FlashFormat format, Sessions rules, Chance chance) {
        return switch (LegalCodes.oneOf(sessions, chance.stream("session"))) {
            case KEY_ON ->
                new Message.KeyOn(list(format, chance.stream("present")), list(format, chance.stream("stored")));
            case RUNNING ->
                new Message.Running(
                        cylinders.from() + 2 * chance.stream("cylinders").below(halves()),
                        chance.stream("prompt").happens(0.5),
                        list(format, chance.stream("running")));
            case BALANCE -> new Message.Balance(1 + chance.stream("balance").below(rules.mostBalanceFlashes()));
        };
    }

    private int halves() {
        return (cylinders.to() - cylinders.from()) / 2 + 1;
    }

    private List<String> list(FlashFormat format, Chance chance) {
        int size = Math.min(
                codes.drawnFrom(chance.stream("size")), format.repeats().mostCodes());
        return new LegalCodes(format).list(size, chance.stream("which"));
    }
}
