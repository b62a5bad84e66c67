package telltally.trainer.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import telltally.trainer.screen.Timeline.Bar;
import telltally.trainer.screen.Timeline.Digit;
import telltally.trainer.screen.Timeline.Look;
import telltally.trainer.screen.Timeline.Piece;
import telltally.trainer.text.Texts;

/** The flashes of one group as bars over time, the learner's taps below them, and digit under digit. */
final class TimelineStrip extends Region {
    private static final double BARS_TOP_EM = 0.95;
    private static final double BARS_EM = 1.1;
    private static final double TAPS_EM = 0.5;
    private static final double DIGITS_EM = 1.5;
    private static final double LEAST_PX = 2;

    private final Piece piece;
    private final long scaleNanos;
    private final List<Placed> placed = new ArrayList<>();
    private final Label font = new Label("0");

    /** Something at a stretch of time; words are centred on it. */
    private record Placed(Region node, long startNanos, long endNanos, double topEm, double heightEm) {}

    /** @param scaleNanos how long the whole width lasts */
    TimelineStrip(Piece piece, long scaleNanos, Texts texts) {
        this.piece = piece;
        this.scaleNanos = scaleNanos;
        getStyleClass().add("timeline-strip");
        font.setVisible(false);
        getChildren().add(font);
        for (Bar bar : piece.bars()) {
            place(block("bar", style(bar.look())), bar.startNanos(), bar.endNanos(), BARS_TOP_EM, BARS_EM);
            if (bar.look() != Look.SEEN) {
                String key = bar.look() == Look.MISSED ? "drill.piece-missed" : "drill.piece-ghost";
                place(words(texts.of(key), "bar-remark"), bar.startNanos(), bar.endNanos(), 0, 0);
            }
        }
        double belowEm = BARS_TOP_EM + BARS_EM + 0.15;
        for (Bar tap : piece.taps()) {
            place(block("bar", "bar-tap"), tap.startNanos(), tap.endNanos(), belowEm, TAPS_EM);
        }
        double digitsEm = piece.taps().isEmpty() ? belowEm : belowEm + TAPS_EM;
        for (Digit digit : piece.digits()) {
            boolean wrong = !digit.written().isEmpty() && !digit.right();
            String text = wrong ? digit.sent() + " \u2260 " + digit.written() : digit.sent();
            place(words(text, wrong ? "digit-wrong" : "digit-sent"), digit.startNanos(), digit.endNanos(), digitsEm, 0);
        }
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 20 * em();
    }

    @Override
    protected double computePrefHeight(double width) {
        double taps = piece.taps().isEmpty() ? 0 : TAPS_EM;
        double digits = piece.digits().isEmpty() ? 0 : DIGITS_EM;
        return (BARS_TOP_EM + BARS_EM + 0.25 + taps + digits) * em();
    }

    @Override
    protected void layoutChildren() {
        double em = em();
        double perNano = getWidth() / scaleNanos;
        for (Placed each : placed) {
            double from = (each.startNanos() - piece.startNanos()) * perNano;
            double to = (each.endNanos() - piece.startNanos()) * perNano;
            if (each.node() instanceof Label) {
                double width = each.node().prefWidth(-1);
                double left = Math.max(0, Math.min(getWidth() - width, (from + to - width) / 2));
                each.node()
                        .resizeRelocate(
                                left, each.topEm() * em, width, each.node().prefHeight(-1));
            } else {
                double width = Math.max(LEAST_PX, to - from);
                each.node().resizeRelocate(from, each.topEm() * em, width, each.heightEm() * em);
            }
        }
    }

    private double em() {
        return font.getFont().getSize();
    }

    private void place(Region node, long startNanos, long endNanos, double topEm, double heightEm) {
        placed.add(new Placed(node, startNanos, endNanos, topEm, heightEm));
        node.setManaged(false);
        getChildren().add(node);
    }

    private static Region block(String... styleClasses) {
        Region block = new Region();
        block.getStyleClass().addAll(styleClasses);
        return block;
    }

    private static Label words(String text, String styleClass) {
        Label label = new Label(text);
        label.getStyleClass().add(styleClass);
        return label;
    }

    private static String style(Look look) {
        return switch (look) {
            case SEEN -> "bar-seen";
            case MISSED -> "bar-missed";
            case GHOST -> "bar-ghost";
        };
    }
}
