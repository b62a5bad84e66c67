package telltally.decoder.score;

import java.util.List;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/**
 * The reader of a decoder that is not asked any more.
 *
 * @param why what it says of every session
 */
public record FailingReader(Outcome.Failed why) implements Entrant.Reader {
    @Override
    public Outcome read(PulseTrain train, List<FlashFormat> candidates) {
        return why;
    }

    @Override
    public void close() {}
}
