package telltally.trainer.view;

import javafx.beans.property.ObjectProperty;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import telltally.simulator.scenario.Display;
import telltally.trainer.screen.NoticeScreen.Choice;

/** Lamp, sounder or both: one of them is always chosen; arrow keys move the choice. */
final class DisplayChoice extends FlowPane {
    private final ToggleGroup group = new ToggleGroup();
    private final ObjectProperty<Display> choice;

    DisplayChoice(ObjectProperty<Display> choice, Iterable<Choice> choices) {
        this.choice = choice;
        getStyleClass().add("display-choice");
        for (Choice each : choices) {
            getChildren().add(card(each));
        }
        group.selectedToggleProperty().addListener((property, before, after) -> {
            if (after != null) {
                choice.set((Display) after.getUserData());
            }
        });
    }

    void focusChosen() {
        if (group.getSelectedToggle() instanceof RadioButton chosen) {
            chosen.requestFocus();
        }
    }

    private VBox card(Choice each) {
        RadioButton button = new RadioButton(each.title());
        button.setUserData(each.display());
        button.setToggleGroup(group);
        button.setSelected(choice.get() == each.display());
        button.setAccessibleHelp(each.text());
        VBox card = new VBox(button);
        if (!each.text().isEmpty()) {
            card.getChildren().add(Text.of(each.text(), "quiet"));
            card.getStyleClass().add("card");
        }
        card.setOnMouseClicked(event -> button.fire());
        return card;
    }
}
