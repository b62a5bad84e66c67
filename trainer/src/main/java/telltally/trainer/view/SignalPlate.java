package telltally.trainer.view;

import java.util.Locale;
import javafx.beans.binding.DoubleBinding;
import javafx.beans.value.ObservableDoubleValue;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import telltally.simulator.scenario.Display;
import telltally.trainer.screen.Player;
import telltally.trainer.settings.Settings;
import telltally.trainer.text.Texts;

/** The plate on the bench that lamp or meter is mounted on, with a line about how things stand. */
final class SignalPlate extends VBox {
    /** What a screen makes of an opacity, as every display with a usual transfer curve does it. */
    private static final double SCREEN_GAMMA = 2.2;

    SignalPlate(Player player, ObservableStringValue caption, Texts texts) {
        this(player.shownBy(), player.levelProperty(), player.settings(), caption, texts);
    }

    /** @param level light or deflection, 0 to 1 */
    SignalPlate(
            Display shownBy,
            ObservableDoubleValue level,
            Settings settings,
            ObservableStringValue caption,
            Texts texts) {
        getStyleClass().add("plate");
        Label text = Text.of("", "plate-caption");
        text.textProperty().bind(caption);
        Node face = shownBy == Display.SOUNDER
                ? Text.of(texts.of("display.by-ear"), "by-ear")
                : backed(face(shownBy, level, settings, texts), settings);
        getChildren().addAll(face, text);
    }

    /** What is looked at, by itself. */
    static Face face(Display shownBy, ObservableDoubleValue level, Settings settings, Texts texts) {
        double widthPx = settings.lampSize().widthPx();
        return switch (shownBy) {
            case LED -> new Diode(opacity(level, settings), widthPx, texts.of("display.signal-led"));
            case TEST_LIGHT -> new TestLight(opacity(level, settings), widthPx, texts.of("display.signal-test-light"));
            case METER -> new Meter(level, widthPx, texts.of("display.signal-meter"));
            case LAMP, LAMP_AND_SOUNDER, SOUNDER ->
                new Lamp(opacity(level, settings), widthPx, texts.of("display.signal-lamp"));
        };
    }

    private static StackPane backed(Face face, Settings settings) {
        StackPane back = new StackPane(face);
        back.getStyleClass().addAll("backdrop", "on-" + settings.ground().name().toLowerCase(Locale.ROOT));
        return back;
    }

    /** Light adds up in proportion, the numbers of a screen do not. */
    private static DoubleBinding opacity(ObservableDoubleValue level, Settings settings) {
        double most = settings.lampPercent() / 100.0;
        return new DoubleBinding() {
            {
                bind(level);
            }

            @Override
            protected double computeValue() {
                return Math.pow(Math.min(1, level.get()) * most, 1 / SCREEN_GAMMA);
            }
        };
    }
}
