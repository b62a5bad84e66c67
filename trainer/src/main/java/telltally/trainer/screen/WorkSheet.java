package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.AnswerSheet;
import telltally.trainer.text.Texts;

/** What the learner writes while the lamp flashes, a column for each segment. */
public final class WorkSheet {
    private final List<SheetColumn> columns;
    private final boolean letters;
    private boolean open = true;
    private final ReadOnlyIntegerWrapper active = new ReadOnlyIntegerWrapper();

    public WorkSheet(Texts texts, FlashFormat format, List<Segment> segments) {
        this.columns = segments.stream()
                .map(segment -> new SheetColumn(texts, segment))
                .toList();
        this.letters = format.shape() instanceof CodeShape.Spelled;
    }

    public List<SheetColumn> columns() {
        return columns;
    }

    /** While it is closed, nothing that is typed gets on it. */
    void open(boolean now) {
        open = now;
    }

    /** The column that is written in. */
    public ReadOnlyIntegerProperty activeProperty() {
        return active.getReadOnlyProperty();
    }

    public void select(int column) {
        active.set(Math.max(0, Math.min(columns.size() - 1, column)));
    }

    public void next() {
        select(active.get() + 1);
    }

    public void previous() {
        select(active.get() - 1);
    }

    /** Adds a digit, or a letter where codes are spelled; anything else is passed over. */
    public void type(String sign) {
        if (open && sign.matches(letters ? "[0-9A-Za-z]" : "[0-9]")) {
            column().type(letters ? sign.toUpperCase(Locale.ROOT) : sign);
        }
    }

    /** Finishes a code. On an empty line it goes on to the next column instead. */
    public void finish() {
        if (open && !column().finish()) {
            next();
        }
    }

    public void erase() {
        if (open) {
            column().erase();
        }
    }

    /** All that is written; a code that was not finished counts as it stands. */
    public AnswerSheet answers() {
        AnswerSheet answers = AnswerSheet.empty();
        for (SheetColumn column : columns) {
            List<String> codes = new ArrayList<>(column.codes());
            codes.add(column.typingProperty().get());
            answers = answers.with(column.segment(), codes);
        }
        return answers;
    }

    private SheetColumn column() {
        return columns.get(active.get());
    }
}
