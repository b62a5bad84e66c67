package telltally.trainer.view;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/** Two regions, the second beside the first where there is room for both, below it where there is not. */
final class SideOrBelow extends Region {
    /** The first needs to be at least so many times as wide as the second would like to be. */
    private static final double FIRST_TO_SECOND = 1.3;

    private static final double GAP_PX = 14;

    private final Region first;
    private final Region second;

    SideOrBelow(Region first, Region second) {
        this.first = first;
        this.second = second;
        getChildren().addAll(first, second);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefWidth(double height) {
        return first.prefWidth(-1) + GAP_PX + second.prefWidth(-1);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        double across = width < 0 ? getWidth() : width;
        double beside = besideWidth(across);
        return beside > 0
                ? Math.max(first.prefHeight(across - beside - GAP_PX), second.prefHeight(beside))
                : first.prefHeight(across) + GAP_PX + second.prefHeight(across);
    }

    @Override
    protected void layoutChildren() {
        double across = getWidth();
        double beside = besideWidth(across);
        if (beside > 0) {
            double left = across - beside - GAP_PX;
            first.resizeRelocate(0, 0, left, getHeight());
            second.resizeRelocate(left + GAP_PX, 0, beside, getHeight());
        } else {
            double top = first.prefHeight(across);
            first.resizeRelocate(0, 0, across, top);
            second.resizeRelocate(0, top + GAP_PX, across, second.prefHeight(across));
        }
    }

    /** How wide the second stands beside the first; 0 where it stands below. */
    private double besideWidth(double across) {
        double wanted = second.prefWidth(-1);
        return across - GAP_PX >= (1 + FIRST_TO_SECOND) * wanted ? wanted : 0;
    }
}
