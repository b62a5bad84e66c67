package telltally.trainer.settings;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Settings of which some were said for this run. They are kept only together with a choice that is made in it.
 *
 * @param language in place of the one that was kept
 * @param textPercent likewise
 */
public record Overridden(SettingsStore kept, Optional<Locale> language, OptionalInt textPercent)
        implements SettingsStore {
    @Override
    public Settings load() {
        Settings settings = kept.load();
        if (language.isPresent()) {
            settings = settings.withLanguage(language);
        }
        return textPercent.isPresent() ? settings.withTextPercent(textPercent.getAsInt()) : settings;
    }

    @Override
    public void save(Settings settings) {
        kept.save(settings);
    }
}
