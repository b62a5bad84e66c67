package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.Interval;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Mistake;
import telltally.trainer.lesson.Slip;
import telltally.trainer.text.Texts;

/** What was sent with the learner's answer under it, and every error named and explained. */
public final class DrillMarkedScreen implements Screen {
    private final Trainer trainer;
    private final Answered answered;
    private final List<Interval> taps;
    private final DrillScreen.Remarks remarks;
    private final DrillScreen from;
    private final Texts texts;
    private final Timeline timeline;

    DrillMarkedScreen(
            Trainer trainer, Answered answered, List<Interval> taps, DrillScreen.Remarks remarks, DrillScreen from) {
        this.trainer = trainer;
        this.answered = answered;
        this.taps = List.copyOf(taps);
        this.remarks = remarks;
        this.from = from;
        this.texts = trainer.texts();
        this.timeline = new TimelineMaker(texts, answered.drill(), answered.marked(), taps).timeline();
    }

    /** Errors of one kind: what it is called, and for each what was sent and what was made of it. */
    public record Told(String name, List<String> sentences) {
        public Told {
            sentences = List.copyOf(sentences);
        }
    }

    @Override
    public String title() {
        return from.title();
    }

    /** How it went, in one line. */
    public String headline() {
        if (answered.marked().right()) {
            return texts.of("drill.right");
        }
        return texts.of("drill.wrong", answered.marked().mistakes().size());
    }

    public boolean right() {
        return answered.marked().right();
    }

    /** Why this answer does not count, or was not kept. */
    public List<String> remarks() {
        List<String> said = new ArrayList<>();
        remarks.notScored().ifPresent(said::add);
        if (answered.free()) {
            said.add(texts.of("drill.not-scored-free"));
        }
        remarks.notKept().ifPresent(said::add);
        return said;
    }

    /** Why the drill came when it did, where that is not plain: said only now, since it may name the answer. */
    public String reason() {
        return from.reason();
    }

    public Timeline timeline() {
        return timeline;
    }

    public List<Told> mistakes() {
        Map<String, List<String>> told = new LinkedHashMap<>();
        for (Mistake mistake : answered.marked().mistakes()) {
            Named named = named(mistake);
            told.computeIfAbsent(named.name(), key -> new ArrayList<>()).add(named.sentence());
        }
        return told.entrySet().stream()
                .map(each -> new Told(each.getKey(), each.getValue()))
                .toList();
    }

    private record Named(String name, String sentence) {}

    /** What there is to know about the skill, and how codes are numbered; said where something was wrong. */
    public List<String> rules() {
        if (right()) {
            return List.of();
        }
        String rule = texts.of("drill.why-" + drill().skill().key());
        return Stream.concat(Stream.of(rule), trainer.library().notes(drill()).stream())
                .toList();
    }

    /** What the taps read as, and how far they were from the flashes; empty where nothing was tapped. */
    public List<String> tapped() {
        if (answered.means() != Means.TAPPED || taps.isEmpty()) {
            return List.of();
        }
        List<String> codes = from.reading(taps).codes().values().stream()
                .flatMap(List::stream)
                .toList();
        String read = codes.isEmpty()
                ? texts.of("drill.taps-unread")
                : texts.of("drill.taps-read-as", String.join(", ", codes));
        return List.of(read, timing());
    }

    private String timing() {
        TapTiming timing = TapTiming.of(drill().pulses(), taps);
        return texts.of(
                "drill.tap-timing",
                timing.taps(),
                timing.flashes(),
                timing.meanLateNanos() / 1_000_000,
                timing.spreadNanos() / 1_000_000);
    }

    private Named named(Mistake mistake) {
        if (mistake instanceof Mistake.InWriting writing) {
            Slip slip = writing.slip();
            return new Named(capital(slip.title(texts)), slip.sentence(texts));
        }
        if (mistake instanceof Mistake.WrittenLate late) {
            return new Named(texts.of("drill.late"), texts.of("drill.late-told", late.code()));
        }
        if (mistake instanceof Mistake.WrongChoice wrong) {
            return new Named(
                    texts.of("drill.wrong-choice"),
                    texts.of(
                            "drill.wrong-choice-told",
                            wrong.chosen().in(texts),
                            wrong.right().in(texts)));
        }
        if (mistake instanceof Mistake.WrongNumber wrong) {
            return new Named(
                    texts.of("drill.wrong-number"), texts.of("drill.wrong-number-told", wrong.given(), wrong.right()));
        }
        return new Named(texts.of("drill.no-answer"), texts.of("drill.no-answer-told"));
    }

    private String capital(String text) {
        return text.substring(0, 1).toUpperCase(texts.language()) + text.substring(1);
    }

    /** One group again, with a running count. */
    public void replay(Timeline.Piece piece) {
        piece.group().ifPresent(group -> replay(Optional.of(group)));
    }

    /** All of it again, with a running count. */
    public void replayAll() {
        replay(Optional.empty());
    }

    private void replay(Optional<SentGroup> only) {
        trainer.show(new ReplayScreen(trainer, this, Showing.of(drill(), from.display()), only));
    }

    public void next() {
        from.way().next();
    }

    /** The same drill once more, from a clean sheet. */
    public void again() {
        trainer.show(from.anew());
    }

    public void done() {
        from.way().done();
    }

    @Override
    public void back() {
        done();
    }

    Drill drill() {
        return answered.drill();
    }
}
