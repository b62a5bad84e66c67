package telltally.trainer.screen;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import telltally.simulator.scenario.Display;

/** What has to be read before the first flash, and the choice of how flashes are to be perceived. */
public final class NoticeScreen implements Screen {
    private static final List<Display> OTHERS = List.of(Display.SOUNDER, Display.LAMP_AND_SOUNDER, Display.METER);

    private final Trainer trainer;
    private final Display light;
    private final ObjectProperty<Display> choice;

    /** @param begin the choice to begin with; another light than the lamp is offered in its place */
    NoticeScreen(Trainer trainer, Display begin) {
        this.trainer = trainer;
        this.light = OTHERS.contains(begin) ? Display.LAMP : begin;
        this.choice = new SimpleObjectProperty<>(begin);
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
        DisplayNames names = new DisplayNames(trainer.texts());
        return Stream.concat(Stream.of(light), OTHERS.stream())
                .map(each -> new Choice(each, names.of(each), trainer.texts().of("notice.by-" + each.key())))
                .toList();
    }

    public ObjectProperty<Display> choiceProperty() {
        return choice;
    }

    public void goOn() {
        trainer.agree(choice.get());
    }

    public void openSettings() {
        trainer.openSettings();
    }

    /** There is nothing before the first screen. */
    @Override
    public void back() {}
}
