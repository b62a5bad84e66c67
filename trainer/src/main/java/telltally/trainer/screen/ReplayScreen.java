package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.SentGroup;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.Marker;
import telltally.trainer.lesson.RunningCount;
import telltally.trainer.lesson.Words;
import telltally.trainer.text.Texts;

/** The flashes again, counted along. */
public final class ReplayScreen implements Screen {
    /** Dark time before and after a single code, so that its first and last flash are not missed. */
    private static final long AROUND_NANOS = 1_500_000_000L;

    private final Trainer trainer;
    private final MarkingScreen from;
    private final Lesson lesson;
    private final Optional<SentGroup> only;
    private final Player player;
    private final ReadOnlyStringWrapper count = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper digits = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper caption = new ReadOnlyStringWrapper("");

    ReplayScreen(Trainer trainer, MarkingScreen from, Optional<SentGroup> only) {
        this.trainer = trainer;
        this.from = from;
        this.lesson = from.lesson();
        this.only = only;
        long endNanos = lesson.pulses().endNanos();
        long fromNanos = only.map(group -> Math.max(0, group.startNanos() - AROUND_NANOS))
                .orElse(0L);
        long toNanos = only.map(group -> Math.min(endNanos, group.endNanos() + AROUND_NANOS))
                .orElse(endNanos);
        this.player = new Player(trainer, lesson.pulses(), fromNanos, toNanos, from.shownBy(), Instruments.of(lesson));
        tell();
    }

    @Override
    public String title() {
        return only.map(group -> trainer.texts().of("replay.title-code", group.digits()))
                .orElseGet(() -> trainer.texts().of("replay.title-all"));
    }

    public Player player() {
        return player;
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
        player.advanceTo(nowNanos);
        tell();
    }

    public void again() {
        player.restart();
    }

    @Override
    public void back() {
        trainer.show(from);
    }

    @Override
    public void leave() {
        player.stop();
    }

    private void tell() {
        List<SentGroup> groups =
                only.map(List::of).orElse(lesson.recording().truth().groups());
        RunningCount now = RunningCount.at(groups, player.playback().positionNanos());
        boolean counted = now.group().filter(group -> !isSteady(group)).isPresent();
        count.set(counted ? Integer.toString(now.flashes()) : "");
        digits.set(now.digits());
        caption.set(now.group()
                .map(group -> describe(group, now.repeat()))
                .orElseGet(() -> player.remark().isEmpty() ? trainer.texts().of("replay.wait") : player.remark()));
    }

    /** A bulb check, a lead-in or an output switched on; blinking has more than one flash. */
    private static boolean isSteady(SentGroup group) {
        return group.kind() == GroupKind.STEADY
                && group.signs().get(0).flashes().size() == 1;
    }

    private String describe(SentGroup group, boolean repeat) {
        Texts texts = trainer.texts();
        Optional<Marker> marker = Marker.of(lesson.scenario().format(), group);
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
