package telltally.decoder.capture;

import java.util.Arrays;

/**
 * How far the camera has moved, picture by picture in order of time, so that a spot stays in its cell in a shaking hand.
 * The brightness summed over columns, and over rows, is compared with a slowly renewed mean of the pictures before at
 * every shift within reach; that of least absolute difference is taken. (Matching of integral projections, as in
 * electronic image stabilisers; after K. Ratakonda, Real-time digital video stabilization for multi-media applications,
 * Proc. IEEE ISCAS 1998, vol. 4, 69-72, from memory.)
 */
final class Steadying {
    /** How much of the mean each picture renews. */
    private static final double RENEWAL = 0.1;

    private final Axis across;
    private final Axis down;

    Steadying(int width, int height) {
        across = new Axis(width);
        down = new Axis(height);
    }

    /** In pixels, to the right and downwards, since the first picture. */
    record Shift(int right, int down) {}

    /** @param luma brightness of one picture, row by row, as bytes less 128 */
    Shift next(byte[] luma) {
        int width = across.mean.length;
        int height = down.mean.length;
        double[] columns = new double[width];
        double[] rows = new double[height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int value = luma[y * width + x];
                columns[x] += value;
                rows[y] += value;
            }
        }
        for (int x = 0; x < width; x++) {
            columns[x] /= height;
        }
        for (int y = 0; y < height; y++) {
            rows[y] /= width;
        }
        return new Shift(across.next(columns), down.next(rows));
    }

    /** One direction. */
    private static final class Axis {
        /** A sixth of the picture either way. */
        private static final int REACH_SHARE = 6;
        /** Moving must pay: in a picture without features, noise alone would carry it away. */
        private static final double WORTH_MOVING = 0.85;
        /**
         * Steps of brightness by which the mean must change within a few pixels: a lamp alone on a plain dash is no
         * landmark.
         */
        private static final double LEAST_FEATURES = 0.6;

        private static final int FEATURE_PIXELS = 3;

        private final double[] mean;
        private final int reach;
        private boolean begun;
        private int shift;

        Axis(int length) {
            mean = new double[length];
            reach = Math.max(FEATURE_PIXELS, length / REACH_SHARE);
        }

        int next(double[] profile) {
            double[] detail = withoutSlowChanges(profile);
            if (!begun) {
                begun = true;
                System.arraycopy(detail, 0, mean, 0, mean.length);
                return 0;
            }
            shift = features() < LEAST_FEATURES ? shift : best(detail);
            for (int i = reach; i < mean.length - reach; i++) {
                int at = i + shift;
                mean[i] += RENEWAL * (detail[at] - mean[i]);
            }
            return shift;
        }

        private double features() {
            double sum = 0;
            for (int i = reach; i < mean.length - reach; i++) {
                sum += Math.abs(mean[i] - mean[i - FEATURE_PIXELS]);
            }
            return sum / (mean.length - 2 * reach);
        }

        private int best(double[] detail) {
            int best = shift;
            double least = WORTH_MOVING * difference(detail, shift);
            for (int tried = -reach; tried <= reach; tried++) {
                double difference = difference(detail, tried);
                if (difference < least) {
                    least = difference;
                    best = tried;
                }
            }
            return best;
        }

        /** The sum over what lies in both at any shift. */
        private double difference(double[] detail, int tried) {
            double sum = 0;
            for (int i = reach; i < mean.length - reach; i++) {
                sum += Math.abs(detail[i + tried] - mean[i]);
            }
            return sum;
        }

        /** Exposure changes brighten all alike: the mean over a fifth of the picture is taken out. */
        private static double[] withoutSlowChanges(double[] profile) {
            int half = Math.max(1, profile.length / 10);
            double[] sums = new double[profile.length + 1];
            for (int i = 0; i < profile.length; i++) {
                sums[i + 1] = sums[i] + profile[i];
            }
            double[] detail = new double[profile.length];
            Arrays.setAll(detail, i -> {
                int from = Math.max(0, i - half);
                int to = Math.min(profile.length, i + half + 1);
                return profile[i] - (sums[to] - sums[from]) / (to - from);
            });
            return detail;
        }
    }
}
