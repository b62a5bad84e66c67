package telltally.trainer.playback;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * A stretch of a pulse train played against a clock that somebody else reads. Every frame shows the share of the time
 * since the frame before during which the train was lit. So the lamp cannot drift, no change is seen before its time,
 * and one late frame makes one flash late, not all that follow.
 */
public final class Playback {
    private final PulseTrain pulses;
    private final long fromNanos;
    private final long toNanos;
    private final List<ShownFlash> shown = new ArrayList<>();
    private long positionNanos;
    private double brightness;
    private int nextFlash;
    private long litSinceNanos = -1;
    private long worstLateNanos;
    private boolean lagged;

    public Playback(PulseTrain pulses) {
        this(pulses, 0, pulses.endNanos());
    }

    /** @throws IllegalArgumentException if the stretch has no length or does not lie within the train */
    public Playback(PulseTrain pulses, long fromNanos, long toNanos) {
        if (fromNanos < 0 || toNanos <= fromNanos || toNanos > pulses.endNanos()) {
            throw new IllegalArgumentException("no stretch of the train: " + fromNanos + " to " + toNanos + " ns");
        }
        this.pulses = pulses;
        this.fromNanos = fromNanos;
        this.toNanos = toNanos;
        this.positionNanos = fromNanos;
        this.brightness = pulses.litAt(fromNanos) ? 1 : 0;
        while (nextFlash < pulses.intervals().size() && flash(nextFlash).endNanos() <= fromNanos) {
            nextFlash++;
        }
    }

    /** A frame. An instant before that of the last frame is taken for it. */
    public void advanceTo(long sinceStartNanos) {
        long nowNanos = Math.min(toNanos, Math.max(positionNanos, fromNanos + sinceStartNanos));
        if (nowNanos == positionNanos) {
            return;
        }
        brightness = (double) pulses.litNanosBetween(positionNanos, nowNanos) / (nowNanos - positionNanos);
        positionNanos = nowNanos;
        noteFlashes();
        if (ended()) {
            brightness = 0;
        }
    }

    /** How bright this frame is, from 0 to 1. */
    public double brightness() {
        return brightness;
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
        while (nextFlash < pulses.intervals().size() && flash(nextFlash).startNanos() < positionNanos) {
            Interval interval = flash(nextFlash);
            if (interval.lit() && litSinceNanos < 0) {
                litSinceNanos = positionNanos;
            }
            boolean goneNow = interval.endNanos() < positionNanos;
            if (interval.lit()) {
                note(new ShownFlash(interval, litSinceNanos, goneNow ? positionNanos : interval.endNanos()), goneNow);
            }
            if (!goneNow) {
                return;
            }
            litSinceNanos = -1;
            nextFlash++;
        }
    }

    private void note(ShownFlash flash, boolean gone) {
        // The stretch may begin within a flash: what was lit before it could be shown is not late.
        if (flash.planned().startNanos() < fromNanos) {
            return;
        }
        worstLateNanos = Math.max(worstLateNanos, flash.worstLateNanos());
        lagged |= flash.lagged();
        if (gone) {
            shown.add(flash);
        }
    }

    private Interval flash(int index) {
        return pulses.intervals().get(index);
    }
}
