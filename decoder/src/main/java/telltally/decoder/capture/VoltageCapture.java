package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.Sound;

/** The wire's voltage, recorded by a sound input. */
final class VoltageCapture {
    /** A sound input that lets steady voltages through holds a step until the next; others lose it in a second. */
    private static final double HELD = 0.9;

    private VoltageCapture() {}

    static CaptureResult of(Sound sound, SoundBlocks blocks, Polarity polarity) {
        VoltageSteps steps = new VoltageSteps(blocks.slow);
        if (steps.clear() && steps.heldShare() < HELD) {
            return fromSteps(sound, blocks, steps, polarity);
        }
        return SampleCapture.of(blocks.signal(blocks.slow), polarity);
    }

    private static CaptureResult fromSteps(Sound sound, SoundBlocks blocks, VoltageSteps steps, Polarity polarity) {
        long[] edges = new long[steps.blocks.length];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = blocks.atNanos(steps.blocks[i]);
        }
        PulseTrain high = PulseTrain.of(!steps.up[0], sound.atNanos(sound.size()), edges);
        boolean highIsLit = polarity.highIsLit(high);
        List<String> remarks = new ArrayList<>();
        remarks.add("the input let no steady voltage through; the steps at the edges were read");
        if (polarity == Polarity.AUTO) {
            remarks.add("the " + (highIsLit ? "higher" : "lower") + " level is taken as lit");
        }
        if (steps.repeated > 0) {
            remarks.add(
                    steps.repeated == 1
                            ? "1 step went the same way as the one before and was left out"
                            : steps.repeated + " steps went the same way as the one before and were left out");
        }
        double contrast = Math.min(1000, steps.usual / Math.max(steps.noise, steps.usual / 1000));
        double dark = highIsLit ? 0 : steps.usual;
        Quality quality = new Quality(dark, steps.usual - dark, steps.noise, contrast, 1, 1_000_000L);
        return new Pulses(highIsLit ? high : high.inverted(), quality, remarks);
    }
}
