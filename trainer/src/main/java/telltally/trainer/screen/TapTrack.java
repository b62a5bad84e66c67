package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** A key that was tapped along with the flashes, in the time of the drill's pulses. */
final class TapTrack {
    private static final long NOT_DOWN = -1;

    private final List<Interval> taps = new ArrayList<>();
    private long downNanos = NOT_DOWN;

    /** A key that is held repeats itself; only the first counts. */
    void down(long atNanos) {
        if (downNanos == NOT_DOWN) {
            downNanos = Math.max(atNanos, lastEndNanos() + 1);
        }
    }

    void up(long atNanos) {
        if (downNanos != NOT_DOWN) {
            taps.add(new Interval(true, downNanos, Math.max(atNanos, downNanos + 1)));
            downNanos = NOT_DOWN;
        }
    }

    boolean isDown() {
        return downNanos != NOT_DOWN;
    }

    void clear() {
        taps.clear();
        downNanos = NOT_DOWN;
    }

    List<Interval> taps() {
        return List.copyOf(taps);
    }

    /**
     * Taps as a train that lasts at least as long as the drill's, so that the dark after the last one is seen.
     *
     * @param endNanos of the drill's pulses
     */
    static PulseTrain train(List<Interval> taps, long endNanos) {
        PulseTrain.Builder train = PulseTrain.builder();
        for (Interval tap : taps) {
            train.dark(tap.startNanos() - train.nowNanos()).lit(tap.lengthNanos());
        }
        return train.dark(Math.max(1, endNanos - train.nowNanos())).build();
    }

    private long lastEndNanos() {
        return taps.isEmpty() ? 0 : taps.get(taps.size() - 1).endNanos();
    }
}
