package telltally.trainer.view;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/**
 * A folder for pictures of the window.
 *
 * @param suffix what follows the name of every picture
 */
record Album(Path folder, String suffix) {
    /** Starts the toolkit and lets pictures be taken; the first argument is the folder, the present one without. */
    static void fill(String[] arguments, Consumer<Album> taking) throws IOException {
        Path folder = Path.of(arguments.length == 0 ? "." : arguments[0]);
        Files.createDirectories(folder);
        Toolkit.startOrStop();
        try {
            taking.accept(new Album(folder, ""));
        } finally {
            Platform.exit();
        }
    }

    Album suffixed(String other) {
        return new Album(folder, other);
    }

    void take(OpenWindow window, String name) {
        Path file = folder.resolve(name + suffix + ".png");
        Toolkit.settle();
        WritableImage image = Toolkit.fx(() -> window.scene().snapshot(null));
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
