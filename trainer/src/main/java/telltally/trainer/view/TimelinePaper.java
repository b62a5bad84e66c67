package telltally.trainer.view;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import telltally.simulator.format.SentGroup;
import telltally.trainer.screen.Timeline;
import telltally.trainer.screen.Timeline.Pause;
import telltally.trainer.screen.Timeline.Piece;
import telltally.trainer.screen.Timeline.Verdict;
import telltally.trainer.text.Texts;

/** Group by group what was sent, the darks between, and the answer under it; all to one scale of time. */
final class TimelinePaper extends VBox {
    /** Bars of a short group are not drawn wider than they would be in one that lasts so long. */
    private static final long SHORTEST_SCALE_NANOS = 12_000_000_000L;

    private final Consumer<Piece> replay;
    private final Texts texts;
    private final long scaleNanos;

    /** @param replay shows one group again */
    TimelinePaper(Timeline timeline, String about, Consumer<Piece> replay, Texts texts) {
        this.replay = replay;
        this.texts = texts;
        this.scaleNanos = Math.max(SHORTEST_SCALE_NANOS, timeline.longestNanos());
        getStyleClass().addAll("paper", "marked");
        Label heading = new Label(about);
        heading.getStyleClass().add("paper-heading");
        VBox rows = new VBox();
        rows.getStyleClass().add("marked-rows");
        timeline.pieces().forEach(piece -> {
            piece.before().ifPresent(pause -> rows.getChildren().add(row(pause)));
            rows.getChildren().add(row(piece));
        });
        getChildren().addAll(heading, rows);
    }

    /** Begins where the flashes begin. */
    private Node row(Pause pause) {
        Region noName = new Region();
        noName.getStyleClass().add("piece-names");
        PauseStrip strip = new PauseStrip(pause, scaleNanos);
        HBox.setHgrow(strip, Priority.ALWAYS);
        HBox row = new HBox(tick(Verdict.NONE), noName, strip);
        row.getStyleClass().add("pause-row");
        return row;
    }

    private Node row(Piece piece) {
        TimelineStrip strip = new TimelineStrip(piece, scaleNanos, texts);
        HBox.setHgrow(strip, Priority.ALWAYS);
        HBox row = new HBox(tick(piece.verdict()), names(piece), strip);
        row.getStyleClass().add("row-line");
        if (piece.group().isEmpty()) {
            row.getStyleClass().add("still-row");
            row.setAccessibleText(piece.spoken());
            return row;
        }
        RowButton button = new RowButton(row, () -> replay.accept(piece));
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
        GridPane codes = new GridPane();
        codes.getStyleClass().addAll("pair", "piece-names");
        codes.addRow(
                0,
                label(texts.of("marking.sent"), "pair-label"),
                label(orDash(piece.group().map(SentGroup::digits).orElse("")), "code"));
        codes.addRow(
                1,
                label(texts.of("marking.you"), "pair-label"),
                label(orDash(piece.written()), "code", piece.verdict() == Verdict.RIGHT ? "right" : "wrong"));
        return codes;
    }

    private static String orDash(String code) {
        return code.isEmpty() ? "\u2013" : code;
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
