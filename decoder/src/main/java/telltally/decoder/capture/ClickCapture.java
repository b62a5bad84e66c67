package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.Sound;

/** A relay's clicks: the level changes at each. */
final class ClickCapture {
    private static final double ONSET_SHARE = 0.3;

    private ClickCapture() {}

    static CaptureResult of(Sound sound, SoundBlocks blocks, Bursts bursts, Polarity polarity) {
        long[] edges = new long[bursts.all.size()];
        int count = 0;
        long before = 0;
        for (Bursts.Burst burst : bursts.all) {
            long onset = onsetNanos(sound, blocks, burst.firstBlock());
            if (onset > before) {
                edges[count++] = onset;
                before = onset;
            }
        }
        boolean litFirst = polarity != Polarity.LOW_IS_LIT;
        long[] kept = Arrays.copyOf(edges, count);
        PulseTrain train = PulseTrain.of(!litFirst, sound.atNanos(sound.size()), kept);
        double noise = bursts.floor / 3;
        double contrast = Math.min(1000, bursts.usualPeak() / Math.max(noise, bursts.usualPeak() / 1000));
        Quality quality = new Quality(0, bursts.usualPeak(), noise, contrast, 1, 1_000_000L);
        return new Pulses(train, quality, remarks(train, litFirst));
    }

    private static List<String> remarks(PulseTrain train, boolean litFirst) {
        List<String> remarks = new ArrayList<>();
        remarks.add("the first click is taken as the lamp going " + (litFirst ? "on" : "off"));
        if (Polarity.looksInverted(train)) {
            remarks.add("the lit stretches are as long as pauses: lit and dark may be the wrong way round");
        }
        if (train.edgeCount() % 2 == 1) {
            remarks.add("the number of clicks is odd: one was missed or is no click, and from there on lit and dark may"
                    + " be the wrong way round");
        }
        return remarks;
    }

    /** The first sample of the burst that is far off what was before. */
    private static long onsetNanos(Sound sound, SoundBlocks blocks, int block) {
        int from = Math.max(0, (block - 1) * blocks.blockSamples);
        int to = Math.min(sound.size(), (block + 2) * blocks.blockSamples);
        double rest = blocks.slow[Math.max(0, block - 2)];
        double most = 0;
        for (int i = from; i < to; i++) {
            most = Math.max(most, Math.abs(sound.sample(i) - rest));
        }
        for (int i = from; i < to; i++) {
            if (Math.abs(sound.sample(i) - rest) >= ONSET_SHARE * most) {
                return sound.atNanos(i);
            }
        }
        return sound.atNanos(from);
    }
}
