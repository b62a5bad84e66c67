package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.lesson.Marker;
import telltally.trainer.lesson.RunningCount;
import telltally.trainer.lesson.Words;
import telltally.trainer.text.Texts;

/** The flashes again, or those of one code, counted along; slower if that helps. */
public final class ReplayScreen implements Screen {
    /** Dark time before and after a single code, so that its first and last flash are not missed. */
    private static final long AROUND_NANOS = 1_500_000_000L;

    private final Trainer trainer;
    private final Screen from;
    private final Showing showing;
    private final Optional<SentGroup> only;
    private final ObjectProperty<Pace> pace = new SimpleObjectProperty<>(Pace.AS_SENT);
    private final ReadOnlyObjectWrapper<Player> player;
    private final ReadOnlyStringWrapper count = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper digits = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper caption = new ReadOnlyStringWrapper("");

    /** How fast it is shown again. */
    public enum Pace {
        AS_SENT(1),
        SLOWER(1.5),
        SLOWEST(2.5);

        private final double timesLonger;

        Pace(double timesLonger) {
            this.timesLonger = timesLonger;
        }

        private long stretched(long nanos) {
            return Math.round(nanos * timesLonger);
        }
    }

    /**
     * @param from where the way leads back to
     * @param only one group of what was shown; empty for all of it
     */
    ReplayScreen(Trainer trainer, Screen from, Showing showing, Optional<SentGroup> only) {
        this.trainer = trainer;
        this.from = from;
        this.showing = showing;
        this.only = only;
        this.player = new ReadOnlyObjectWrapper<>(player(Pace.AS_SENT));
        pace.addListener((property, before, after) -> {
            player().stop();
            player.set(player(after));
            tell();
        });
        tell();
    }

    private Player player(Pace at) {
        PulseTrain pulses = new ClockScale(at.timesLonger).applyTo(showing.pulses(), Chance.of(0));
        long endNanos = pulses.endNanos();
        long fromNanos = only.map(group -> Math.max(0, at.stretched(group.startNanos()) - AROUND_NANOS))
                .orElse(0L);
        long toNanos = only.map(group -> Math.min(endNanos, at.stretched(group.endNanos()) + AROUND_NANOS))
                .orElse(endNanos);
        return new Player(trainer, pulses, fromNanos, toNanos, showing.shownBy(), showing.instruments());
    }

    @Override
    public String title() {
        return only.map(group -> trainer.texts().of("replay.title-code", group.digits()))
                .orElseGet(() -> trainer.texts().of("replay.title-all"));
    }

    public Player player() {
        return player.get();
    }

    /** Another one for every pace. */
    public ReadOnlyObjectProperty<Player> playerProperty() {
        return player.getReadOnlyProperty();
    }

    public ObjectProperty<Pace> paceProperty() {
        return pace;
    }

    /** The flashes of the current digit so far; empty before the first. */
    public ReadOnlyStringProperty countProperty() {
        return count.getReadOnlyProperty();
    }

    /** The digits of the current group that are complete. */
    public ReadOnlyStringProperty digitsProperty() {
        return digits.getReadOnlyProperty();
    }

    /** What is being sent. */
    public ReadOnlyStringProperty captionProperty() {
        return caption.getReadOnlyProperty();
    }

    @Override
    public void advanceTo(long nowNanos) {
        player().advanceTo(nowNanos);
        tell();
    }

    public void again() {
        player().restart();
    }

    @Override
    public void back() {
        trainer.show(from);
    }

    @Override
    public void leave() {
        player().stop();
    }

    private void tell() {
        List<SentGroup> groups = only.map(List::of).orElse(showing.groups());
        long asSentNanos = Math.round(player().playback().positionNanos() / pace.get().timesLonger);
        RunningCount now = RunningCount.at(groups, asSentNanos);
        boolean counted = now.group().filter(group -> !isSteady(group)).isPresent();
        count.set(counted ? Integer.toString(now.flashes()) : "");
        digits.set(now.digits());
        caption.set(now.group()
                .map(group -> describe(group, now.repeat()))
                .orElseGet(() -> player().remark().isEmpty() ? trainer.texts().of("replay.wait") : player().remark()));
    }

    /** A bulb check, a lead-in or an output switched on; blinking has more than one flash. */
    private static boolean isSteady(SentGroup group) {
        return group.kind() == GroupKind.STEADY
                && group.signs().get(0).flashes().size() == 1;
    }

    private String describe(SentGroup group, boolean repeat) {
        Texts texts = trainer.texts();
        Optional<Marker> marker = Marker.of(showing.format(), group);
        if (marker.isPresent()) {
            return texts.of(
                    "replay.marker", marker.get().title(texts), marker.get().meaning(texts));
        }
        return switch (group.kind()) {
            case BALANCE -> texts.of("replay.balance");
            case STEADY -> texts.of(isSteady(group) ? "replay.steady" : "replay.blinking");
            default ->
                texts.of(repeat ? "replay.listing-again" : "replay.listing", new Words(texts).listing(group.segment()));
        };
    }
}
