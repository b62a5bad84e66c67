package telltally.trainer.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.DrillInput;
import telltally.trainer.text.Texts;

/** What there is to choose, each with the number that chooses it. */
final class OptionList extends VBox {
    private final List<RadioButton> buttons = new ArrayList<>();
    private final Runnable answer;

    /** @param answer what Enter does once something is chosen */
    OptionList(DrillInput.Choice choice, Texts texts, Runnable answer) {
        this.answer = answer;
        getStyleClass().add("options");
        ToggleGroup group = new ToggleGroup();
        for (int i = 0; i < choice.options().size(); i++) {
            String text =
                    texts.of("drill.option-spoken", i + 1, choice.options().get(i));
            RadioButton button = new RadioButton(text);
            button.setWrapText(true);
            button.setMinHeight(RadioButton.USE_PREF_SIZE);
            button.setToggleGroup(group);
            int place = i;
            button.selectedProperty().addListener((property, before, selected) -> {
                if (selected) {
                    choice.chosenProperty().set(place);
                }
            });
            buttons.add(button);
            getChildren().add(button);
        }
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    Node first() {
        return buttons.get(0);
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            answer.run();
            event.consume();
        } else if (event.getText().matches("[1-9]") && Integer.parseInt(event.getText()) <= buttons.size()) {
            RadioButton button = buttons.get(Integer.parseInt(event.getText()) - 1);
            button.setSelected(true);
            button.requestFocus();
            event.consume();
        }
    }
}
