package telltally.trainer.screen;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import telltally.trainer.drill.Answer;

/** What the learner answers a drill with, as far as it has come. */
public sealed interface DrillInput {
    Answer answer();

    /** Codes on a sheet. */
    final class Sheet implements DrillInput {
        private final WorkSheet sheet;
        private final SheetTimes times;
        private final BooleanProperty open = new SimpleBooleanProperty(true);

        Sheet(WorkSheet sheet, SheetTimes times) {
            this.sheet = sheet;
            this.times = times;
        }

        public WorkSheet sheet() {
            return sheet;
        }

        /** Whether it can be written on now; while it cannot, codes are kept in the head or on paper. */
        public ReadOnlyBooleanProperty openProperty() {
            return open;
        }

        void setOpen(boolean now) {
            open.set(now);
            sheet.open(now);
        }

        @Override
        public Answer answer() {
            return times.answer();
        }
    }

    /** One option of several. */
    final class Choice implements DrillInput {
        /** No option. */
        public static final int NONE = -1;

        private final List<String> options;
        private final IntegerProperty chosen = new SimpleIntegerProperty(NONE);

        Choice(List<String> options) {
            this.options = List.copyOf(options);
        }

        public List<String> options() {
            return options;
        }

        /** The place of the option, from 0, or {@link #NONE}. */
        public IntegerProperty chosenProperty() {
            return chosen;
        }

        @Override
        public Answer answer() {
            return chosen.get() == NONE ? new Answer.None() : new Answer.Chosen(chosen.get());
        }
    }

    /** A number that is typed. */
    final class Count implements DrillInput {
        private static final int MOST_DIGITS = 3;

        private final ReadOnlyStringWrapper typed = new ReadOnlyStringWrapper("");

        public ReadOnlyStringProperty typedProperty() {
            return typed.getReadOnlyProperty();
        }

        /** Adds a digit; anything else is passed over. */
        public void type(String sign) {
            if (sign.matches("[0-9]") && typed.get().length() < MOST_DIGITS) {
                typed.set(typed.get() + sign);
            }
        }

        public void erase() {
            if (!typed.get().isEmpty()) {
                typed.set(typed.get().substring(0, typed.get().length() - 1));
            }
        }

        @Override
        public Answer answer() {
            return typed.get().isEmpty() ? new Answer.None() : new Answer.Counted(Integer.parseInt(typed.get()));
        }
    }
}
