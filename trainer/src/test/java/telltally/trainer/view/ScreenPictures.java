package telltally.trainer.view;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.application.Platform;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.SampleLessons;
import telltally.trainer.screen.PlayScreen;
import telltally.trainer.screen.ReplayScreen;

/**
 * Drives the real window through its screens by the keyboard and writes a picture of each, at 1280 by 800 pixels, with
 * text as usual and twice as large. The folder is the one argument.
 */
public final class ScreenPictures {
    private final Path folder;
    private final String suffix;
    private final OpenWindow window;

    private ScreenPictures(Path folder, String suffix, OpenWindow window) {
        this.folder = folder;
        this.suffix = suffix;
        this.window = window;
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments.length == 0 ? "." : arguments[0]);
        Files.createDirectories(folder);
        Toolkit.startOrStop();
        LessonShelf shelf = SampleLessons.shelf();
        try {
            walk(folder, shelf);
        } finally {
            Platform.exit();
        }
    }

    private static void walk(Path folder, LessonShelf shelf) {
        for (int scale : new int[] {1, 2}) {
            try (OpenWindow window = new OpenWindow(shelf, scale)) {
                new ScreenPictures(folder, scale == 1 ? "" : "-text-" + scale, window).walk();
            }
        }
    }

    private void walk() {
        take("notice");
        window.press(KeyCode.ENTER);
        take("lessons");
        window.press(KeyCode.ENTER);
        take("briefing");
        window.press(KeyCode.ENTER);
        listen();
        window.pass(200);
        take("all-sent");
        window.pressWithAlt(KeyCode.M);
        take("marking");
        window.press(KeyCode.ENTER);
        replay();
    }

    /** Writes as the codes come, with the mistakes that people make, until the lamp is lit in the second sending. */
    private void listen() {
        window.pass(0.1);
        window.type("35 4");
        passUntilLit(20);
        take("lamp");
        window.type("2 1 ");
        window.press(KeyCode.TAB);
        window.type("51 ");
    }

    private void replay() {
        passUntilCount("3");
        take("replay");
    }

    private void passUntilLit(double fromSeconds) {
        window.pass(fromSeconds);
        PlayScreen play = window.screen(PlayScreen.class);
        for (int i = 0; i < 1000 && play.player().brightnessProperty().get() < 1; i++) {
            window.pass(0.05);
        }
    }

    private void passUntilCount(String count) {
        window.pass(0.1);
        ReplayScreen replay = window.screen(ReplayScreen.class);
        for (int i = 0; i < 2000; i++) {
            boolean there = replay.countProperty().get().equals(count)
                    && replay.digitsProperty().get().length() == 1
                    && replay.player().brightnessProperty().get() == 1;
            if (there) {
                return;
            }
            window.pass(0.05);
        }
        throw new IllegalStateException("no digit of " + count);
    }

    private void take(String name) {
        Toolkit.settle();
        WritableImage image = Toolkit.fx(() -> window.scene().snapshot(null));
        Path file = folder.resolve(name + suffix + ".png");
        try {
            ImageIO.write(converted(image), "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        System.out.println(file);
    }

    private static BufferedImage converted(WritableImage image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        PixelReader pixels = image.getPixelReader();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                copy.setRGB(x, y, pixels.getArgb(x, y));
            }
        }
        return copy;
    }
}
