package telltally.decoder.capture;

import java.util.List;
import telltally.simulator.signal.PulseTrain;

/** What became of a recording: pulses, or the reason why there are none. */
public sealed interface CaptureResult {

    /**
     * @param train lit and dark; time counts from the first sample, the end is one sample after the last
     * @param remarks what was chosen or assumed and what is doubtful, a sentence each
     */
    record Pulses(PulseTrain train, Quality quality, List<String> remarks) implements CaptureResult {
        public Pulses {
            remarks = List.copyOf(remarks);
        }
    }

    /** @param text one sentence for the user, without a line end */
    record NoPulses(Reason reason, String text) implements CaptureResult {}

    /** The closed list of reasons for no pulses. */
    enum Reason {
        /** Fewer samples or frames than can be told apart from chance. */
        TOO_FEW_SAMPLES("too-few-samples"),
        /** Instants further from 0 than Telltally reads. */
        TIMES_OUT_OF_RANGE("times-out-of-range"),
        /** Samples, but no two levels that stand out of the noise. */
        NO_BLINKING("no-blinking"),
        /** Two levels that change at nearly every sample: sampled too slowly, or chance. */
        TOO_FAST("too-fast"),
        /** No two levels, and much of the recording lies at the end of its range. */
        CLIPPED("clipped"),
        /** A sound without a sound in it. */
        SILENCE("silence"),
        /** A clip that is no MP4 or MOV, or has no picture track. */
        NO_CLIP("no-clip"),
        /** A clip in a coding that is not read. */
        UNREADABLE_CODING("unreadable-coding"),
        /** A clip in a coding that is read, but its data is damaged. */
        DAMAGED_CLIP("damaged-clip");

        private final String key;

        Reason(String key) {
            this.key = key;
        }

        /** As files write it. */
        public String key() {
            return key;
        }
    }
}
