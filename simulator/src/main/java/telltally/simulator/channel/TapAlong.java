package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * A person who holds a key for as long as the lamp is lit. Every press and every release comes late by the finger's
 * lag and spread, but no hold and no pause gets shorter than a fifth of the flash or gap it follows. A doubled tap lets
 * go for 60 ms a third of the way through, if the hold is three times as long or more. The recording ends later by the
 * lag.
 */
public record TapAlong(Finger finger) implements Impairment {
    private static final long SLIP_NANOS = 60_000_000; // common practice, no source

    @Override
    public String kind() {
        return "tap-along";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        PulseTrain.Builder key = PulseTrain.builder();
        long leastPause = 0;
        for (Interval stretch : train.intervals()) {
            long least = Math.max(1, stretch.lengthNanos() / 5);
            if (!stretch.lit()) {
                leastPause = least;
            } else if (!chance.happens(finger.missed())) {
                long press = Math.max(key.nowNanos() + leastPause, late(stretch.startNanos(), chance));
                long release = stretch.endNanos() == train.endNanos()
                        ? stretch.endNanos() + finger.lagNanos()
                        : late(stretch.endNanos(), chance);
                key.dark(press - key.nowNanos());
                hold(key, Math.max(least, release - press), chance.happens(finger.doubled()));
                leastPause = 0;
            }
        }
        long end = Math.max(train.endNanos() + finger.lagNanos(), key.nowNanos() + leastPause);
        return key.dark(end - key.nowNanos()).build();
    }

    private long late(long nanos, Chance chance) {
        return nanos + finger.delayNanos(chance);
    }

    private static void hold(PulseTrain.Builder key, long length, boolean slips) {
        if (slips && length >= 3 * SLIP_NANOS) {
            long first = length / 3;
            key.lit(first).dark(SLIP_NANOS).lit(length - first - SLIP_NANOS);
        } else {
            key.lit(length);
        }
    }
}
