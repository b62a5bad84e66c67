package telltally.trainer.screen;

import java.util.Optional;
import java.util.function.LongSupplier;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import org.jspecify.annotations.Nullable;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.playback.DisplaySignal;
import telltally.trainer.playback.FlashRate;
import telltally.trainer.playback.Playback;
import telltally.trainer.playback.Sound;
import telltally.trainer.playback.Voice;
import telltally.trainer.settings.Settings;
import telltally.trainer.text.Texts;

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
    private final Display shownBy;
    private final Settings settings;
    private final DisplaySignal display;
    private final Texts texts;
    private final ReadOnlyDoubleWrapper level = new ReadOnlyDoubleWrapper();
    private Playback playback;
    private long startedNanos = NOT_STARTED;
    private long beganNanos;
    private long pausedNanos = NOT_STARTED;

    Player(Trainer trainer, PulseTrain pulses, long fromNanos, long toNanos, Display shownBy) {
        this(trainer, pulses, fromNanos, toNanos, shownBy, Instruments.usual());
    }

    /** @param instruments where they are not as usual: a weak battery, a lazy needle */
    Player(Trainer trainer, PulseTrain pulses, long fromNanos, long toNanos, Display shownBy, Instruments instruments) {
        this.pulses = pulses;
        this.fromNanos = fromNanos;
        this.toNanos = toNanos;
        this.mayFlash = shownBy == Display.METER || FlashRate.mayFlash(pulses);
        this.seen = Trainer.seen(shownBy);
        this.sound = Trainer.heard(shownBy) ? trainer.sound() : null;
        this.clockNanos = trainer.clockNanos();
        this.texts = trainer.texts();
        this.shownBy = shownBy;
        this.settings = trainer.settings();
        this.display = instruments.of(shownBy).showing(pulses);
        this.playback = new Playback(pulses, fromNanos, toNanos, display);
        this.beganNanos = fromNanos;
    }

    /** How it is perceived. */
    public Display shownBy() {
        return shownBy;
    }

    /** Size, brightness and ground of what is seen. */
    public Settings settings() {
        return settings;
    }

    /** How bright the lamp is or how far the needle has swung, from 0 to 1; 0 for the ear alone. */
    public ReadOnlyDoubleProperty levelProperty() {
        return level.getReadOnlyProperty();
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
        playback = new Playback(pulses, fromNanos, toNanos, display);
        beganNanos = fromNanos;
        startedNanos = NOT_STARTED;
        pausedNanos = NOT_STARTED;
    }

    /** The lamp stays as it is, the sound is silent. */
    void pause(long nowNanos) {
        if (startedNanos != NOT_STARTED && pausedNanos == NOT_STARTED) {
            pausedNanos = nowNanos;
            if (sound != null) {
                sound.stop();
            }
        }
    }

    void resume(long nowNanos) {
        if (pausedNanos != NOT_STARTED) {
            long started = startedNanos + nowNanos - pausedNanos;
            pausedNanos = NOT_STARTED;
            start(started);
        }
    }

    /** Goes on from an earlier place of the train. */
    void goBack(long nanos, long nowNanos) {
        stop();
        beganNanos = Math.max(fromNanos, Math.min(playback.positionNanos() - nanos, toNanos - 1));
        playback = new Playback(pulses, beganNanos, toNanos, display);
        pausedNanos = NOT_STARTED;
        start(nowNanos);
    }

    void advanceTo(long nowNanos) {
        if (pausedNanos != NOT_STARTED) {
            return;
        }
        if (startedNanos == NOT_STARTED) {
            start(nowNanos);
        }
        boolean before = playback.ended();
        playback.advanceTo(nowNanos - startedNanos);
        level.set(seen ? level() : 0);
        if (playback.ended() && !before) {
            stop();
        }
    }

    void stop() {
        level.set(0);
        if (sound != null) {
            sound.stop();
        }
    }

    /** What there is to know about lamp and sound before anybody wonders; empty where all is as expected. */
    String remark() {
        Optional<Sound.Trouble> trouble = sound == null ? Optional.empty() : sound.trouble();
        if (trouble.isPresent()) {
            return texts.of(seen ? "player.lamp-alone" : "player.choose-otherwise", told(trouble.get()));
        }
        return seen && !mayFlash ? texts.of("player.too-fast") : "";
    }

    /** Why the run so far is no fair task; empty where it is one. */
    Optional<String> notScored() {
        if (seen && playback.lagged()) {
            return Optional.of(texts.of("player.lamp-lagged", milliseconds(playback.worstLateNanos())));
        }
        return seen || sound == null ? Optional.empty() : notHeard(sound);
    }

    private Optional<String> notHeard(Sound byEar) {
        if (byEar.trouble().isPresent()) {
            return Optional.of(texts.of("player.not-heard"));
        }
        if (byEar.worstOffNanos() > shortestFlashNanos() / 10) {
            return Optional.of(texts.of("player.sound-stumbled", milliseconds(byEar.worstOffNanos())));
        }
        return Optional.empty();
    }

    private void start(long nowNanos) {
        startedNanos = nowNanos;
        if (sound != null) {
            sound.play(pulses, voice(), () -> clockNanos.getAsLong() - nowNanos + beganNanos);
        }
    }

    private double level() {
        return mayFlash ? playback.level() : playback.ended() ? 0 : DIM;
    }

    private Voice voice() {
        return new Voice(settings.pitch().hertz(), settings.loudnessPercent() / 100.0);
    }

    private long shortestFlashNanos() {
        return pulses.intervals().stream()
                .filter(interval -> interval.lit())
                .mapToLong(interval -> interval.lengthNanos())
                .min()
                .orElse(Long.MAX_VALUE);
    }

    private String told(Sound.Trouble trouble) {
        return texts.of(
                switch (trouble) {
                    case NO_DEVICE -> "player.no-sound-device";
                    case DEVICE_TAKEN -> "player.sound-device-taken";
                });
    }

    private String milliseconds(long nanos) {
        return texts.of("words.milliseconds", nanos / 1_000_000);
    }
}
