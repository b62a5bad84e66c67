package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import telltally.simulator.document.Problem;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.LessonShelf.Entry;

/** The choice of a lesson. */
public final class LessonsScreen implements Screen {
    private final Trainer trainer;
    private final Optional<String> message;
    private final int selected;

    LessonsScreen(Trainer trainer, Optional<String> message, int selected) {
        this.trainer = trainer;
        this.message = message;
        this.selected = selected;
    }

    /**
     * One line of the list.
     *
     * @param trains what the learner does in it; for a broken file every problem, a line each
     * @param signal how its codes are sent; empty for a broken file
     */
    public record Item(String title, String trains, String signal, boolean playable) {}

    /** A line for somebody who hears the list instead of seeing it. */
    public String spoken(Item item) {
        return item.playable()
                ? trainer.texts().of("lessons.spoken", item.title(), item.trains(), item.signal())
                : trainer.texts().of("lessons.spoken-broken", item.title(), item.trains());
    }

    @Override
    public String title() {
        return trainer.texts().of("lessons.title");
    }

    /** Something that went wrong on the way here. */
    public Optional<String> message() {
        return message;
    }

    public List<Item> items() {
        return entries().stream().map(LessonsScreen::item).toList();
    }

    /** The item to begin with. */
    public int selected() {
        return selected;
    }

    /** Opens a lesson; a broken file stays closed. */
    public void open(int index) {
        if (index >= 0 && index < entries().size() && entries().get(index) instanceof Entry.Ready ready) {
            trainer.briefing(ready.scenario());
        }
    }

    public void openSettings() {
        trainer.openSettings();
    }

    @Override
    public void back() {
        trainer.home();
    }

    static int indexOf(LessonShelf shelf, Scenario scenario) {
        List<Entry> entries = shelf.entries();
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i) instanceof Entry.Ready ready
                    && ready.scenario().id().equals(scenario.id())) {
                return i;
            }
        }
        return -1;
    }

    /** Asked for anew each time: the learner may have chosen another language meanwhile. */
    private List<Entry> entries() {
        return trainer.library().lessons().entries();
    }

    private static Item item(Entry entry) {
        if (entry instanceof Entry.Ready ready) {
            Scenario scenario = ready.scenario();
            return new Item(scenario.title(), scenario.task(), scenario.format().title(), true);
        }
        String problems = ((Entry.Broken) entry)
                .problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
        return new Item(entry.file(), problems, "", false);
    }
}
