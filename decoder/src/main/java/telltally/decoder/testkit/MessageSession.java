package telltally.decoder.testkit;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Transmission;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.PulseTrain;

/**
 * A message in a format, as a lamp shows it through some noise.
 *
 * @param sender the format that is sent in
 * @param seed what the noise is drawn from; of no consequence where there is none
 */
public record MessageSession(FlashFormat sender, Message message, Noise noise, long seed) implements Session {
    private static final String STREAM = "testkit";

    /**
     * Sessions without end, the same ones for the same seed.
     *
     * @param formats each is sent in as often as any other
     * @param mostCodes in each list
     * @param strongest how strong the noise may be
     */
    public static Stream<MessageSession> drawn(List<FlashFormat> formats, int mostCodes, Noise strongest, long seed) {
        return Stream.iterate(seed, next -> next + 1).map(next -> one(formats, mostCodes, strongest, next));
    }

    /** The session that belongs to one seed. */
    public static MessageSession one(List<FlashFormat> formats, int mostCodes, Noise strongest, long seed) {
        Chance chance = Chance.of(seed).stream(STREAM);
        FlashFormat format = formats.get(chance.stream("format").below(formats.size()));
        Message message = new Messages(format).drawn(mostCodes, chance.stream("message"));
        return new MessageSession(format, message, strongest.drawn(chance.stream("noise")), seed);
    }

    @Override
    public PulseTrain train() {
        return noise.chain().applyTo(transmission().lamp(), Chance.of(seed).stream(STREAM).stream("channel"));
    }

    @Override
    public Optional<FlashFormat> format() {
        return Optional.of(sender);
    }

    @Override
    public Truth truth() {
        Transmission sent = transmission();
        return new Truth(sender.id(), sent.codes(), sent.groups());
    }

    private Transmission transmission() {
        return new Encoder(sender).encode(message, Pacing.usual());
    }

    /**
     * Simpler sessions in the same format, in the order in which they are to be tried: fewer codes, smaller digits, less
     * noise. Each is simpler by {@link #size}.
     */
    public Stream<MessageSession> simpler() {
        Stream<MessageSession> messages =
                new Messages(sender).simpler(message).map(each -> new MessageSession(sender, each, noise, seed));
        Stream<MessageSession> quieter =
                noise.simpler().map(each -> new MessageSession(sender, message, each, noiseSeed(each)));
        return Stream.concat(messages, quieter);
    }

    private long noiseSeed(Noise left) {
        return left.equals(Noise.NONE) ? 0 : seed;
    }

    /** How far from simple: codes, flashes, kinds of noise, their strengths; the first difference counts. */
    public long[] size() {
        Messages messages = new Messages(sender);
        return new long[] {messages.codes(message), messages.flashes(message), noise.kinds(), noise.sum()};
    }

    /**
     * The simplest session that can be reached from this one through sessions that all fail.
     *
     * @param fails tells whether a session fails; this one does
     */
    public MessageSession simplest(Predicate<MessageSession> fails) {
        MessageSession simplest = this;
        Optional<MessageSession> next = Optional.of(this);
        while (next.isPresent()) {
            simplest = next.get();
            next = simplest.simpler().filter(fails).findFirst();
        }
        return simplest;
    }

    @Override
    public String toString() {
        return sender.id() + ": " + Messages.text(message) + "; " + noise
                + (noise.equals(Noise.NONE) ? "" : "; seed " + seed);
    }
}
