package telltally.trainer.screen;

import java.util.function.LongSupplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** A drill's lamp as it runs: as on the vehicle, where everything comes again and has to be waited for, or freely. */
final class LampRun {
    private static final long NANOS_A_MILLISECOND = 1_000_000L;
    private static final long BACK_NANOS = 5_000_000_000L;

    private final Player player;
    private final long lampNanos;
    private final LongSupplier clockNanos;
    private final ReadOnlyBooleanWrapper paused = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper free = new ReadOnlyBooleanWrapper();
    private int sendings = 1;
    private long lastFrameNanos;

    /** @param lampNanos how long one sending lasts */
    LampRun(Player player, long lampNanos, LongSupplier clockNanos) {
        this.player = player;
        this.lampNanos = lampNanos;
        this.clockNanos = clockNanos;
    }

    Player player() {
        return player;
    }

    boolean ended() {
        return player.ended();
    }

    ReadOnlyBooleanProperty pausedProperty() {
        return paused.getReadOnlyProperty();
    }

    boolean paused() {
        return paused.get();
    }

    /** Whether it was ever paused or taken back. */
    ReadOnlyBooleanProperty freeProperty() {
        return free.getReadOnlyProperty();
    }

    boolean free() {
        return free.get();
    }

    int sendings() {
        return sendings;
    }

    void advanceTo(long nowNanos) {
        player.advanceTo(nowNanos);
        lastFrameNanos = nowNanos;
    }

    void nextSending() {
        sendings++;
        resume();
        player.restart();
    }

    /** No vehicle can do this. */
    void pauseOrResume() {
        free.set(true);
        if (paused.get()) {
            resume();
        } else if (!player.ended()) {
            paused.set(true);
            player.pause(clockNanos.getAsLong());
        }
    }

    /** A few seconds back, which no vehicle can do either. */
    void goBack() {
        free.set(true);
        paused.set(false);
        player.goBack(BACK_NANOS, clockNanos.getAsLong());
    }

    private void resume() {
        if (paused.get()) {
            paused.set(false);
            player.resume(clockNanos.getAsLong());
        }
    }

    /** Where this sending is now, between two frames as well. */
    long positionNanos() {
        long sinceFrameNanos = paused.get() ? 0 : clockNanos.getAsLong() - lastFrameNanos;
        return player.playback().positionNanos() + Math.max(0, sinceFrameNanos);
    }

    /** From the first flash of the first sending on, all sendings together. */
    long runningMillis() {
        return ((sendings - 1) * lampNanos + player.playback().positionNanos()) / NANOS_A_MILLISECOND;
    }
}
