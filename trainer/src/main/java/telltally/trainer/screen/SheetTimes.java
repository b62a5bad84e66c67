package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongSupplier;
import javafx.collections.ListChangeListener;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Answer.Entry;

/** Remembers when each code of a sheet was finished. */
final class SheetTimes {
    private final WorkSheet sheet;
    private final LongSupplier millis;
    private final List<List<Long>> finishedMillis = new ArrayList<>();

    /** @param millis how long the drill has been running */
    SheetTimes(WorkSheet sheet, LongSupplier millis) {
        this.sheet = sheet;
        this.millis = millis;
        for (SheetColumn column : sheet.columns()) {
            List<Long> times = new ArrayList<>();
            finishedMillis.add(times);
            column.codes().addListener((ListChangeListener<String>)
                    change -> note(times, column.codes().size()));
        }
    }

    /** Codes come and go at the end of a column. */
    private void note(List<Long> times, int codes) {
        while (times.size() > codes) {
            times.remove(times.size() - 1);
        }
        while (times.size() < codes) {
            times.add(millis.getAsLong());
        }
    }

    /** All that is written, in the order written; a code that was not finished counts as it stands. */
    Answer.Written answer() {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < sheet.columns().size(); i++) {
            SheetColumn column = sheet.columns().get(i);
            for (int code = 0; code < column.codes().size(); code++) {
                long at = finishedMillis.get(i).get(code);
                entries.add(new Entry(column.segment(), column.codes().get(code), at));
            }
            String unfinished = column.typingProperty().get();
            if (!unfinished.isEmpty()) {
                entries.add(new Entry(column.segment(), unfinished, millis.getAsLong()));
            }
        }
        entries.sort(Comparator.comparingLong(Entry::atMillis));
        return new Answer.Written(entries);
    }
}
