package telltally.trainer.view;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How the window is opened.
 *
 * @param lessonsFolder lessons of the instructor's own, beside those that ship
 * @param startLesson the id of the lesson to begin with
 * @param textScale how large text is, from 0.75 to 3; what lies beyond is taken for the nearer end
 * @param language of the window; English where there are no texts in it
 * @param seed for runs that can be repeated; without it every run waits differently for the first flash
 */
public record TrainerSettings(
        Optional<Path> lessonsFolder,
        Optional<String> startLesson,
        double textScale,
        Locale language,
        OptionalLong seed) {
    /** The system property that makes text larger where nothing else is said. */
    public static final String TEXT_SCALE = "telltally.textScale";

    private static final double SMALLEST = 0.75;
    private static final double LARGEST = 3;

    public TrainerSettings {
        textScale = Math.max(SMALLEST, Math.min(LARGEST, textScale));
    }

    /** The shipped lessons, chosen from a list. */
    public static TrainerSettings usual() {
        return new TrainerSettings(
                Optional.empty(), Optional.empty(), usualTextScale(), Locale.getDefault(), OptionalLong.empty());
    }

    /** What {@link #TEXT_SCALE} says; 1 where it says nothing that can be read. */
    public static double usualTextScale() {
        try {
            return Double.parseDouble(System.getProperty(TEXT_SCALE, "1"));
        } catch (NumberFormatException e) {
            return 1;
        }
    }
}
