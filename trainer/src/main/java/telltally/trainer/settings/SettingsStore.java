package telltally.trainer.settings;

/** Where settings are kept from one day to the next. */
public interface SettingsStore {
    /** What was saved last; the usual where nothing was, or nothing that can be read. */
    Settings load();

    /** Keeps them. Where that fails they last until the window is closed: nobody is stopped for the sake of a colour. */
    void save(Settings settings);

    /** Keeps nothing beyond this run. */
    static SettingsStore forgetful(Settings begin) {
        return new SettingsStore() {
            @Override
            public Settings load() {
                return begin;
            }

            @Override
            public void save(Settings settings) {}
        };
    }
}
