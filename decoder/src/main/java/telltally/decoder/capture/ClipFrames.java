package telltally.decoder.capture;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jcodec.api.FrameGrab;
import org.jcodec.api.JCodecException;
import org.jcodec.api.PictureWithMetadata;
import org.jcodec.common.io.ByteBufferSeekableByteChannel;
import org.jcodec.common.model.Picture;
import org.jcodec.common.model.Rect;

/**
 * A clip as the mean brightness of the cells of a grid, frame by frame in the order of the frames' own times. Frames
 * come out of the decoder in another order where some are predicted from later ones.
 */
final class ClipFrames {
    /** Fine enough that a lamp fills a fair part of a cell, coarse enough for ten minutes in memory. */
    private static final int MOST_CELLS = 1600;

    private static final int CELL_STEP = 8;

    /** One frame: its time and the cells' brightness, 0 to 255, row by row. */
    static final class Frame {
        final long atNanos;
        final float[] cells;

        Frame(long atNanos, float[] cells) {
            this.atNanos = atNanos;
            this.cells = cells;
        }
    }

    final List<Frame> frames;
    final int columns;
    /** Whether the data broke off or was damaged after the last frame. */
    final boolean damaged;

    private ClipFrames(List<Frame> frames, int columns, boolean damaged) {
        this.frames = frames;
        this.columns = columns;
        this.damaged = damaged;
    }

    /** Decodes as far as it goes. */
    static ClipFrames of(byte[] bytes) {
        List<Frame> frames = new ArrayList<>();
        boolean damaged = false;
        Grid grid = new Grid(1, 1);
        try {
            FrameGrab grab =
                    FrameGrab.createFrameGrab(ByteBufferSeekableByteChannel.readFromByteBuffer(ByteBuffer.wrap(bytes)));
            for (PictureWithMetadata next = grab.getNativeFrameWithMetadata();
                    next != null;
                    next = grab.getNativeFrameWithMetadata()) {
                Rect crop = crop(next.getPicture());
                if (frames.isEmpty()) {
                    grid = new Grid(crop.getWidth(), crop.getHeight());
                }
                frames.add(new Frame(Math.round(next.getTimestamp() * 1e9), grid.brightness(next.getPicture())));
            }
        } catch (IOException | JCodecException | RuntimeException e) {
            // The library meets damage in many ways; whatever came before is still good.
            damaged = true;
        }
        return new ClipFrames(inOrder(frames), grid.columns, damaged);
    }

    private static List<Frame> inOrder(List<Frame> frames) {
        frames.sort(Comparator.comparingLong(frame -> frame.atNanos));
        List<Frame> rising = new ArrayList<>();
        long before = Long.MIN_VALUE;
        for (Frame frame : frames) {
            if (frame.atNanos > before) {
                rising.add(frame);
                before = frame.atNanos;
            }
        }
        return List.copyOf(rising);
    }

    private static Rect crop(Picture picture) {
        Rect crop = picture.getCrop();
        return crop != null ? crop : new Rect(0, 0, picture.getWidth(), picture.getHeight());
    }

    private static final class Grid {
        private final int width;
        private final int height;
        private final int cell;
        private final int columns;
        private final int rows;

        Grid(int width, int height) {
            this.width = width;
            this.height = height;
            int least = (int) Math.ceil(Math.sqrt((double) width * height / MOST_CELLS));
            cell = Math.max(CELL_STEP, (least + CELL_STEP - 1) / CELL_STEP * CELL_STEP);
            columns = (width + cell - 1) / cell;
            rows = (height + cell - 1) / cell;
        }

        float[] brightness(Picture picture) {
            Rect crop = crop(picture);
            byte[] luma = picture.getPlaneData(0);
            int stride = picture.getPlaneWidth(0);
            float[] cells = new float[columns * rows];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = mean(luma, stride, crop, i % columns * cell, i / columns * cell);
            }
            return cells;
        }

        private float mean(byte[] luma, int stride, Rect crop, int left, int top) {
            int right = Math.min(left + cell, width);
            int bottom = Math.min(top + cell, height);
            long sum = 0;
            for (int y = top; y < bottom; y++) {
                int row = (crop.getY() + y) * stride + crop.getX();
                for (int x = left; x < right; x++) {
                    sum += luma[row + x];
                }
            }
            // The library stores brightness less 128.
            return 128 + (float) sum / ((right - left) * (bottom - top));
        }
    }
}
