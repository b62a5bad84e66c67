package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * A person who taps a key once when the lamp lights, however long it stays lit; a lamp that is lit from the start gets
 * no tap. A tap lasts about as long every time (standard deviation 15 %, at least half). A doubled tap is followed by
 * another one of the same length 80 ms later. A tap that would come before the key was up for 30 ms is not made. The
 * recording ends later by the lag.
 *
 * @param heldNanos mean time for which the key is down
 */
public record ShortTaps(Finger finger, long heldNanos) implements Impairment {
    private static final long UP_NANOS = 30_000_000; // these and the 15 %: common practice, no source
    private static final long AGAIN_NANOS = 80_000_000;
    private static final double HELD_SPREAD = 0.15;

    public ShortTaps {
        Bounds.checkPositive("a tap", heldNanos);
    }

    /** Taps of 90 ms; common practice, no source. */
    public static ShortTaps of(Finger finger) {
        return new ShortTaps(finger, 90_000_000);
    }

    @Override
    public String kind() {
        return "short-taps";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        PulseTrain.Builder key = PulseTrain.builder();
        for (int i = train.litAtStart() ? 1 : 0; i < train.edgeCount(); i += 2) {
            if (!chance.happens(finger.missed())) {
                long press = train.edgeNanos(i) + finger.delayNanos(chance);
                long held = heldNanos(chance);
                boolean twice = chance.happens(finger.doubled());
                if (press >= key.nowNanos() + UP_NANOS || key.nowNanos() == 0) {
                    key.dark(press - key.nowNanos()).lit(held);
                    key.dark(twice ? AGAIN_NANOS : 0).lit(twice ? held : 0);
                }
            }
        }
        long end = Math.max(train.endNanos() + finger.lagNanos(), key.nowNanos() + UP_NANOS);
        return key.dark(end - key.nowNanos()).build();
    }

    private long heldNanos(Chance chance) {
        double share = Math.max(0.5, 1 + HELD_SPREAD * chance.nextNormal());
        return Math.max(1, StrictMath.round(heldNanos * share));
    }
}
