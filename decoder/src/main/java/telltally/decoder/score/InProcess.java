package telltally.decoder.score;

import java.util.List;
import java.util.function.Supplier;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/**
 * A decoder in Java, run in this process.
 *
 * @param decoders makes one for each worker
 */
public record InProcess(String id, Supplier<? extends Decoder> decoders) implements Entrant {
    @Override
    public Reader open() {
        Decoder decoder = decoders.get();
        return new Reader() {
            @Override
            public Outcome read(PulseTrain train, List<FlashFormat> candidates) {
                return outcome(() -> decoder.decode(train, candidates));
            }

            @Override
            public void close() {}
        };
    }

    /** What became of a reading in this process: a decoder that throws has failed, and nothing else. */
    public static Outcome outcome(Supplier<Reading> reading) {
        try {
            return new Outcome.Read(reading.get());
        } catch (RuntimeException | StackOverflowError e) {
            return new Outcome.Failed(Outcome.Failure.THREW, e.toString());
        }
    }
}
