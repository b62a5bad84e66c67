package telltally.trainer.text;

import java.text.MessageFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * Texts of one language. A key is {@code area.name}; each area is a resource bundle of its own beside this class, in
 * UTF-8, whose keys are the names. Texts are patterns of {@link MessageFormat}, an apostrophe is written twice.
 */
public final class Texts {
    /** The languages that every area is complete in; the first is the one to fall back on. */
    public static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    private final Locale language;
    private final Map<String, ResourceBundle> areas = new HashMap<>();

    private Texts(Locale language) {
        this.language = language;
    }

    /** In the language asked for, or in English where there is none such. */
    public static Texts in(Locale wanted) {
        return new Texts(LANGUAGES.stream()
                .filter(each -> each.getLanguage().equals(wanted.getLanguage()))
                .findFirst()
                .orElse(Locale.ENGLISH));
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
        try {
            String pattern = area(key.substring(0, dot)).getString(key.substring(dot + 1));
            return new MessageFormat(pattern, language).format(arguments);
        } catch (MissingResourceException e) {
            throw new IllegalArgumentException("no text " + key + " in " + language, e);
        }
    }

    private ResourceBundle area(String name) {
        // English stands in files without a language in their name.
        return areas.computeIfAbsent(
                name,
                each -> ResourceBundle.getBundle(
                        Texts.class.getPackageName() + "." + each,
                        language,
                        Texts.class.getClassLoader(),
                        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
    }
}
