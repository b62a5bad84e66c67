package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import telltally.simulator.scenario.Display;
import telltally.trainer.settings.ByEar;
import telltally.trainer.settings.Ground;
import telltally.trainer.settings.LampSize;
import telltally.trainer.settings.Pitch;
import telltally.trainer.settings.Settings;
import telltally.trainer.settings.Theme;
import telltally.trainer.text.Texts;

/** Everything that can be set; a choice holds at once. */
public final class SettingsScreen implements Screen {
    private final Trainer trainer;
    private final Screen from;
    private int changed;

    SettingsScreen(Trainer trainer, Screen from) {
        this.trainer = trainer;
        this.from = from;
    }

    /** Something that can be set, with all it can be set to; one option is chosen at most. */
    public record Group(String title, List<Option> options) {
        public Group {
            options = List.copyOf(options);
        }
    }

    /** @param outcome all settings as they are after the choice */
    public record Option(String title, boolean chosen, Settings outcome) {}

    @Override
    public String title() {
        return texts().of("settings.title");
    }

    public List<Group> groups() {
        Settings now = trainer.settings();
        return List.of(
                language(now),
                group("settings.theme", enumeration("settings.theme-", Theme.values(), now.theme(), now::withTheme)),
                group("settings.text", percents(Settings.TEXT_PERCENTS, now.textPercent(), now::withTextPercent)),
                group("settings.shown-by", displays(now)),
                group(
                        "settings.size",
                        enumeration("settings.size-", LampSize.values(), now.lampSize(), now::withLampSize)),
                group("settings.brightness", percents(Settings.LAMP_PERCENTS, now.lampPercent(), now::withLampPercent)),
                group(
                        "settings.ground",
                        enumeration("settings.ground-", Ground.values(), now.ground(), now::withGround)),
                group("settings.pitch", enumeration("settings.pitch-", Pitch.values(), now.pitch(), now::withPitch)),
                group(
                        "settings.loudness",
                        percents(Settings.LOUDNESS_PERCENTS, now.loudnessPercent(), now::withLoudnessPercent)),
                group("settings.by-ear", enumeration("settings.by-ear-", ByEar.values(), now.byEar(), now::withByEar)));
    }

    public Settings settings() {
        return trainer.settings();
    }

    /** The group that was changed last, from 0: where the keyboard stays when the page is drawn anew. */
    public int changed() {
        return changed;
    }

    /** @param group its place among the groups */
    public void choose(int group, Option option) {
        changed = group;
        trainer.change(option.outcome());
    }

    @Override
    public void back() {
        if (from instanceof NoticeScreen) {
            // Its choice begins with what is set.
            trainer.notice();
        } else {
            trainer.show(from);
        }
    }

    private Texts texts() {
        return trainer.texts();
    }

    private Group group(String key, List<Option> options) {
        return new Group(texts().of(key), options);
    }

    private Group language(Settings now) {
        List<Option> options = new ArrayList<>();
        options.add(new Option(
                texts().of("settings.language-system"), now.language().isEmpty(), now.withLanguage(Optional.empty())));
        for (Locale each : Texts.LANGUAGES) {
            // Each language is called by its own name, to be found by those who read no other.
            options.add(new Option(
                    Texts.in(each).of("settings.language-own-name"),
                    now.language().equals(Optional.of(each)),
                    now.withLanguage(Optional.of(each))));
        }
        return group("settings.language", options);
    }

    private List<Option> displays(Settings now) {
        DisplayNames names = new DisplayNames(texts());
        return Stream.of(Display.values())
                .map(each -> new Option(names.of(each), now.shownBy() == each, now.withShownBy(each)))
                .toList();
    }

    private <E extends Enum<E>> List<Option> enumeration(
            String prefix, E[] all, E chosen, Function<E, Settings> outcome) {
        List<Option> options = new ArrayList<>();
        for (E each : all) {
            String name = texts().of(prefix + LearnersScreen.key(each.name()));
            options.add(new Option(name, each == chosen, outcome.apply(each)));
        }
        return options;
    }

    private List<Option> percents(List<Integer> offered, int chosen, Function<Integer, Settings> outcome) {
        return offered.stream()
                .map(each -> new Option(texts().of("settings.percent", each), each == chosen, outcome.apply(each)))
                .toList();
    }
}
