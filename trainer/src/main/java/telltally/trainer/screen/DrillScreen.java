package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import telltally.decoder.reading.Reading;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.Interval;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Marked;
import telltally.trainer.drill.Question;
import telltally.trainer.drill.Question.When;
import telltally.trainer.drill.Skill;
import telltally.trainer.text.Texts;

/** One drill: the lamp runs and the learner answers. */
public final class DrillScreen implements Screen {
    /** Where a drill's answer goes, and what comes after it. */
    public interface Way {
        /**
         * Keeps an answer; called before anything of its marks is shown.
         *
         * @return what went wrong, in words for the learner; empty where it is kept
         */
        Optional<String> record(Answered answered);

        /** To the next drill. */
        void next();

        /** Enough for now. */
        void done();
    }

    private final Trainer trainer;
    private final Drill drill;
    private final Display agreed;
    private final Display shownBy;
    private final Way way;
    private final String reason;
    private final LampRun run;
    private final DrillInput input;
    private final TapTrack taps = new TapTrack();
    private final ObjectProperty<Means> means = new SimpleObjectProperty<>(Means.TYPED);
    private final ReadOnlyBooleanWrapper ended = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper tapping = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper caption = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper asked = new ReadOnlyStringWrapper("");
    private Optional<String> notScored = Optional.empty();

    /**
     * @param agreed how the learner wants to perceive flashes; a drill that asks for something else gets it unless the
     *     lamp was turned down
     */
    public DrillScreen(Trainer trainer, Drill drill, Display agreed, Way way) {
        this(trainer, drill, agreed, way, "");
    }

    /** @param reason why it comes now, where that is not plain from the drills before; else empty */
    DrillScreen(Trainer trainer, Drill drill, Display agreed, Way way, String reason) {
        this.trainer = trainer;
        this.reason = reason;
        this.drill = drill;
        this.agreed = agreed;
        this.shownBy = shownBy(drill, agreed);
        this.way = way;
        Player player = new Player(trainer, drill.pulses(), 0, drill.lampNanos(), shownBy, Instruments.of(drill));
        this.run = new LampRun(player, drill.lampNanos(), trainer.clockNanos());
        this.input = input();
        means.addListener((property, before, after) -> openSheet());
        openSheet();
    }

    static Display shownBy(Drill drill, Display agreed) {
        if (agreed == Display.SOUNDER) {
            return Display.SOUNDER;
        }
        // Whoever took the needle did so that nothing flashes.
        if (agreed == Display.METER) {
            return drill.display() == Display.SOUNDER ? Display.SOUNDER : Display.METER;
        }
        // Only a bulb is dim on a weak battery; a diode is not computed to be.
        boolean bulb = drill.skill() == Skill.DIM_LAMP;
        return drill.display() == Display.LAMP && !bulb ? agreed : drill.display();
    }

    private DrillInput input() {
        Texts texts = trainer.texts();
        Question question = drill.question();
        if (question instanceof Question.Choose choose) {
            return new DrillInput.Choice(choose.options().stream()
                    .map(option -> option.text().in(texts))
                    .toList());
        }
        if (question instanceof Question.Write write) {
            WorkSheet sheet = new WorkSheet(texts, drill.format(), write.segments());
            return new DrillInput.Sheet(sheet, new SheetTimes(sheet, run::runningMillis));
        }
        return new DrillInput.Count();
    }

    @Override
    public String title() {
        return trainer.texts().of("drill.skill-" + drill.skill().key());
    }

    /** Why it comes now, to be said with the marks; empty where it is plain from the drills before. */
    String reason() {
        return reason;
    }

    public String task() {
        return drill.question().task().in(trainer.texts());
    }

    /** How hard it is, in words. */
    public String level() {
        return drill.level().full()
                ? trainer.texts().of("drill.full-level")
                : trainer.texts().of("drill.level", drill.level().value());
    }

    public Drill drill() {
        return drill;
    }

    public Display display() {
        return shownBy;
    }

    public Player player() {
        return run.player();
    }

    public DrillInput answerInput() {
        return input;
    }

    /** The ways in which this drill can be answered; the first needs neither tapping nor paper. */
    public List<Means> waysToAnswer() {
        boolean anyTime = drill.question() instanceof Question.Write write && write.when() == When.ANY_TIME;
        return anyTime ? List.of(Means.TYPED, Means.TAPPED, Means.ON_PAPER) : List.of(Means.TYPED);
    }

    public ObjectProperty<Means> meansProperty() {
        return means;
    }

    /** Where the run stands, without giving anything away. */
    public ReadOnlyStringProperty captionProperty() {
        return caption.getReadOnlyProperty();
    }

    /** Something about lamp or sound that is not as expected; empty most of the time. */
    public ReadOnlyStringProperty remarkProperty() {
        return remark.getReadOnlyProperty();
    }

    /** What somebody asks just now; empty most of the time. */
    public ReadOnlyStringProperty askedProperty() {
        return asked.getReadOnlyProperty();
    }

    /** Whether somebody will ask something, so that room is kept for it. */
    public boolean willBeAsked() {
        return drill.interruption().isPresent();
    }

    /** Whether the run was ever paused or taken back: then it is practice only. */
    public ReadOnlyBooleanProperty freeProperty() {
        return run.freeProperty();
    }

    public ReadOnlyBooleanProperty pausedProperty() {
        return run.pausedProperty();
    }

    /** Whether everything has been sent. */
    public ReadOnlyBooleanProperty endedProperty() {
        return ended.getReadOnlyProperty();
    }

    /** Whether the tapping key is down. */
    public ReadOnlyBooleanProperty tappingProperty() {
        return tapping.getReadOnlyProperty();
    }

    @Override
    public void advanceTo(long nowNanos) {
        run.advanceTo(nowNanos);
        ended.set(run.ended());
        openSheet();
        remark.set(player().remark());
        long positionNanos = player().playback().positionNanos();
        asked.set(drill.interruption()
                .filter(each -> each.at(positionNanos))
                .map(each -> each.question().in(trainer.texts()))
                .orElse(""));
        caption.set(trainer.texts().of(captionKey()));
        player().notScored().ifPresent(reason -> notScored = Optional.of(reason));
    }

    private String captionKey() {
        if (run.paused()) {
            return "drill.caption-paused";
        }
        if (run.ended()) {
            return "drill.caption-ended";
        }
        return player().playback().anyShown() ? "drill.caption-running" : "drill.caption-waiting";
    }

    /** A list that is held in the head, or written on paper, is not written here before the end. */
    private void openSheet() {
        if (input instanceof DrillInput.Sheet sheet && drill.question() instanceof Question.Write write) {
            boolean waits = write.when() == When.AFTERWARDS || means.get() != Means.TYPED;
            sheet.setOpen(!waits || run.ended());
        }
    }

    /** As on the vehicle: everything comes again, and has to be waited for. What was written stays. */
    public void nextSending() {
        taps.clear();
        run.nextSending();
    }

    /** No vehicle can do this; the answer will not be scored. */
    public void pause() {
        run.pauseOrResume();
    }

    /** A few seconds back, which no vehicle can do either. */
    public void goBack() {
        run.goBack();
    }

    /** The tapping key goes down or up, now. */
    public void tap(boolean down) {
        if (means.get() != Means.TAPPED || run.ended() || run.paused()) {
            return;
        }
        if (down) {
            taps.down(run.positionNanos());
        } else {
            taps.up(run.positionNanos());
        }
        tapping.set(taps.isDown());
    }

    /** Puts what the taps read as on the sheet, where it may be corrected. */
    public void readTaps() {
        if (input instanceof DrillInput.Sheet sheet) {
            taps.up(run.positionNanos());
            Reading reading = reading(taps.taps());
            for (SheetColumn column : sheet.sheet().columns()) {
                column.replace(reading.codes().getOrDefault(column.segment(), List.of()));
            }
        }
    }

    /** What taps read as to the decoder, which is told the format as the learner is. */
    Reading reading(List<Interval> tapped) {
        return trainer.tapReader().decode(TapTrack.train(tapped, drill.lampNanos()), List.of(drill.format()));
    }

    /** Gives the answer as it stands: it is kept first, and marked on the next screen. */
    public void answer() {
        if (means.get() == Means.TAPPED && nothingWritten()) {
            readTaps();
        }
        Answer answer = input.answer();
        Marked marked = drill.mark(answer);
        Answered answered =
                new Answered(drill, answer, marked, means.get(), run.sendings(), run.free(), notScored.isPresent());
        Optional<String> trouble = way.record(answered);
        trainer.show(new DrillMarkedScreen(trainer, answered, taps.taps(), new Remarks(notScored, trouble), this));
    }

    /** What is said beside the marks. */
    record Remarks(Optional<String> notScored, Optional<String> notKept) {}

    private boolean nothingWritten() {
        return input.answer() instanceof Answer.Written written
                && written.entries().isEmpty();
    }

    Way way() {
        return way;
    }

    /** The same drill again, from a clean sheet. */
    DrillScreen anew() {
        return new DrillScreen(trainer, drill, agreed, way, reason);
    }

    @Override
    public void back() {
        way.done();
    }

    @Override
    public void leave() {
        player().stop();
    }
}
