package telltally.trainer.view;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import telltally.simulator.format.SentGroup;
import telltally.trainer.screen.DrillMarkedScreen;
import telltally.trainer.screen.Timeline;
import telltally.trainer.screen.Timeline.Piece;
import telltally.trainer.screen.Timeline.Verdict;
import telltally.trainer.text.Texts;

/** A timeline of what was sent with the answer under it, and what there is to learn from it. */
final class DrillMarkedPage extends Page {
    /** Bars of a short group are not drawn wider than they would be in one that lasts so long. */
    private static final long SHORTEST_SCALE_NANOS = 12_000_000_000L;

    private final DrillMarkedScreen screen;
    private final Texts texts;
    private final PushButton next;

    DrillMarkedPage(DrillMarkedScreen screen, Texts texts) {
        super(screen.title());
        this.screen = screen;
        this.texts = texts;
        add(Text.of(screen.headline(), "headline", screen.right() ? "all-right" : "some-wrong"));
        screen.remarks().forEach(remark -> add(Text.of(remark, "remark")));
        add(paper());
        screen.tapTiming().ifPresent(timing -> add(Text.of(timing, "reading")));
        if (!screen.mistakes().isEmpty()) {
            add(mistakes());
        }
        next = new PushButton(texts.of("drill.next"), screen::next).styled("primary");
        addFoot(
                next,
                new PushButton(texts.of("drill.replay-all"), screen::replayAll),
                new PushButton(texts.of("drill.same-again"), screen::again),
                new PushButton(texts.of("drill.leave"), screen::done));
        addHint(texts.of("drill.hint-marked"));
    }

    @Override
    void focusFirst() {
        next.requestFocus();
    }

    private VBox mistakes() {
        VBox panel = new VBox();
        panel.getStyleClass().addAll("panel", "cautions");
        screen.mistakes().forEach(mistake -> {
            panel.getChildren().add(Text.of(mistake.name(), "section"));
            mistake.sentences().forEach(sentence -> panel.getChildren().add(Text.of(sentence, "reading")));
        });
        screen.rule().ifPresent(rule -> panel.getChildren().add(Text.of(rule, "quiet")));
        return panel;
    }

    private VBox paper() {
        VBox paper = new VBox();
        paper.getStyleClass().addAll("paper", "marked");
        Label heading = new Label(texts.of("drill.timeline"));
        heading.getStyleClass().add("paper-heading");
        VBox rows = new VBox();
        rows.getStyleClass().add("marked-rows");
        Timeline timeline = screen.timeline();
        long scaleNanos = Math.max(SHORTEST_SCALE_NANOS, timeline.longestNanos());
        for (int i = 0; i < timeline.pieces().size(); i++) {
            Piece piece = timeline.pieces().get(i);
            if (i > 0) {
                rows.getChildren().add(pause(piece));
            }
            rows.getChildren().add(row(piece, scaleNanos));
        }
        paper.getChildren().addAll(heading, rows);
        return paper;
    }

    private Label pause(Piece piece) {
        Label pause = Text.of(texts.of("drill.piece-pause", piece.gapBeforeNanos() / 1e9), "piece-pause");
        pause.setMaxWidth(Double.MAX_VALUE);
        return pause;
    }

    private Node row(Piece piece, long scaleNanos) {
        TimelineStrip strip = new TimelineStrip(piece, scaleNanos, texts);
        HBox.setHgrow(strip, Priority.ALWAYS);
        HBox row = new HBox(tick(piece.verdict()), names(piece), strip);
        row.getStyleClass().add("row-line");
        if (piece.group().isEmpty()) {
            row.getStyleClass().add("still-row");
            row.setAccessibleText(piece.spoken());
            return row;
        }
        RowButton button = new RowButton(row, () -> screen.replay(piece));
        button.setAccessibleText(piece.spoken());
        button.setAccessibleHelp(texts.of("drill.replays"));
        return button;
    }

    /** What was sent over what was written, or what it is where nothing was to be written. */
    private Node names(Piece piece) {
        if (piece.verdict() == Verdict.NONE) {
            VBox names = new VBox(Text.of(piece.name(), "piece-name"));
            names.getStyleClass().add("piece-names");
            return names;
        }
        String sent = piece.group().map(SentGroup::digits).orElse("");
        String written = piece.written().isEmpty() ? "\u2013" : piece.written();
        GridPane codes = new GridPane();
        codes.getStyleClass().addAll("pair", "piece-names");
        codes.addRow(0, label(texts.of("marking.sent"), "pair-label"), label(sent, "code"));
        codes.addRow(
                1,
                label(texts.of("marking.you"), "pair-label"),
                label(written, "code", piece.verdict() == Verdict.RIGHT ? "right" : "wrong"));
        return codes;
    }

    private static Label tick(Verdict verdict) {
        return switch (verdict) {
            case RIGHT -> label("\u2713", "tick", "right");
            case WRONG -> label("\u2717", "tick", "wrong");
            case NONE -> label("", "tick");
        };
    }

    private static Label label(String text, String... styleClasses) {
        Label label = new Label(text);
        label.setMinWidth(Label.USE_PREF_SIZE);
        label.getStyleClass().addAll(styleClasses);
        return label;
    }
}
