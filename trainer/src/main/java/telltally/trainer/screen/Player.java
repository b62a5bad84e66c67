package telltally.trainer.screen;

import java.util.Optional;
import java.util.function.LongSupplier;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import org.jspecify.annotations.Nullable;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.playback.FlashRate;
import telltally.trainer.playback.Playback;
import telltally.trainer.playback.Sound;

/** Plays a stretch of a train to eye and ear by one clock. The first frame starts it. */
public final class Player {
    /** How bright the lamp is where it must not flash. */
    static final double DIM = 0.3;

    private static final long NOT_STARTED = -1;

    private final PulseTrain pulses;
    private final long fromNanos;
    private final long toNanos;
    private final boolean mayFlash;
    private final boolean seen;
    private final @Nullable Sound sound;
    private final LongSupplier clockNanos;
    private final ReadOnlyDoubleWrapper brightness = new ReadOnlyDoubleWrapper();
    private Playback playback;
    private long startedNanos = NOT_STARTED;

    Player(Trainer trainer, PulseTrain pulses, long fromNanos, long toNanos, Display shownBy) {
        this.pulses = pulses;
        this.fromNanos = fromNanos;
        this.toNanos = toNanos;
        this.mayFlash = FlashRate.mayFlash(pulses);
        this.seen = Trainer.seen(shownBy);
        this.sound = Trainer.heard(shownBy) ? trainer.sound() : null;
        this.clockNanos = trainer.clockNanos();
        this.playback = new Playback(pulses, fromNanos, toNanos);
    }

    /** How bright the lamp is, from 0 to 1; dark where the lesson is for the ear alone. */
    public ReadOnlyDoubleProperty brightnessProperty() {
        return brightness.getReadOnlyProperty();
    }

    public boolean ended() {
        return playback.ended();
    }

    /** What was shown so far, and how late. */
    public Playback playback() {
        return playback;
    }

    void restart() {
        stop();
        playback = new Playback(pulses, fromNanos, toNanos);
        startedNanos = NOT_STARTED;
    }

    void advanceTo(long nowNanos) {
        if (startedNanos == NOT_STARTED) {
            start(nowNanos);
        }
        boolean before = playback.ended();
        playback.advanceTo(nowNanos - startedNanos);
        brightness.set(seen ? light() : 0);
        if (playback.ended() && !before) {
            stop();
        }
    }

    void stop() {
        brightness.set(0);
        if (sound != null) {
            sound.stop();
        }
    }

    /** What there is to know about lamp and sound before anybody wonders; empty where all is as expected. */
    String remark() {
        Optional<String> trouble = sound == null ? Optional.empty() : sound.trouble();
        if (trouble.isPresent()) {
            return trouble.get() + (seen ? " The lamp goes on alone." : " Go back and choose the lamp.");
        }
        return seen && !mayFlash
                ? "These flashes are too fast for a lamp that is safe to look at: it stays dim. Choose the sounder to count"
                        + " them."
                : "";
    }

    /** Why the run so far is no fair task; empty where it is one. */
    Optional<String> notScored() {
        if (seen && playback.lagged()) {
            return Optional.of("The lamp lagged: a change was seen " + milliseconds(playback.worstLateNanos())
                    + " after its time, more than a tenth of a flash. This run is not scored.");
        }
        if (!seen && sound != null && sound.worstOffNanos() > shortestFlashNanos() / 10) {
            return Optional.of("The sound stumbled: a tone was " + milliseconds(sound.worstOffNanos())
                    + " off its time, more than a tenth of a flash. This run is not scored.");
        }
        return Optional.empty();
    }

    private void start(long nowNanos) {
        startedNanos = nowNanos;
        if (sound != null) {
            sound.play(pulses, () -> clockNanos.getAsLong() - nowNanos + fromNanos);
        }
    }

    private double light() {
        return mayFlash ? playback.brightness() : playback.ended() ? 0 : DIM;
    }

    private long shortestFlashNanos() {
        return pulses.intervals().stream()
                .filter(interval -> interval.lit())
                .mapToLong(interval -> interval.lengthNanos())
                .min()
                .orElse(Long.MAX_VALUE);
    }

    private static String milliseconds(long nanos) {
        return nanos / 1_000_000 + " ms";
    }
}
