package telltally.trainer.screen;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import telltally.simulator.scenario.Display;
import telltally.trainer.text.Texts;

/** What has to be read before the first flash, and the choice of how flashes are to be perceived. */
public final class NoticeScreen implements Screen {
    private final Trainer trainer;
    private final ObjectProperty<Display> choice = new SimpleObjectProperty<>(Display.LAMP);

    NoticeScreen(Trainer trainer) {
        this.trainer = trainer;
    }

    /** A way to perceive flashes, with what there is to know about it. */
    public record Choice(Display display, String title, String text) {}

    @Override
    public String title() {
        return trainer.texts().of("notice.title");
    }

    public String warning() {
        return trainer.texts().of("notice.warning");
    }

    public List<String> paragraphs() {
        return List.of(trainer.texts().of("notice.seizures"), trainer.texts().of("notice.small-and-slow"));
    }

    public List<Choice> choices() {
        Texts texts = trainer.texts();
        return List.of(
                new Choice(Display.LAMP, texts.of("display.lamp"), texts.of("notice.lamp")),
                new Choice(Display.SOUNDER, texts.of("display.sounder"), texts.of("notice.sounder")),
                new Choice(
                        Display.LAMP_AND_SOUNDER,
                        texts.of("display.lamp-and-sounder"),
                        texts.of("notice.lamp-and-sounder")));
    }

    public ObjectProperty<Display> choiceProperty() {
        return choice;
    }

    public void goOn() {
        trainer.agree(choice.get());
    }

    /** There is nothing before the first screen. */
    @Override
    public void back() {}
}
