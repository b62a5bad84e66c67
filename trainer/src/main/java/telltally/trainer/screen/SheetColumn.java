package telltally.trainer.screen;

import java.util.List;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.Words;
import telltally.trainer.text.Texts;

/** One heading of the work sheet with the codes under it. */
public final class SheetColumn {
    /** Longer than any code, so that a stuck key does not fill the sheet. */
    private static final int MOST_SIGNS = 12;

    private static final int MOST_CODES = 60;

    private final Texts texts;
    private final Segment segment;
    private final ObservableList<String> codes = FXCollections.observableArrayList();
    private final ObservableList<String> codesSeen = FXCollections.unmodifiableObservableList(codes);
    private final ReadOnlyStringWrapper typing = new ReadOnlyStringWrapper("");

    SheetColumn(Texts texts, Segment segment) {
        this.texts = texts;
        this.segment = segment;
    }

    public Segment segment() {
        return segment;
    }

    public String heading() {
        return new Words(texts).heading(segment);
    }

    /** Codes that are finished. */
    public ObservableList<String> codes() {
        return codesSeen;
    }

    /** The code that is being written; empty between codes. */
    public ReadOnlyStringProperty typingProperty() {
        return typing.getReadOnlyProperty();
    }

    /** All of it in words, for somebody who hears it. */
    public String spoken() {
        String written = codes.isEmpty() ? texts.of("sheet.nothing-written") : String.join(", ", codes);
        return typing.get().isEmpty()
                ? texts.of("sheet.spoken", heading(), written)
                : texts.of("sheet.spoken-writing", heading(), written, typing.get());
    }

    /** Puts other codes in place of what is written. */
    void replace(List<String> others) {
        typing.set("");
        codes.setAll(others);
    }

    void type(String sign) {
        if (typing.get().length() < MOST_SIGNS && codes.size() < MOST_CODES) {
            typing.set(typing.get() + sign);
        }
    }

    /** Whether there was something to finish. */
    boolean finish() {
        if (typing.get().isEmpty()) {
            return false;
        }
        codes.add(typing.get());
        typing.set("");
        return true;
    }

    /** Takes the last digit away; between codes it opens the last code again. */
    void erase() {
        if (typing.get().isEmpty() && !codes.isEmpty()) {
            typing.set(codes.remove(codes.size() - 1));
        } else if (!typing.get().isEmpty()) {
            typing.set(typing.get().substring(0, typing.get().length() - 1));
        }
    }
}
