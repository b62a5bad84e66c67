package telltally.trainer.view;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import telltally.trainer.screen.Timeline.Pause;

/** A dark as a thin line over time, with its length in words. */
final class PauseStrip extends Region {
    private static final double LINE_PX = 1;

    private final long lengthNanos;
    private final long scaleNanos;
    private final Region ends = new Region();
    private final Region middle = new Region();
    private final Label told;

    /** @param scaleNanos how long the whole width lasts; what is longer is cut */
    PauseStrip(Pause pause, long scaleNanos) {
        this.lengthNanos = pause.lengthNanos();
        this.scaleNanos = scaleNanos;
        told = new Label(pause.told());
        told.getStyleClass().add("piece-pause");
        ends.getStyleClass().add("pause-line");
        if (lengthNanos > scaleNanos) {
            ends.getStyleClass().add("cut");
        }
        middle.getStyleClass().add("pause-middle");
        getChildren().addAll(ends, middle, told);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefHeight(double width) {
        return told.prefHeight(-1);
    }

    @Override
    protected void layoutChildren() {
        double high = told.prefHeight(-1);
        double line = Math.min(getWidth(), getWidth() * lengthNanos / scaleNanos);
        double words = told.prefWidth(-1);
        ends.resizeRelocate(0, high / 4, line, high / 2);
        middle.resizeRelocate(0, (high - LINE_PX) / 2, line, LINE_PX);
        // On the line where it is long enough, behind it otherwise.
        double left = words < line ? (line - words) / 2 : Math.min(line, getWidth() - words);
        told.resizeRelocate(Math.max(0, left), 0, words, high);
    }
}
