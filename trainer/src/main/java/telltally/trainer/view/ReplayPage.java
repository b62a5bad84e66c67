package telltally.trainer.view;

import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.ReplayScreen;
import telltally.trainer.screen.ReplayScreen.Pace;
import telltally.trainer.text.Texts;

/** The flashes again with a running count, slower if wanted. */
final class ReplayPage extends Page {
    private final ReplayScreen screen;
    private final Texts texts;
    private final StackPane place = new StackPane();
    private final PushButton again;

    ReplayPage(ReplayScreen screen, Texts texts) {
        super(screen.title());
        this.screen = screen;
        this.texts = texts;
        stayInSight(place);
        mountDisplay();
        screen.playerProperty().addListener(change -> mountDisplay());
        add(
                new NamedChoice<>(
                        screen.paceProperty(), List.of(Pace.values()), texts.of("replay.pace"), "replay.pace-", texts),
                counts());
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
                        screen.player(), new SimpleStringProperty(texts.of("replay.count-along")), texts));
    }

    private VBox counts() {
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
        return counts;
    }
}
