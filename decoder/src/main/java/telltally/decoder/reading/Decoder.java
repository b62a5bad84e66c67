package telltally.decoder.reading;

import java.util.List;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/**
 * Reads codes from a pulse train. An implementation keeps no state between calls, never throws on any train, and
 * answers in time and memory that grow no faster than in proportion to the train.
 */
public interface Decoder {
    /** By which the command line and score cards name this decoder: small letters, figures, hyphens. */
    String id();

    /**
     * @param train as it was captured: bounce, bursts and all
     * @param candidates the formats that it may be in, at least one; with several, the decoder says which it was
     * @return what was read; {@link Reading#nothing} with a warning where nothing can be
     */
    Reading decode(PulseTrain train, List<FlashFormat> candidates);
}
