package telltally.trainer.view;

import javafx.scene.paint.Color;

/**
 * Relative luminance, contrast and red share as the Web Content Accessibility Guidelines define them (w3c/wcag
 * {@code guidelines/terms/20/relative-luminance.html}, {@code general-flash-and-red-flash-thresholds.html}).
 */
final class Luminance {
    private Luminance() {}

    static double of(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    static double contrast(Color one, Color other) {
        double light = Math.max(of(one), of(other));
        double dark = Math.min(of(one), of(other));
        return (light + 0.05) / (dark + 0.05);
    }

    /** R/(R+G+B) of linear values; 0.8 and more is saturated red. */
    static double redShare(Color colour) {
        double red = linear(colour.getRed());
        double sum = red + linear(colour.getGreen()) + linear(colour.getBlue());
        return sum == 0 ? 0 : red / sum;
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
