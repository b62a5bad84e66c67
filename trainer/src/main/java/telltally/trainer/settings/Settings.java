package telltally.trainer.settings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import telltally.simulator.scenario.Display;

/**
 * Everything that can be set.
 *
 * @param language of the window; empty for that of the system
 * @param textPercent size of all text, 75 to 300
 * @param lampPercent how bright the signal is at its brightest, 30 to 100
 * @param shownBy how flashes are perceived unless a lesson asks for something else
 * @param loudnessPercent of the sounder, 10 to 100
 * @param byEar whether counting by ear is proposed
 */
public record Settings(
        Optional<Locale> language,
        Theme theme,
        int textPercent,
        LampSize lampSize,
        int lampPercent,
        Ground ground,
        Display shownBy,
        Pitch pitch,
        int loudnessPercent,
        ByEar byEar) {
    public static final int LEAST_TEXT = 75;
    public static final int MOST_TEXT = 300;
    public static final int LEAST_LAMP = 30;
    public static final int LEAST_LOUDNESS = 10;

    /** What the screen offers; a file or the command line may say what lies between. */
    public static final List<Integer> TEXT_PERCENTS = List.of(100, 125, 150, 175, 200);

    public static final List<Integer> LAMP_PERCENTS = List.of(40, 60, 80, 100);
    public static final List<Integer> LOUDNESS_PERCENTS = List.of(10, 20, 40, 80);

    private static final Settings USUAL = new Settings(
            Optional.empty(),
            Theme.DARK,
            100,
            LampSize.LARGE,
            100,
            Ground.PLATE,
            Display.LAMP,
            Pitch.MIDDLE,
            40,
            ByEar.PRACTISED);

    /** What lies beyond the limits is taken for the nearer one. */
    public Settings {
        textPercent = Math.max(LEAST_TEXT, Math.min(MOST_TEXT, textPercent));
        lampPercent = Math.max(LEAST_LAMP, Math.min(100, lampPercent));
        loudnessPercent = Math.max(LEAST_LOUDNESS, Math.min(100, loudnessPercent));
    }

    /** Before anybody has changed anything. */
    public static Settings usual() {
        return USUAL;
    }

    public Settings withLanguage(Optional<Locale> other) {
        return new Settings(
                other, theme, textPercent, lampSize, lampPercent, ground, shownBy, pitch, loudnessPercent, byEar);
    }

    public Settings withTheme(Theme other) {
        return new Settings(
                language, other, textPercent, lampSize, lampPercent, ground, shownBy, pitch, loudnessPercent, byEar);
    }

    public Settings withTextPercent(int other) {
        return new Settings(
                language, theme, other, lampSize, lampPercent, ground, shownBy, pitch, loudnessPercent, byEar);
    }

    public Settings withLampSize(LampSize other) {
        return new Settings(
                language, theme, textPercent, other, lampPercent, ground, shownBy, pitch, loudnessPercent, byEar);
    }

    public Settings withLampPercent(int other) {
        return new Settings(
                language, theme, textPercent, lampSize, other, ground, shownBy, pitch, loudnessPercent, byEar);
    }

    public Settings withGround(Ground other) {
        return new Settings(
                language, theme, textPercent, lampSize, lampPercent, other, shownBy, pitch, loudnessPercent, byEar);
    }

    public Settings withShownBy(Display other) {
        return new Settings(
                language, theme, textPercent, lampSize, lampPercent, ground, other, pitch, loudnessPercent, byEar);
    }

    public Settings withPitch(Pitch other) {
        return new Settings(
                language, theme, textPercent, lampSize, lampPercent, ground, shownBy, other, loudnessPercent, byEar);
    }

    public Settings withLoudnessPercent(int other) {
        return new Settings(language, theme, textPercent, lampSize, lampPercent, ground, shownBy, pitch, other, byEar);
    }

    public Settings withByEar(ByEar other) {
        return new Settings(
                language, theme, textPercent, lampSize, lampPercent, ground, shownBy, pitch, loudnessPercent, other);
    }
}
