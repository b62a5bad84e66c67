package telltally.trainer.view;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.SettingsScreen;
import telltally.trainer.screen.SettingsScreen.Group;
import telltally.trainer.screen.SettingsScreen.Option;
import telltally.trainer.text.Texts;

/** A row of choices for each thing that can be set. */
final class SettingsPage extends Page {
    private final List<ToggleGroup> groups = new ArrayList<>();
    private final SettingsScreen screen;

    SettingsPage(SettingsScreen screen, Texts texts) {
        super(screen.title());
        this.screen = screen;
        VBox rows = new VBox();
        rows.getStyleClass().addAll("panel", "settings");
        for (Group group : screen.groups()) {
            rows.getChildren().add(row(group, groups.size(), texts));
        }
        stayInSight(new SignalPlate(
                screen.settings().shownBy(),
                new SimpleDoubleProperty(1),
                screen.settings(),
                new SimpleStringProperty(texts.of("settings.preview")),
                texts));
        add(rows);
        addFoot(new PushButton(texts.of("settings.back"), screen::back).styled("primary"));
        addHint(texts.of("settings.hint"));
    }

    @Override
    void focusFirst() {
        RadioButton wanted = begin(groups.get(screen.changed()));
        wanted.requestFocus();
        revealLater(wanted);
    }

    /** The one that is chosen, or the first where none is. */
    private static RadioButton begin(ToggleGroup group) {
        return (RadioButton)
                (group.getSelectedToggle() == null ? group.getToggles().get(0) : group.getSelectedToggle());
    }

    private VBox row(Group group, int index, Texts texts) {
        ToggleGroup toggles = new ToggleGroup();
        groups.add(toggles);
        FlowPane options = new FlowPane();
        options.getStyleClass().add("display-choice");
        for (Option option : group.options()) {
            RadioButton button = new RadioButton(option.title());
            button.setToggleGroup(toggles);
            button.setSelected(option.chosen());
            // The name alone would not say what it is that is set.
            button.setAccessibleText(texts.of("settings.chosen", group.title(), option.title()));
            button.selectedProperty().addListener((property, before, chosen) -> {
                if (chosen) {
                    screen.choose(index, option);
                }
            });
            options.getChildren().add(button);
        }
        // Tab goes from row to row, arrow keys within one.
        toggles.getToggles().forEach(each -> ((RadioButton) each).setFocusTraversable(each == begin(toggles)));
        VBox row = new VBox(Text.of(group.title(), "small-label"), options);
        row.getStyleClass().add("setting");
        return row;
    }
}
