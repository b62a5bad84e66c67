package telltally.trainer.view;

import java.time.Instant;
import java.time.ZoneId;
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
import telltally.trainer.logbook.LogbookKeeper;
import telltally.trainer.playback.Sounder;
import telltally.trainer.screen.NoticeScreen;
import telltally.trainer.screen.Records;
import telltally.trainer.screen.Screen;
import telltally.trainer.screen.Trainer;
import telltally.trainer.settings.Settings;

/** The one window of the trainer, and the door to it. */
public final class TrainerWindow {
    static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double TEXT_PX = 17;

    /** From here on what is large already grows no further, or nothing else would find room. */
    private static final int LARGE_TEXT_PERCENT = 150;

    /** After so many frames a page is drawn and the keyboard can be used; what takes long waits for that. */
    private static final int FRAMES_OF_A_PAGE = 3;

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

    /**
     * @param stage may show a first sight of the trainer already
     * @param clockNanos the clock that the trainer itself was given
     */
    TrainerWindow(Stage stage, Trainer trainer, LongSupplier clockNanos) {
        this.stage = stage;
        this.trainer = trainer;
        this.clockNanos = clockNanos;
        root.getStyleClass().add("bench");
        dress(trainer.settings());
        Scene scene = stage.getScene();
        if (scene == null) {
            scene = new Scene(root, WIDTH, HEIGHT);
            stage.setScene(scene);
        } else {
            scene.setRoot(root);
        }
        scene.getStylesheets().add(styleSheet());
        scene.addEventHandler(KeyEvent.KEY_PRESSED, this::escape);
        stage.setTitle("Telltally");
        stage.setMinWidth(WIDTH / 2);
        stage.setMinHeight(HEIGHT / 2);
        stage.setOnHidden(event -> close());
        trainer.screenProperty().addListener((property, before, after) -> turnTo(after));
        trainer.settingsProperty().addListener((property, before, after) -> {
            dress(after);
            turnTo(trainer.screen());
        });
        turnTo(trainer.screen());
    }

    /**
     * Opens the window and returns when it has been closed. The toolkit must have been started, which fails where there
     * is no display; call from any thread but the toolkit's own.
     *
     * @param tapReader says what codes were tapped
     * @throws java.util.concurrent.CompletionException with the cause if the window cannot be made
     */
    public static void open(Opening opening, Decoder tapReader) {
        Lazily<LessonShelf> shelf = new Lazily<>(() -> LessonShelf.of(opening.lessonsFolder()));
        LongSupplier seeds = () -> opening.seed().orElseGet(System::nanoTime);
        Records records = new Records(
                LogbookKeeper.onItsOwn(opening.dataFolder(), Platform::runLater),
                Instant::now,
                ZoneId::systemDefault,
                opening.program());
        Trainer.Surroundings surroundings =
                new Trainer.Surroundings(System::nanoTime, seeds, Sounder::new, opening.settings(), tapReader, records);
        CompletableFuture<Boolean> closed = new CompletableFuture<>();
        Platform.runLater(() -> {
            trying(closed, () -> {
                Trainer trainer = new Trainer(shelf, surroundings, opening.startLesson());
                Stage stage = new Stage();
                stage.addEventHandler(WindowEvent.WINDOW_HIDDEN, event -> closed.complete(true));
                firstSight(stage, trainer);
                afterFrames(1, () -> {
                    trying(closed, () -> new TrainerWindow(stage, trainer, System::nanoTime).show());
                    afterFrames(FRAMES_OF_A_PAGE, shelf::begin);
                });
            });
        });
        closed.join();
    }

    private static void trying(CompletableFuture<Boolean> closed, Runnable work) {
        try {
            work.run();
        } catch (RuntimeException e) {
            closed.completeExceptionally(e);
        }
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

    private static void firstSight(Stage stage, Trainer trainer) {
        Settings settings = trainer.settings();
        FirstSight sight =
                new FirstSight((NoticeScreen) trainer.screen(), Colours.of(settings.theme()), textPx(settings), WIDTH);
        stage.setScene(new Scene(sight, WIDTH, HEIGHT));
        stage.setTitle("Telltally");
        stage.show();
    }

    /** A frame is on its way to the display when the next one begins. */
    private static void afterFrames(int frames, Runnable then) {
        new AnimationTimer() {
            private int begun;

            @Override
            public void handle(long now) {
                begun++;
                if (begun > frames) {
                    stop();
                    then.run();
                }
            }
        }.start();
    }

    private static double textPx(Settings settings) {
        return TEXT_PX * settings.textPercent() / 100;
    }

    private void dress(Settings settings) {
        root.setStyle(Colours.of(settings.theme()).style() + "-fx-font-size: " + textPx(settings) + "px;");
        root.getStyleClass().remove("large-text");
        if (settings.textPercent() >= LARGE_TEXT_PERCENT) {
            root.getStyleClass().add("large-text");
        }
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
        Page page = Pages.of(screen, trainer.texts());
        root.getChildren().setAll(page);
        // Style decides whether the page has to scroll, and what scrolls joins the window with the next layout.
        for (int i = 0; i < 2; i++) {
            root.applyCss();
            root.layout();
        }
        page.opened();
    }
}
