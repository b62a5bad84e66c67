package telltally.trainer.screen;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import telltally.simulator.scenario.Display;

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
        return "Before the first flash";
    }

    public String warning() {
        return "The lamp in this program flashes.";
    }

    public List<String> paragraphs() {
        return List.of(
                "Flashing light can trigger seizures in people with photosensitive epilepsy, and in some who do not know"
                        + " that they have it.",
                "The lamp here is small and amber, and never flashes more than three times in a second. If flashing light"
                        + " troubles you all the same, stop, look away, and practise by ear: a tone is counted as well as a"
                        + " lamp, and often better.");
    }

    public List<Choice> choices() {
        return List.of(
                new Choice(Display.LAMP, "Lamp", "A small amber lamp, as on the dash."),
                new Choice(Display.SOUNDER, "Sounder", "A tone in place of each flash. Nothing flashes."),
                new Choice(Display.LAMP_AND_SOUNDER, "Lamp and sounder", "Every flash is seen and heard."));
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
