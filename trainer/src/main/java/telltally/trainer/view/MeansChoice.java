package telltally.trainer.view;

import java.util.Locale;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.screen.DrillScreen;
import telltally.trainer.text.Texts;

/** Typed, tapped or on paper: one of them is always chosen; arrow keys move the choice. */
final class MeansChoice extends FlowPane {
    MeansChoice(DrillScreen screen, Texts texts) {
        getStyleClass().add("display-choice");
        getChildren().add(Text.of(texts.of("drill.how-to-answer"), "small-label"));
        ToggleGroup group = new ToggleGroup();
        for (Means means : screen.waysToAnswer()) {
            String name = means.name().toLowerCase(Locale.ROOT).replace('_', '-');
            RadioButton button = new RadioButton(texts.of("drill.means-" + name));
            button.setUserData(means);
            button.setToggleGroup(group);
            button.setSelected(screen.meansProperty().get() == means);
            getChildren().add(button);
            screen.meansProperty().addListener((property, before, after) -> {
                if (after == means) {
                    button.setSelected(true);
                }
            });
        }
        group.selectedToggleProperty().addListener((property, before, after) -> {
            if (after != null) {
                screen.meansProperty().set((Means) after.getUserData());
            }
        });
    }
}
