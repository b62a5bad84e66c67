package telltally.decoder.testkit.jqwik;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Shrinkable;
import net.jqwik.api.ShrinkingDistance;
import telltally.decoder.testkit.InventedFormat;
import telltally.decoder.testkit.MessageSession;
import telltally.decoder.testkit.Messages;
import telltally.decoder.testkit.Noise;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;

/**
 * Arbitraries of what decoders are given. A counterexample shrinks in the order of {@link MessageSession#simpler}:
 * fewer codes, smaller digits, less noise. Formats that a property does not name are those that ship.
 */
public final class Sessions {
    private Sessions() {}

    /** The formats that ship. */
    public static Arbitrary<FlashFormat> formats() {
        return Arbitraries.of(FormatCatalog.shipped().all());
    }

    /** Formats that nobody uses, for decoders that claim to read any; they shrink to one digit of half a second. */
    public static Arbitrary<InventedFormat> inventedFormats() {
        return Arbitraries.fromGenerator(
                random -> new ShrinkingFormat(InventedFormat.drawn(Chance.of(random.nextLong()))));
    }

    /**
     * Whatever a format can send.
     *
     * @param mostCodes in each list
     */
    public static Arbitrary<Message> messages(FlashFormat format, int mostCodes) {
        Messages messages = new Messages(format);
        return Arbitraries.fromGenerator(
                random -> new ShrinkingMessage(messages, messages.drawn(mostCodes, Chance.of(random.nextLong()))));
    }

    /** Messages in formats, as a lamp shows them with nothing spoiled. */
    public static Arbitrary<MessageSession> clean(List<FlashFormat> formats, int mostCodes) {
        return spoiled(formats, mostCodes, Noise.NONE);
    }

    /**
     * Messages in formats, as a lamp shows them through some noise.
     *
     * @param strongest how strong the noise may be
     */
    public static Arbitrary<MessageSession> spoiled(List<FlashFormat> formats, int mostCodes, Noise strongest) {
        return Arbitraries.fromGenerator(
                random -> new ShrinkingSession(MessageSession.one(formats, mostCodes, strongest, random.nextLong())));
    }

    private record ShrinkingFormat(InventedFormat value) implements Shrinkable<InventedFormat> {
        @Override
        public Stream<Shrinkable<InventedFormat>> shrink() {
            return value.simpler().map(ShrinkingFormat::new);
        }

        @Override
        public ShrinkingDistance distance() {
            return ShrinkingDistance.of(value.size());
        }
    }

    private record ShrinkingMessage(Messages messages, Message value) implements Shrinkable<Message> {
        @Override
        public Stream<Shrinkable<Message>> shrink() {
            return messages.simpler(value).map(each -> new ShrinkingMessage(messages, each));
        }

        @Override
        public ShrinkingDistance distance() {
            return ShrinkingDistance.of(messages.codes(value), messages.flashes(value));
        }
    }

    private record ShrinkingSession(MessageSession value) implements Shrinkable<MessageSession> {
        @Override
        public Stream<Shrinkable<MessageSession>> shrink() {
            return value.simpler().map(ShrinkingSession::new);
        }

        @Override
        public ShrinkingDistance distance() {
            return ShrinkingDistance.of(value.size());
        }
    }
}
