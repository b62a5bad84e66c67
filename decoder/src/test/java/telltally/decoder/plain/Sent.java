package telltally.decoder.plain;

import java.util.List;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Transmission;

/** A message in a format, as the encoder sends it. */
record Sent(FlashFormat format, Message message, Pacing pacing) {
    Transmission transmission() {
        return new Encoder(format).encode(message, pacing);
    }

    /**
     * Whether another of the shipped formats sends nearly the same at another clock, so that nobody can tell them apart
     * once the clock is unknown: a count sent once, few even blinks, a balance result of one flash; the frame alone,
     * and its code three times; one long flash before short ones, and a bulb check before a balance result.
     */
    boolean sentAlikeByAnotherFormat() {
        if (message instanceof Message.Balance balance) {
            return balance.flashes() == 1;
        }
        if (!(message instanceof Message.Codes list)) {
            return false;
        }
        boolean once = pacing.loops() == 1;
        return switch (format.id()) {
            case "count-loop" -> once;
            case "pair-loop" -> (list.codes().isEmpty() && once) || list.codes().equals(List.of("12"));
            case "long-short" ->
                once && list.codes().size() == 1 && list.codes().get(0).startsWith("1");
            case "pair-thrice" -> list.codes().isEmpty();
            default -> false;
        };
    }

    @Override
    public String toString() {
        return format.id() + " " + message + " " + pacing;
    }
}
