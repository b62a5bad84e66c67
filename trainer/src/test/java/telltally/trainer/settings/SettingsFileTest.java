package telltally.trainer.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import telltally.simulator.scenario.Display;

class SettingsFileTest {
    private static final Settings CHANGED = new Settings(
            Optional.of(Locale.GERMAN),
            Theme.LIGHT,
            175,
            LampSize.SMALL,
            60,
            Ground.PALE,
            Display.LAMP_AND_SOUNDER,
            Pitch.LOW,
            20,
            ByEar.LEFT_OUT);

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("not there yet").resolve(SettingsFile.NAME);
    }

    @Test
    void what_was_saved_is_there_the_next_day() {
        new SettingsFile(file()).save(CHANGED);

        assertThat(new SettingsFile(file()).load()).isEqualTo(CHANGED);
    }

    @Test
    void saving_leaves_one_file_and_nothing_beside_it() throws IOException {
        new SettingsFile(file()).save(CHANGED);
        new SettingsFile(file()).save(Settings.usual());

        try (Stream<Path> files = Files.list(folder.resolve("not there yet"))) {
            assertThat(files).containsExactly(file());
        }
        assertThat(new SettingsFile(file()).load()).isEqualTo(Settings.usual());
    }

    @Test
    void without_a_file_everything_is_as_usual() {
        assertThat(new SettingsFile(file()).load()).isEqualTo(Settings.usual());
    }

    @Test
    void a_value_that_cannot_be_read_is_taken_for_the_usual_one_and_the_others_stay() throws IOException {
        new SettingsFile(file()).save(CHANGED);
        String spoilt = Files.readString(file())
                .replace("theme=light", "theme=striped")
                .replace("text_percent=175", "text_percent=large");
        Files.writeString(file(), spoilt);

        assertThat(new SettingsFile(file()).load())
                .isEqualTo(CHANGED.withTheme(Settings.usual().theme())
                        .withTextPercent(Settings.usual().textPercent()));
    }

    @Test
    void what_lies_beyond_the_limits_is_taken_for_the_nearer_one() {
        Settings wild = CHANGED.withTextPercent(9000).withLampPercent(0).withLoudnessPercent(-1);

        assertThat(wild.textPercent()).isEqualTo(Settings.MOST_TEXT);
        assertThat(wild.lampPercent()).isEqualTo(Settings.LEAST_LAMP);
        assertThat(wild.loudnessPercent()).isEqualTo(Settings.LEAST_LOUDNESS);
    }

    @Test
    void a_folder_that_cannot_be_written_stops_nobody() throws IOException {
        Path blocked = Files.createFile(folder.resolve("a file"));
        SettingsFile store = new SettingsFile(blocked.resolve(SettingsFile.NAME));
        store.save(CHANGED);

        assertThat(store.load()).isEqualTo(Settings.usual());
    }

    @Test
    void what_is_said_for_this_run_goes_before_what_was_kept() {
        new SettingsFile(file()).save(CHANGED);
        Overridden run = new Overridden(new SettingsFile(file()), Optional.of(Locale.ENGLISH), OptionalInt.of(200));

        assertThat(run.load())
                .isEqualTo(CHANGED.withLanguage(Optional.of(Locale.ENGLISH)).withTextPercent(200));
        assertThat(new SettingsFile(file()).load())
                .as("and is not kept by itself")
                .isEqualTo(CHANGED);
    }
}
