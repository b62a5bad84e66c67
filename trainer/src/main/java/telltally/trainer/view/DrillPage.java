package telltally.trainer.view;

import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.screen.DrillInput;
import telltally.trainer.screen.DrillScreen;
import telltally.trainer.text.Texts;

/** The display on the left, what is asked and the answer on the right. */
final class DrillPage extends Page {
    private final DrillScreen screen;
    private final Texts texts;
    private final PushButton answer;
    private Supplier<Node> first = () -> this;

    DrillPage(DrillScreen screen, Texts texts) {
        super(texts.of("drill.title", screen.title(), screen.level()));
        this.screen = screen;
        this.texts = texts;
        answer = new PushButton(texts.of("drill.answer"), screen::answer).styled("primary");
        stayInSight(new SignalPlate(screen.player(), screen.captionProperty(), texts));
        Label asked = shownWhileSaid("asked");
        asked.textProperty().bind(screen.askedProperty());
        // The sheet must not move away from under somebody who writes.
        asked.managedProperty().unbind();
        asked.setManaged(screen.willBeAsked());
        Label remark = shownWhileSaid("remark");
        remark.textProperty().bind(screen.remarkProperty());
        Label free = shownWhileSaid("remark");
        screen.freeProperty()
                .addListener((property, before, after) -> free.setText(after ? texts.of("drill.free") : ""));
        add(Text.of(screen.task(), "task-line"), asked, remark);
        addInput();
        add(freely(), free);
        addFoot(
                answer,
                new PushButton(texts.of("drill.next-sending"), () -> then(screen::nextSending)),
                new PushButton(texts.of("drill.leave"), screen::back));
        addHint(texts.of(hintKey()));
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER && event.isControlDown()) {
                screen.answer();
                event.consume();
            }
        });
    }

    @Override
    void focusFirst() {
        first.get().requestFocus();
    }

    private void addInput() {
        DrillInput input = screen.answerInput();
        if (input instanceof DrillInput.Sheet sheet) {
            addSheet(sheet);
        } else if (input instanceof DrillInput.Choice choice) {
            OptionList options = new OptionList(choice, texts, screen::answer);
            add(options);
            first = options::first;
        } else {
            NumberField field = new NumberField((DrillInput.Count) input, texts, screen::answer);
            VBox paper = new VBox(field);
            paper.getStyleClass().add("paper");
            add(paper);
            first = () -> field;
        }
    }

    private void addSheet(DrillInput.Sheet sheet) {
        SheetPaper paper = new SheetPaper(sheet.sheet(), texts, answer::requestFocus);
        // Taken out of the page while it is closed: what cannot be seen must not be read out either.
        VBox place = new VBox();
        Runnable lay = () -> {
            if (sheet.openProperty().get()) {
                place.getChildren().setAll(paper);
            } else {
                place.getChildren().clear();
            }
        };
        sheet.openProperty().addListener(change -> lay.run());
        lay.run();
        sheet.openProperty().addListener((property, before, open) -> {
            if (open) {
                Platform.runLater(paper::focusActive);
            }
        });
        sheet.sheet().columns().forEach(column -> {
            column.codes().addListener((Observable change) -> revealLater(paper.active()));
            column.typingProperty().addListener(change -> revealLater(paper.active()));
        });
        Label waits = shownWhileSaid("waits");
        waits.focusTraversableProperty().bind(waits.textProperty().isNotEmpty());
        TapPad pad = new TapPad(screen, texts);
        Runnable tell = () -> {
            boolean open = sheet.openProperty().get();
            waits.setText(open ? "" : texts.of(waitsKey(screen.meansProperty().get())));
            boolean tapped = screen.meansProperty().get() == Means.TAPPED;
            pad.setVisible(tapped);
            pad.setManaged(tapped);
        };
        sheet.openProperty().addListener(change -> tell.run());
        screen.meansProperty().addListener((property, before, after) -> {
            tell.run();
            Platform.runLater(this::focusFirst);
        });
        tell.run();
        add(waits, pad, place);
        if (screen.waysToAnswer().size() > 1) {
            add(new NamedChoice<>(
                    screen.meansProperty(),
                    screen.waysToAnswer(),
                    texts.of("drill.how-to-answer"),
                    "drill.means-",
                    texts));
        }
        first = () -> sheet.openProperty().get()
                ? paper.active()
                : screen.meansProperty().get() == Means.TAPPED ? pad.key() : waits;
    }

    private static String waitsKey(Means means) {
        return switch (means) {
            case TYPED -> "drill.head-only";
            case TAPPED -> "drill.tap-only";
            case ON_PAPER -> "drill.paper-only";
        };
    }

    /** What no vehicle allows. */
    private FlowPane freely() {
        PushButton pause = new PushButton(texts.of("drill.pause"), () -> then(screen::pause));
        screen.pausedProperty()
                .addListener(
                        (property, before, paused) -> pause.setText(texts.of(paused ? "drill.resume" : "drill.pause")));
        FlowPane row = new FlowPane(
                Text.of(texts.of("drill.freely"), "small-label"),
                pause,
                new PushButton(texts.of("drill.go-back"), () -> then(screen::goBack)));
        row.getStyleClass().add("display-choice");
        return row;
    }

    private String hintKey() {
        DrillInput input = screen.answerInput();
        return input instanceof DrillInput.Sheet
                ? "drill.hint-write"
                : input instanceof DrillInput.Choice ? "drill.hint-choose" : "drill.hint-number";
    }

    /** Acts, and gives the keyboard back to the answer. */
    private void then(Runnable action) {
        action.run();
        Platform.runLater(this::focusFirst);
    }

    private static Label shownWhileSaid(String styleClass) {
        Label label = Text.of("", styleClass);
        label.visibleProperty().bind(label.textProperty().isNotEmpty());
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }
}
