package telltally.decoder.testkit;

import java.util.Optional;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedCase;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.PulseTrain;

/**
 * A recording of a seed set, on one of its lines.
 *
 * @param set the id of the set
 */
public record SeedSession(String set, Line line, SeedCase sent) implements Session {
    @Override
    public PulseTrain train() {
        return line.train(sent);
    }

    @Override
    public Optional<FlashFormat> format() {
        return sent.format();
    }

    @Override
    public Truth truth() {
        return sent.truth();
    }

    @Override
    public String toString() {
        return set + " seed " + sent.seed() + " (" + sent.origin() + "), "
                + sent.format().map(FlashFormat::id).orElse("no format") + ", " + line.key();
    }
}
