package telltally.decoder.testkit;

import java.util.Optional;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.PulseTrain;

/** One recording and what was really sent in it. As text it says how it can be had again. */
public sealed interface Session permits MessageSession, SeedSession {
    /** What a decoder is given. */
    PulseTrain train();

    /** The format that was sent in; empty where the right answer is nothing. */
    Optional<FlashFormat> format();

    /** What a decoder should have read; the instants of its groups are those of sending. */
    Truth truth();
}
