package telltally.trainer.settings;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import telltally.simulator.scenario.Display;

/**
 * Settings as a properties file in UTF-8. It is replaced as a whole, so that a crash leaves the old or the new one. A
 * value that cannot be read is taken for the usual one; the others stay.
 */
public final class SettingsFile implements SettingsStore {
    /** As it is called in the folder that keeps a learner's data. */
    public static final String NAME = "settings.properties";

    private static final String LANGUAGE = "language";
    private static final String THEME = "theme";
    private static final String TEXT = "text_percent";
    private static final String LAMP_SIZE = "lamp_size";
    private static final String LAMP = "lamp_percent";
    private static final String GROUND = "ground";
    private static final String SHOWN_BY = "shown_by";
    private static final String PITCH = "pitch";
    private static final String LOUDNESS = "loudness_percent";
    private static final String BY_EAR = "by_ear";

    private final Path file;

    /** @param file need not be there yet, nor the folder that it is to lie in */
    public SettingsFile(Path file) {
        this.file = file;
    }

    @Override
    public Settings load() {
        Settings usual = Settings.usual();
        if (!Files.isReadable(file)) {
            return usual;
        }
        Properties read = new Properties();
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            read.load(in);
        } catch (IOException | IllegalArgumentException notReadable) {
            return usual;
        }
        String language = read.getProperty(LANGUAGE, "");
        return new Settings(
                language.isEmpty() ? Optional.empty() : Optional.of(Locale.forLanguageTag(language)),
                choice(read.getProperty(THEME), usual.theme()),
                number(read.getProperty(TEXT), usual.textPercent()),
                choice(read.getProperty(LAMP_SIZE), usual.lampSize()),
                number(read.getProperty(LAMP), usual.lampPercent()),
                choice(read.getProperty(GROUND), usual.ground()),
                display(read.getProperty(SHOWN_BY, ""), usual.shownBy()),
                choice(read.getProperty(PITCH), usual.pitch()),
                number(read.getProperty(LOUDNESS), usual.loudnessPercent()),
                choice(read.getProperty(BY_EAR), usual.byEar()));
    }

    @Override
    public void save(Settings settings) {
        Properties written = new Properties();
        written.setProperty(
                LANGUAGE, settings.language().map(Locale::toLanguageTag).orElse(""));
        written.setProperty(THEME, key(settings.theme()));
        written.setProperty(TEXT, Integer.toString(settings.textPercent()));
        written.setProperty(LAMP_SIZE, key(settings.lampSize()));
        written.setProperty(LAMP, Integer.toString(settings.lampPercent()));
        written.setProperty(GROUND, key(settings.ground()));
        written.setProperty(SHOWN_BY, settings.shownBy().key());
        written.setProperty(PITCH, key(settings.pitch()));
        written.setProperty(LOUDNESS, Integer.toString(settings.loudnessPercent()));
        written.setProperty(BY_EAR, key(settings.byEar()));
        try {
            Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
            Files.createDirectories(folder);
            Path fresh = Files.createTempFile(folder, "settings", ".new");
            try (Writer out = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
                written.store(out, null);
            }
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException notKept) {
            // As the port says: the choice holds for this run.
        }
    }

    private static String key(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static <E extends Enum<E>> E choice(@Nullable String text, E usual) {
        if (text != null) {
            for (E each : usual.getDeclaringClass().getEnumConstants()) {
                if (key(each).equals(text)) {
                    return each;
                }
            }
        }
        return usual;
    }

    private static Display display(String text, Display usual) {
        for (Display each : Display.values()) {
            if (each.key().equals(text)) {
                return each;
            }
        }
        return usual;
    }

    private static int number(@Nullable String text, int usual) {
        try {
            return text == null ? usual : Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            return usual;
        }
    }
}
