package telltally.decoder.capture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import org.jcodec.codecs.h264.H264Encoder;
import org.jcodec.common.Codec;
import org.jcodec.common.MuxerTrack;
import org.jcodec.common.VideoCodecMeta;
import org.jcodec.common.VideoEncoder.EncodedFrame;
import org.jcodec.common.io.ByteBufferSeekableByteChannel;
import org.jcodec.common.model.ColorSpace;
import org.jcodec.common.model.Packet;
import org.jcodec.common.model.Packet.FrameType;
import org.jcodec.common.model.Picture;
import org.jcodec.common.model.Size;
import org.jcodec.containers.mp4.muxer.MP4Muxer;

/** Small H.264 clips in MP4, frame by frame from a painter, at the times it is given. */
final class Clips {
    static final int WIDTH = 160;
    static final int HEIGHT = 96;
    /** The clock of the file: a tenth of a millisecond. */
    private static final int TICKS_PER_SECOND = 10_000;

    private Clips() {}

    interface Painter {
        /** Brightness 0 to 255 of a point at a time. */
        int brightness(double second, int x, int y);
    }

    /** @param atNanos rising, from 0, in tenths of milliseconds */
    static byte[] of(long[] atNanos, Painter painter) {
        try {
            ByteBuffer file = ByteBuffer.allocate(40_000_000);
            ByteBufferSeekableByteChannel channel = ByteBufferSeekableByteChannel.writeToByteBuffer(file);
            MP4Muxer muxer = MP4Muxer.createMP4MuxerToChannel(channel);
            MuxerTrack track = muxer.addVideoTrack(
                    Codec.H264, VideoCodecMeta.createSimpleVideoCodecMeta(new Size(WIDTH, HEIGHT), ColorSpace.YUV420J));
            H264Encoder encoder = H264Encoder.createH264Encoder();
            for (int i = 0; i < atNanos.length; i++) {
                Picture picture = painted(painter, atNanos[i] / 1e9);
                EncodedFrame frame =
                        encoder.encodeFrame(picture, ByteBuffer.allocate(encoder.estimateBufferSize(picture)));
                long at = ticks(atNanos[i]);
                long next = i + 1 < atNanos.length ? ticks(atNanos[i + 1]) : at + TICKS_PER_SECOND / 30;
                track.addFrame(Packet.createPacket(
                        frame.getData(),
                        at,
                        TICKS_PER_SECOND,
                        next - at,
                        i,
                        frame.isKeyFrame() ? FrameType.KEY : FrameType.INTER,
                        null));
            }
            muxer.finish();
            return Arrays.copyOf(file.array(), (int) channel.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static long ticks(long nanos) {
        return nanos / (1_000_000_000 / TICKS_PER_SECOND);
    }

    private static Picture painted(Painter painter, double second) {
        Picture picture = Picture.create(WIDTH, HEIGHT, ColorSpace.YUV420J);
        byte[] luma = picture.getPlaneData(0);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int brightness = Math.max(0, Math.min(255, painter.brightness(second, x, y)));
                luma[y * WIDTH + x] = (byte) (brightness - 128);
            }
        }
        return picture;
    }
}
