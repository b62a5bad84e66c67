package telltally.decoder.score;

import java.util.List;
import java.util.Optional;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.PulseTrain;

/**
 * One recording of a seed set, behind its channel.
 *
 * @param origin the lesson that was played, or "random message"
 * @param format the one that was sent in; empty where the right answer is nothing
 * @param lamp what was seen of the lamp
 * @param pin what was measured at the self-test output
 * @param channel what spoiled both, its strengths settled; empty where that is not known
 */
public record SeedCase(
        long seed,
        String origin,
        Optional<FlashFormat> format,
        PulseTrain lamp,
        PulseTrain pin,
        Truth truth,
        ImpairmentChain channel) {
    /**
     * The candidates that a decoder is given.
     *
     * @param all those of the set
     * @param told whether it is told the format; where the right answer is nothing, there is none to be told
     */
    public List<FlashFormat> candidates(List<FlashFormat> all, boolean told) {
        return told ? format.map(List::of).orElse(all) : all;
    }
}
