package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.List;

/** Frames of a few cells, 25 a second, counted from 0. */
final class HandMadeFrames {
    static final long STEP_NANOS = 40_000_000L;

    private HandMadeFrames() {}

    /** Brightness of a cell in a frame. */
    interface Scene {
        double of(int column, int row, int frame);
    }

    static ClipFrames clip(int columns, int rows, int count, Scene scene) {
        return new ClipFrames(frames(columns, rows, count, scene), columns, false);
    }

    static List<ClipFrames.Frame> frames(int columns, int rows, int count, Scene scene) {
        List<ClipFrames.Frame> frames = new ArrayList<>();
        for (int frame = 0; frame < count; frame++) {
            float[] cells = new float[columns * rows];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = (float) scene.of(i % columns, i / columns, frame);
            }
            frames.add(new ClipFrames.Frame(frame * STEP_NANOS, cells));
        }
        return frames;
    }

    /** Ten frames dark, ten lit by 40 steps, by turns. */
    static double blinking(int frame) {
        return frame / 10 % 2 == 1 ? 40 : 0;
    }
}
