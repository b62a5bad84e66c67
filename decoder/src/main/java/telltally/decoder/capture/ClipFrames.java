package telltally.decoder.capture;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jcodec.api.FrameGrab;
import org.jcodec.api.JCodecException;
import org.jcodec.api.PictureWithMetadata;
import org.jcodec.common.io.ByteBufferSeekableByteChannel;
import org.jcodec.common.model.Picture;
import org.jcodec.common.model.Rect;

/**
 * A clip as the mean brightness of the cells of a grid, frame by frame in the order of the frames' own times. Frames
 * come out of the decoder in another order where some are predicted from later ones. The grid moves with the camera.
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

    ClipFrames(List<Frame> frames, int columns, boolean damaged) {
        this.frames = frames;
        this.columns = columns;
        this.damaged = damaged;
    }

    /** Decodes as far as it goes. */
    static ClipFrames of(byte[] bytes) {
        Waiting waiting = new Waiting();
        boolean damaged = false;
        try {
            FrameGrab grab =
                    FrameGrab.createFrameGrab(ByteBufferSeekableByteChannel.readFromByteBuffer(ByteBuffer.wrap(bytes)));
            for (PictureWithMetadata next = grab.getNativeFrameWithMetadata();
                    next != null;
                    next = grab.getNativeFrameWithMetadata()) {
                waiting.add(Math.round(next.getTimestamp() * 1e9), next.getPicture());
            }
        } catch (IOException | JCodecException | RuntimeException e) {
            // The library meets damage in many ways; whatever came before is still good.
            damaged = true;
        }
        waiting.finish();
        return new ClipFrames(List.copyOf(waiting.frames), waiting.grid.columns, damaged);
    }

    /** Pictures that wait for earlier ones, before they are laid under the grid. */
    static final class Waiting {
        /** As many as the coding lets go ahead (H.264, Annex A: at most 16 frames are kept). */
        private static final int MOST = 17;

        private final PriorityQueue<Luma> pictures =
                new PriorityQueue<>(Comparator.comparingLong((Luma each) -> each.atNanos));
        final List<Frame> frames = new ArrayList<>();
        private Grid grid = new Grid(1, 1);
        private Steadying steadying = new Steadying(1, 1);
        private long beforeNanos = Long.MIN_VALUE;

        void add(long atNanos, Picture picture) {
            Luma luma = new Luma(atNanos, picture);
            if (frames.isEmpty() && pictures.isEmpty()) {
                grid = new Grid(luma.width, luma.height);
                steadying = new Steadying(luma.width, luma.height);
            }
            if (luma.width == grid.width && luma.height == grid.height) {
                pictures.add(luma);
            }
            if (pictures.size() > MOST) {
                take();
            }
        }

        void finish() {
            while (!pictures.isEmpty()) {
                take();
            }
        }

        private void take() {
            Luma next = pictures.remove();
            if (next.atNanos > beforeNanos) {
                beforeNanos = next.atNanos;
                frames.add(new Frame(next.atNanos, grid.brightness(next.brightness, steadying.next(next.brightness))));
            }
        }
    }

    /** One picture without what is cut off at its rims. */
    private static final class Luma {
        final long atNanos;
        final int width;
        final int height;
        /** Less 128, row by row. */
        final byte[] brightness;

        Luma(long atNanos, Picture picture) {
            Rect crop = crop(picture);
            this.atNanos = atNanos;
            width = crop.getWidth();
            height = crop.getHeight();
            brightness = new byte[width * height];
            for (int y = 0; y < height; y++) {
                int from = (crop.getY() + y) * picture.getPlaneWidth(0) + crop.getX();
                System.arraycopy(picture.getPlaneData(0), from, brightness, y * width, width);
            }
        }
    }

    private static Rect crop(Picture picture) {
        Rect crop = picture.getCrop();
        return crop != null ? crop : new Rect(0, 0, picture.getWidth(), picture.getHeight());
    }

    /** Square cells, as many as cover the picture. */
    static final class Grid {
        private final int width;
        private final int height;
        private final int cell;
        final int columns;
        private final int rows;

        Grid(int width, int height) {
            this.width = width;
            this.height = height;
            int least = (int) Math.ceil(Math.sqrt((double) width * height / MOST_CELLS));
            cell = Math.max(CELL_STEP, (least + CELL_STEP - 1) / CELL_STEP * CELL_STEP);
            columns = (width + cell - 1) / cell;
            rows = (height + cell - 1) / cell;
        }

        float[] brightness(byte[] luma, Steadying.Shift shift) {
            float[] cells = new float[columns * rows];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = mean(luma, i % columns * cell + shift.right(), i / columns * cell + shift.down());
            }
            return cells;
        }

        /** Of the part that lies in the picture; at the rim, of what lies next to it. */
        private float mean(byte[] luma, int left, int top) {
            int fromX = Math.max(0, Math.min(width - 1, left));
            int fromY = Math.max(0, Math.min(height - 1, top));
            int toX = Math.max(fromX + 1, Math.min(left + cell, width));
            int toY = Math.max(fromY + 1, Math.min(top + cell, height));
            long sum = 0;
            for (int y = fromY; y < toY; y++) {
                for (int x = fromX; x < toX; x++) {
                    sum += luma[y * width + x];
                }
            }
            // The library stores brightness less 128.
            return 128 + (float) sum / ((toX - fromX) * (toY - fromY));
        }
    }
}
