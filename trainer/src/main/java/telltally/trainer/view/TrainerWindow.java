package telltally.trainer.view;

import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.function.LongSupplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import telltally.decoder.reading.Decoder;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.playback.Sounder;
import telltally.trainer.screen.BriefingScreen;
import telltally.trainer.screen.DrillMarkedScreen;
import telltally.trainer.screen.DrillReplayScreen;
import telltally.trainer.screen.DrillScreen;
import telltally.trainer.screen.LessonsScreen;
import telltally.trainer.screen.MarkingScreen;
import telltally.trainer.screen.NoticeScreen;
import telltally.trainer.screen.PlayScreen;
import telltally.trainer.screen.ReplayScreen;
import telltally.trainer.screen.Screen;
import telltally.trainer.screen.Trainer;
import telltally.trainer.text.Texts;

/** The one window of the trainer, and the door to it. */
public final class TrainerWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double TEXT_PX = 17;

    /** From here on what is large already grows no further, or nothing else would find room. */
    private static final double LARGE_TEXT = 1.5;

    private final Stage stage;
    private final Trainer trainer;
    private final LongSupplier clockNanos;
    private final StackPane root = new StackPane();
    private final AnimationTimer frames = new AnimationTimer() {
        @Override
        public void handle(long now) {
            frame();
        }
    };

    /** @param clockNanos the clock that the trainer itself was given */
    TrainerWindow(Stage stage, Trainer trainer, LongSupplier clockNanos, double textScale) {
        this.stage = stage;
        this.trainer = trainer;
        this.clockNanos = clockNanos;
        root.getStyleClass().add("bench");
        root.setStyle("-fx-font-size: " + TEXT_PX * textScale + "px;");
        if (textScale >= LARGE_TEXT) {
            root.getStyleClass().add("large-text");
        }
        Scene scene = new Scene(root, WIDTH, HEIGHT);
        scene.getStylesheets().add(styleSheet());
        scene.addEventHandler(KeyEvent.KEY_PRESSED, this::escape);
        stage.setScene(scene);
        stage.setTitle("Telltally");
        stage.setMinWidth(WIDTH / 2);
        stage.setMinHeight(HEIGHT / 2);
        stage.setOnHidden(event -> close());
        trainer.screenProperty().addListener((property, before, after) -> turnTo(after));
        turnTo(trainer.screen());
    }

    /**
     * Opens the window and returns when it has been closed. The toolkit must have been started, which fails where there
     * is no display; call from any thread but the toolkit's own.
     *
     * @param tapReader says what codes were tapped
     * @throws java.util.concurrent.CompletionException with the cause if the window cannot be made
     */
    public static void open(TrainerSettings settings, Decoder tapReader) {
        LessonShelf shelf = LessonShelf.of(settings.lessonsFolder());
        LongSupplier seeds = () -> settings.seed().orElseGet(System::nanoTime);
        Trainer.Surroundings surroundings = new Trainer.Surroundings(
                System::nanoTime, seeds, Sounder::new, Texts.in(settings.language()), tapReader);
        CompletableFuture<Boolean> closed = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                Trainer trainer = new Trainer(shelf, surroundings, settings.startLesson());
                Stage stage = new Stage();
                TrainerWindow window = new TrainerWindow(stage, trainer, System::nanoTime, settings.textScale());
                stage.addEventHandler(WindowEvent.WINDOW_HIDDEN, event -> closed.complete(true));
                window.show();
            } catch (RuntimeException e) {
                closed.completeExceptionally(e);
            }
        });
        closed.join();
    }

    void show() {
        stage.show();
        frames.start();
    }

    Stage stage() {
        return stage;
    }

    Trainer trainer() {
        return trainer;
    }

    /** Passes on what time it is. */
    void frame() {
        trainer.advanceTo(clockNanos.getAsLong());
    }

    static String styleSheet() {
        return Objects.requireNonNull(TrainerWindow.class.getResource("trainer.css"), "the style sheet")
                .toExternalForm();
    }

    private void close() {
        frames.stop();
        trainer.close();
    }

    private void escape(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            trainer.screen().back();
            event.consume();
        }
    }

    private void turnTo(Screen screen) {
        Page page = page(screen);
        root.getChildren().setAll(page);
        // What scrolls joins the window only when its style has been applied, and cannot take the keyboard before.
        root.applyCss();
        root.layout();
        page.opened();
    }

    private Page page(Screen screen) {
        Texts texts = trainer.texts();
        if (screen instanceof NoticeScreen notice) {
            return new NoticePage(notice, texts);
        }
        if (screen instanceof LessonsScreen lessons) {
            return new LessonsPage(lessons, texts);
        }
        if (screen instanceof BriefingScreen briefing) {
            return new BriefingPage(briefing, texts);
        }
        if (screen instanceof PlayScreen play) {
            return new PlayPage(play, texts);
        }
        if (screen instanceof MarkingScreen marking) {
            return new MarkingPage(marking, texts);
        }
        if (screen instanceof DrillScreen drill) {
            return new DrillPage(drill, texts);
        }
        if (screen instanceof DrillMarkedScreen marked) {
            return new DrillMarkedPage(marked, texts);
        }
        if (screen instanceof DrillReplayScreen replay) {
            return new DrillReplayPage(replay, texts);
        }
        return new ReplayPage((ReplayScreen) screen, texts);
    }
}
