package telltally.trainer.view;

import java.util.List;
import java.util.Locale;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import telltally.trainer.text.Texts;

/** Options in a row behind what they are about. One of them is always chosen; arrow keys move the choice. */
final class NamedChoice<E extends Enum<E>> extends FlowPane {
    /** @param key followed by an option's name, small and with dashes, the key of what it is called */
    NamedChoice(ObjectProperty<E> chosen, List<E> options, String about, String key, Texts texts) {
        getStyleClass().add("display-choice");
        getChildren().add(Text.of(about, "small-label"));
        ToggleGroup group = new ToggleGroup();
        for (E option : options) {
            String name = option.name().toLowerCase(Locale.ROOT).replace('_', '-');
            RadioButton button = new RadioButton(texts.of(key + name));
            button.setUserData(option);
            button.setToggleGroup(group);
            button.setSelected(chosen.get() == option);
            button.selectedProperty().addListener((property, before, selected) -> {
                if (selected) {
                    chosen.set(option);
                }
            });
            chosen.addListener((property, before, after) -> {
                if (after == option) {
                    button.setSelected(true);
                }
            });
            getChildren().add(button);
        }
    }
}
