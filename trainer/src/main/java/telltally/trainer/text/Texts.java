package telltally.trainer.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/**
 * Texts of one language. A key is {@code area.name}; each area is a properties file of its own beside this class, in
 * UTF-8, whose keys are the names: {@code area.properties} in English, {@code area_de.properties} in German. Texts are
 * patterns of {@link MessageFormat}, an apostrophe is written twice. A literal in code that ends in a dash, such as
 * {@code "words.digit-"}, stands for all keys that begin like it.
 */
public final class Texts {
    /** The languages that every area is complete in; the first is the one to fall back on. */
    public static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    private final Locale language;
    private final Map<String, Properties> areas = new HashMap<>();

    private Texts(Locale language) {
        this.language = language;
    }

    /** In the language asked for, or in English where there is none such. */
    public static Texts in(Locale wanted) {
        for (Locale each : LANGUAGES) {
            if (each.getLanguage().equals(wanted.getLanguage())) {
                return new Texts(each);
            }
        }
        return new Texts(Locale.ENGLISH);
    }

    public Locale language() {
        return language;
    }

    /** @throws IllegalArgumentException if there is no such text */
    public String of(String key, Object... arguments) {
        int dot = key.indexOf('.');
        if (dot < 0) {
            throw new IllegalArgumentException("a key is an area and a name: " + key);
        }
        String pattern = area(key.substring(0, dot)).getProperty(key.substring(dot + 1));
        if (pattern == null) {
            throw new IllegalArgumentException("no text " + key + " in " + language);
        }
        // Most texts take no arguments, and the machinery for those that do is slow to load.
        return pattern.indexOf('{') < 0
                ? pattern.replace("''", "'")
                : new MessageFormat(pattern, language).format(arguments);
    }

    private Properties area(String name) {
        return areas.computeIfAbsent(name, this::read);
    }

    private Properties read(String area) {
        String suffix = language.equals(Locale.ENGLISH) ? "" : "_" + language.getLanguage();
        try (InputStream in = Texts.class.getResourceAsStream(area + suffix + ".properties")) {
            if (in == null) {
                throw new IllegalArgumentException("no texts " + area + " in " + language);
            }
            Properties texts = new Properties();
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
