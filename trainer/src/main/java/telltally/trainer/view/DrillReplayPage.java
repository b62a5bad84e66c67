package telltally.trainer.view;

import java.util.Locale;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.DrillReplayScreen;
import telltally.trainer.screen.DrillReplayScreen.Pace;
import telltally.trainer.text.Texts;

/** A drill's flashes again with a running count, slower if wanted. */
final class DrillReplayPage extends Page {
    private final DrillReplayScreen screen;
    private final Texts texts;
    private final StackPane place = new StackPane();
    private final PushButton again;

    DrillReplayPage(DrillReplayScreen screen, Texts texts) {
        super(screen.title());
        this.screen = screen;
        this.texts = texts;
        stayInSight(place);
        mountDisplay();
        screen.playerProperty().addListener(change -> mountDisplay());
        Label count = new Label();
        count.getStyleClass().add("big-count");
        count.textProperty().bind(screen.countProperty());
        Label digits = new Label();
        digits.getStyleClass().add("digits-so-far");
        digits.textProperty().bind(screen.digitsProperty());
        Label caption = Text.of("", "reading");
        caption.textProperty().bind(screen.captionProperty());
        HBox tally = new HBox(count, new TallyMarks(screen.countProperty()));
        tally.getStyleClass().add("tally");
        VBox counts = new VBox(
                Text.of(texts.of("replay.this-digit"), "paper-heading"),
                tally,
                Text.of(texts.of("replay.so-far"), "paper-heading"),
                digits,
                caption);
        counts.getStyleClass().addAll("paper", "counts");
        add(paces(), counts);
        again = new PushButton(texts.of("replay.again"), screen::again).styled("primary");
        addFoot(again, new PushButton(texts.of("replay.back"), screen::back));
        addHint(texts.of("replay.hint"));
    }

    @Override
    void focusFirst() {
        again.requestFocus();
    }

    private void mountDisplay() {
        place.getChildren()
                .setAll(new SignalPlate(
                        screen.playerProperty().get(),
                        new SimpleStringProperty(texts.of("replay.count-along")),
                        texts));
    }

    private FlowPane paces() {
        FlowPane paces = new FlowPane(Text.of(texts.of("drill.pace"), "small-label"));
        paces.getStyleClass().add("display-choice");
        ToggleGroup group = new ToggleGroup();
        for (Pace pace : Pace.values()) {
            String name = pace.name().toLowerCase(Locale.ROOT).replace('_', '-');
            RadioButton button = new RadioButton(texts.of("drill.pace-" + name));
            button.setUserData(pace);
            button.setToggleGroup(group);
            button.setSelected(screen.paceProperty().get() == pace);
            paces.getChildren().add(button);
        }
        group.selectedToggleProperty().addListener((property, before, after) -> {
            if (after != null) {
                screen.paceProperty().set((Pace) after.getUserData());
            }
        });
        return paces;
    }
}
