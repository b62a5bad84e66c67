package telltally.decoder.score.broken;

import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/**
 * The plain decoder with one mistake, either in what it hears or in what it tells.
 *
 * @param id what the mistake is
 */
record BrokenDecoder(String id, UnaryOperator<PulseTrain> hearing, Function<Told, Reading> telling) implements Decoder {
    /** What the plain decoder would have said, and of which candidates. */
    record Told(Reading reading, List<FlashFormat> candidates) {}

    static BrokenDecoder hearing(String id, UnaryOperator<PulseTrain> mistake) {
        return new BrokenDecoder(id, mistake, Told::reading);
    }

    static BrokenDecoder telling(String id, Function<Told, Reading> mistake) {
        return new BrokenDecoder(id, UnaryOperator.identity(), mistake);
    }

    @Override
    public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
        Reading right = new PlainDecoder().decode(hearing.apply(train), candidates);
        return telling.apply(new Told(right, candidates));
    }
}
