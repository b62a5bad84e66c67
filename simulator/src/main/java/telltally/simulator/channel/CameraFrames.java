package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * A camera: a frame shows the lamp lit when it was lit for a large enough share of the exposure. The level changes only
 * at the instants at which exposures begin; before the first frame it is that of the first. When the first frame
 * begins, within the first period, is drawn. A frame whose exposure the end cuts off is not taken; a recording too
 * short for any frame is dark.
 *
 * @param framesPerSecond from 1 to 100 000
 * @param exposureNanos how long a frame gathers light: more than 0, at most the time from frame to frame
 * @param litShare least share of the exposure for a lit frame: more than 0, at most 1
 */
public record CameraFrames(double framesPerSecond, long exposureNanos, double litShare) implements Impairment {
    public CameraFrames {
        Bounds.check("frames per second", framesPerSecond, 1, 100_000);
        Bounds.checkPositive("an exposure", exposureNanos);
        Bounds.check("exposure in frames", exposureNanos * framesPerSecond / 1e9, 0, 1);
        Bounds.check("lit share of the exposure", litShare, Double.MIN_VALUE, 1);
    }

    @Override
    public String kind() {
        return "camera-frames";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        return new Film(train, chance.nextUnit()).developed();
    }

    /** The frames of one recording. */
    private final class Film {
        private final PulseTrain train;
        private final double periodNanos = 1e9 / framesPerSecond;
        private final double firstNanos;
        private final long frames;

        Film(PulseTrain train, double phase) {
            this.train = train;
            this.firstNanos = phase * periodNanos;
            double room = train.endNanos() - exposureNanos - firstNanos;
            this.frames = room < 0 ? 0 : 1 + (long) (room / periodNanos);
        }

        /**
         * Only a frame that an edge falls into, or the first one after an edge, can differ from the frame before; all
         * others need no look.
         */
        PulseTrain developed() {
            PulseTrain.Builder film = PulseTrain.builder();
            boolean level = frames > 0 && shows(0);
            long looked = 0;
            for (int i = 0; i < train.edgeCount(); i++) {
                long before = frameBefore(train.edgeNanos(i));
                for (long frame = Math.max(looked + 1, before); frame < Math.min(frames, before + 4); frame++) {
                    looked = frame;
                    if (shows(frame) != level) {
                        film.stay(level, startNanos(frame) - film.nowNanos());
                        level = !level;
                    }
                }
            }
            return film.stay(level, train.endNanos() - film.nowNanos()).build();
        }

        /** A frame that is over by an edge, with the next three up to the one that begins after it. */
        private long frameBefore(long edgeNanos) {
            double before = (edgeNanos - exposureNanos - firstNanos) / periodNanos;
            return (long) Math.max(0, before);
        }

        private boolean shows(long frame) {
            long start = startNanos(frame);
            return train.litNanosBetween(start, start + exposureNanos) >= litShare * exposureNanos;
        }

        private long startNanos(long frame) {
            return (long) (firstNanos + frame * periodNanos);
        }
    }
}
