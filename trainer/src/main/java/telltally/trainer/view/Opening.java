package telltally.trainer.view;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalLong;
import telltally.trainer.settings.SettingsStore;

/**
 * How the window is opened.
 *
 * @param lessonsFolder lessons of the instructor's own, beside those that ship
 * @param startLesson the id of the lesson to begin with
 * @param settings what the learner has chosen before
 * @param seed for runs that can be repeated; without it every run waits differently for the first flash
 * @param dataFolder where the logbook is kept
 * @param program version of Telltally
 */
public record Opening(
        Optional<Path> lessonsFolder,
        Optional<String> startLesson,
        SettingsStore settings,
        OptionalLong seed,
        Path dataFolder,
        String program) {}
