package telltally.trainer.playback;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * A stretch of a pulse train played against a clock that somebody else reads. Every frame shows the mean of what the
 * display showed since the frame before. So it cannot drift, no change is seen before its time, and one late frame makes
 * one flash late, not all that follow. How late is told of the train that drives the display. A frame allocates nothing.
 */
public final class Playback {
    private final Interval[] intervals;
    private final DisplaySignal display;
    private final long fromNanos;
    private final long toNanos;
    private final List<ShownFlash> shown = new ArrayList<>();
    private long positionNanos;
    private double level;
    private int nextFlash;
    private long litSinceNanos = -1;
    private long worstLateNanos;
    private boolean lagged;

    /** The whole train, on a display that follows at once. */
    public Playback(PulseTrain pulses) {
        this(pulses, 0, pulses.endNanos(), new Instrument.Diode().showing(pulses));
    }

    /**
     * @param display what is shown of the train
     * @throws IllegalArgumentException if the stretch has no length or does not lie within the train
     */
    public Playback(PulseTrain pulses, long fromNanos, long toNanos, DisplaySignal display) {
        if (fromNanos < 0 || toNanos <= fromNanos || toNanos > pulses.endNanos()) {
            throw new IllegalArgumentException("no stretch of the train: " + fromNanos + " to " + toNanos + " ns");
        }
        // A train makes its intervals anew for whoever asks; a frame must not.
        this.intervals = pulses.intervals().toArray(Interval[]::new);
        this.display = display;
        this.fromNanos = fromNanos;
        this.toNanos = toNanos;
        this.positionNanos = fromNanos;
        this.level = display.mean(fromNanos, fromNanos + 1);
        while (nextFlash < intervals.length && flash(nextFlash).endNanos() <= fromNanos) {
            nextFlash++;
        }
    }

    /** A frame. An instant before that of the last frame is taken for it. */
    public void advanceTo(long sinceStartNanos) {
        long nowNanos = Math.min(toNanos, Math.max(positionNanos, fromNanos + sinceStartNanos));
        if (nowNanos == positionNanos) {
            return;
        }
        level = display.mean(positionNanos, nowNanos);
        positionNanos = nowNanos;
        noteFlashes();
        if (ended()) {
            level = 0;
        }
    }

    /** What the display shows in this frame: light or deflection. */
    public double level() {
        return level;
    }

    /** How far the train has been played, in nanoseconds of the train. */
    public long positionNanos() {
        return positionNanos;
    }

    public boolean ended() {
        return positionNanos == toNanos;
    }

    /** Every flash that has come and gone, with the frames that showed it. */
    public List<ShownFlash> shown() {
        return List.copyOf(shown);
    }

    /** Whether a flash has come and gone; cheap enough to be asked at every frame. */
    public boolean anyShown() {
        return !shown.isEmpty();
    }

    /** The longest that any change so far was seen after its time. */
    public long worstLateNanos() {
        return worstLateNanos;
    }

    /** Whether any flash so far came or went later than a tenth of its length; such a run is not scored. */
    public boolean lagged() {
        return lagged;
    }

    private void noteFlashes() {
        while (nextFlash < intervals.length && flash(nextFlash).startNanos() < positionNanos) {
            Interval interval = flash(nextFlash);
            if (interval.lit() && litSinceNanos < 0) {
                litSinceNanos = positionNanos;
            }
            boolean goneNow = interval.endNanos() < positionNanos;
            if (interval.lit()) {
                note(interval, goneNow);
            }
            if (!goneNow) {
                return;
            }
            litSinceNanos = -1;
            nextFlash++;
        }
    }

    private void note(Interval flash, boolean gone) {
        // The stretch may begin within a flash: what was lit before it could be shown is not late.
        if (flash.startNanos() < fromNanos) {
            return;
        }
        long lateNanos = Math.max(litSinceNanos - flash.startNanos(), gone ? positionNanos - flash.endNanos() : 0);
        worstLateNanos = Math.max(worstLateNanos, lateNanos);
        lagged |= ShownFlash.lagged(lateNanos, flash);
        if (gone) {
            shown.add(new ShownFlash(flash, litSinceNanos, positionNanos));
        }
    }

    private Interval flash(int index) {
        return intervals[index];
    }
}
