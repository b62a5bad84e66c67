package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.trace.Sound;

/** From a sound recording to pulses: a tone, the clicks of a relay, or the wire's voltage on a sound input. */
public final class SoundCapture {
    /** One step of 16 bits is 0.00003; four of them are no sound. */
    private static final double SILENCE = 1e-4;

    /** What is longer is no click, not even drawn out by the longest filter; no format has a shorter flash. */
    private static final long LONGEST_CLICK_NANOS = 150_000_000L;

    private final Sound sound;
    private final SoundBlocks blocks;
    private final Polarity polarity;

    private SoundCapture(Sound sound, Polarity polarity) {
        this.sound = sound;
        this.blocks = new SoundBlocks(sound);
        this.polarity = polarity;
    }

    /**
     * Every sound is answered; none raises an exception.
     *
     * @param kind what the sound holds, or {@link SoundKind#AUTO}; the choice and its reason are the first remark
     * @param polarity of a voltage; for clicks {@link Polarity#LOW_IS_LIT} says that the first one is the lamp going
     *     off; a tone always means lit
     */
    public static CaptureResult of(Sound sound, SoundKind kind, Polarity polarity) {
        if (span(sound) < SILENCE) {
            return new NoPulses(Reason.SILENCE, "the recording is silent");
        }
        SoundCapture capture = new SoundCapture(sound, polarity);
        if (capture.blocks.count() < 2) {
            return new NoPulses(Reason.TOO_FEW_SAMPLES, "the sound lasts less than two milliseconds");
        }
        return switch (kind) {
            case TONE -> capture.tone();
            case CLICKS -> capture.clicks();
            case VOLTAGE -> VoltageCapture.of(sound, capture.blocks, polarity);
            case AUTO -> capture.chosen();
        };
    }

    private static double span(Sound sound) {
        float low = Float.POSITIVE_INFINITY;
        float high = Float.NEGATIVE_INFINITY;
        for (int i = 0; i < sound.size(); i++) {
            low = Math.min(low, sound.sample(i));
            high = Math.max(high, sound.sample(i));
        }
        return (double) high - low;
    }

    /** The likelier of voltage and sound first, the other where that shows no blinking. */
    private CaptureResult chosen() {
        double slow = blocks.slowShareWhereLoud();
        long percent = Math.round(100 * slow);
        String why = " where it is loudest, " + percent + " % of the power lies below 150 Hz";
        CaptureResult first = slow > 0.5 ? voltage(why) : heard();
        if (first instanceof Pulses) {
            return first;
        }
        CaptureResult second = slow > 0.5 ? heard() : voltage(" no tone and no clicks were found");
        return second instanceof Pulses ? second : first;
    }

    private CaptureResult voltage(String why) {
        return told(VoltageCapture.of(sound, blocks, polarity), "read as a voltage:" + why);
    }

    /** What sounds for longer than a click is a tone. */
    private CaptureResult heard() {
        CaptureResult tone = tone();
        if (tone instanceof Pulses pulses && medianFlashNanos(pulses.train()) > LONGEST_CLICK_NANOS) {
            return tone;
        }
        Bursts bursts = new Bursts(blocks.loudness);
        if (!bursts.areClicks()) {
            return tone;
        }
        String why = bursts.all.size() + " bursts of sound, most of them as short as clicks";
        return told(ClickCapture.of(sound, blocks, bursts, polarity), "read as clicks of a relay: " + why);
    }

    private static double medianFlashNanos(PulseTrain train) {
        double[] lengths = train.intervals().stream()
                .filter(Interval::lit)
                .mapToDouble(Interval::lengthNanos)
                .toArray();
        return lengths.length == 0 ? 0 : new Quantiles(lengths).median();
    }

    private CaptureResult clicks() {
        Bursts bursts = new Bursts(blocks.loudness);
        if (bursts.all.isEmpty()) {
            return new NoPulses(Reason.NO_BLINKING, "no click stands out of the noise");
        }
        return ClickCapture.of(sound, blocks, bursts, polarity);
    }

    /** One frequency is sharper in noise; a buzz or a rattle, which has no pitch, is taken by its loudness. */
    private CaptureResult tone() {
        double hertz = Pitch.of(sound, blocks);
        if (hertz > 0) {
            SampledSignal envelope = ToneEnvelope.of(sound, hertz);
            CaptureResult pure = SampleCapture.of(envelope, Polarity.HIGH_IS_LIT);
            if (pure instanceof Pulses) {
                return told(pure, "read as a tone of " + Math.round(hertz) + " Hz");
            }
        }
        CaptureResult loud = SampleCapture.of(blocks.signal(blocks.loudness), Polarity.HIGH_IS_LIT);
        return told(loud, "read as a noise without a pitch");
    }

    private static CaptureResult told(CaptureResult result, String remark) {
        if (!(result instanceof Pulses pulses)) {
            return result;
        }
        List<String> remarks = new ArrayList<>(List.of(remark));
        remarks.addAll(pulses.remarks());
        return new Pulses(pulses.train(), pulses.quality(), remarks);
    }
}
