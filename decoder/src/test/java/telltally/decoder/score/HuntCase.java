package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.Impairment;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Segment;
import telltally.simulator.format.Transmission;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.PulseTrain;

/**
 * A message and what spoils it, in a form that can be made simpler: fewer codes, smaller digits, less noise.
 *
 * @param onWire whether the self-test output was recorded rather than the lamp
 * @param noiseSeed what the noise is drawn from
 */
record HuntCase(
        FlashFormat format, Message message, int loops, boolean onWire, List<HuntNoise> noises, long noiseSeed) {
    private static final int MOST_LOOPS = 3;

    HuntCase {
        noises = List.copyOf(noises);
    }

    static HuntCase drawnFrom(Chance chance, List<FlashFormat> formats) {
        FlashFormat format = LegalCodes.oneOf(formats, chance);
        List<HuntNoise> noises = new ArrayList<>();
        for (HuntNoise.Kind kind : HuntNoise.Kind.values()) {
            if (chance.happens(0.35)) {
                noises.add(kind.between(chance.nextUnit()));
            }
        }
        return new HuntCase(
                format,
                message(format, chance),
                2 + chance.below(MOST_LOOPS - 1),
                chance.happens(0.3),
                noises,
                chance.nextLong());
    }

    private static Message message(FlashFormat format, Chance chance) {
        if (format.sessions().isEmpty()) {
            return new Message.Codes(list(format, chance));
        }
        int most = format.sessions().get().mostBalanceFlashes();
        return switch (chance.below(3)) {
            case 0 -> new Message.KeyOn(list(format, chance), list(format, chance));
            case 1 -> new Message.Running(4 + 2 * chance.below(5), chance.happens(0.5), list(format, chance));
            default -> new Message.Balance(1 + chance.below(most));
        };
    }

    private static List<String> list(FlashFormat format, Chance chance) {
        return new LegalCodes(format)
                .list(Math.min(chance.below(6), format.repeats().mostCodes()), chance);
    }

    private Transmission sent() {
        return new Encoder(format).encode(message, Pacing.usual().withLoops(loops));
    }

    Truth truth() {
        Transmission sent = sent();
        return new Truth(format.id(), sent.codes(), sent.groups());
    }

    PulseTrain train() {
        Transmission sent = sent();
        List<Impairment> chain = noises.stream().map(HuntNoise::impairment).toList();
        return new ImpairmentChain(chain).applyTo(onWire ? sent.wire() : sent.lamp(), Chance.of(noiseSeed));
    }

    HuntCase withNoiseSeed(long seed) {
        return new HuntCase(format, message, loops, onWire, noises, seed);
    }

    private HuntCase withMessage(Message simpler) {
        return new HuntCase(format, simpler, loops, onWire, noises, noiseSeed);
    }

    private HuntCase withNoises(List<HuntNoise> simpler) {
        return new HuntCase(format, message, loops, onWire, simpler, noiseSeed);
    }

    /** Everything that is one step simpler and can be sent, the largest steps first. */
    Stream<HuntCase> simpler() {
        Stream<HuntCase> noiseless = IntStream.range(0, noises.size()).mapToObj(i -> withNoises(without(noises, i)));
        Stream<HuntCase> quieter = IntStream.range(0, noises.size())
                .boxed()
                .flatMap(i -> noises.get(i).weaker().map(weaker -> withNoises(with(noises, i, weaker))).stream());
        Stream<HuntCase> shorter = loops > 2
                ? Stream.of(new HuntCase(format, message, loops - 1, onWire, noises, noiseSeed))
                : Stream.of();
        Stream<HuntCase> onLamp =
                onWire ? Stream.of(new HuntCase(format, message, loops, false, noises, noiseSeed)) : Stream.of();
        Stream<HuntCase> messages =
                simplerMessages().filter(each -> each.refusal(format).isEmpty()).map(this::withMessage);
        return Stream.of(noiseless, onLamp, shorter, messages, quieter).flatMap(each -> each);
    }

    private Stream<Message> simplerMessages() {
        if (message instanceof Message.KeyOn keyOn) {
            return Stream.concat(
                    lists(keyOn.present()).map(list -> new Message.KeyOn(list, keyOn.stored())),
                    lists(keyOn.stored()).map(list -> new Message.KeyOn(keyOn.present(), list)));
        }
        if (message instanceof Message.Running running) {
            Stream<Message> fewer = Stream.of(
                    new Message.Running(4, running.prompt(), running.codes()),
                    new Message.Running(running.cylinders(), false, running.codes()));
            return Stream.concat(
                    fewer.filter(each -> !each.equals(message)),
                    lists(running.codes())
                            .map(list -> new Message.Running(running.cylinders(), running.prompt(), list)));
        }
        if (message instanceof Message.Balance balance) {
            return Stream.of(new Message.Balance(balance.flashes() - 1));
        }
        return lists(((Message.Codes) message).codes()).map(Message.Codes::new);
    }

    /** One code fewer, or one digit smaller. */
    private static Stream<List<String>> lists(List<String> codes) {
        Stream<List<String>> fewer = IntStream.range(0, codes.size()).mapToObj(i -> without(codes, i));
        Stream<List<String>> smaller = IntStream.range(0, codes.size())
                .boxed()
                .flatMap(i -> smaller(codes.get(i)).map(code -> with(codes, i, code)));
        return Stream.concat(fewer, smaller);
    }

    private static Stream<String> smaller(String code) {
        return IntStream.range(0, code.length())
                .filter(i -> code.charAt(i) > '1' && code.charAt(i) <= '9')
                .mapToObj(i -> code.substring(0, i) + (char) (code.charAt(i) - 1) + code.substring(i + 1));
    }

    private static <T> List<T> without(List<T> list, int index) {
        List<T> left = new ArrayList<>(list);
        left.remove(index);
        return left;
    }

    private static <T> List<T> with(List<T> list, int index, T other) {
        List<T> changed = new ArrayList<>(list);
        changed.set(index, other);
        return changed;
    }

    /** Such as {@code present 34 42, stored 11}. */
    static String words(Map<Segment, List<String>> codes) {
        return codes.isEmpty()
                ? "nothing"
                : codes.entrySet().stream()
                        .map(each -> each.getKey().key() + " "
                                + (each.getValue().isEmpty() ? "none" : String.join(" ", each.getValue())))
                        .collect(Collectors.joining(", "));
    }

    @Override
    public String toString() {
        String through = noises.isEmpty()
                ? "clean"
                : String.join(", ", noises.stream().map(HuntNoise::toString).toList());
        return format.id() + " " + words(truth().codes()) + (format.repeats().loops() ? ", " + loops + " loops" : "")
                + (onWire ? " on the wire" : "") + "; " + through;
    }
}
