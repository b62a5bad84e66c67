package telltally.decoder.card;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Whether a decoder's probabilities can be trusted: of the codes that it gave about this probability, how many were right.
 * Twenty bins of equal width; probabilities are kept as millionths, so that sums are exact in any order.
 *
 * @param bins {@value #BINS} of them, from 0 up
 */
public record Calibration(List<Bin> bins) {
    public static final int BINS = 20;

    /** What a probability of 1 is counted as. */
    public static final long MILLION = 1_000_000;

    public static final Calibration NOTHING = new Calibration(Collections.nCopies(BINS, new Bin(0, 0, 0)));

    public Calibration {
        bins = List.copyOf(bins);
        if (bins.size() != BINS) {
            throw new IllegalArgumentException(bins.size() + " bins");
        }
    }

    /**
     * @param codes how many were given such a probability
     * @param right how many of them had been sent
     * @param millionths the sum of their probabilities
     */
    public record Bin(long codes, long right, long millionths) {
        Bin plus(Bin other) {
            return new Bin(codes + other.codes, right + other.right, millionths + other.millionths);
        }
    }

    /** Counts from 0; a probability of 1 belongs to the last one. */
    public static int bin(long millionths) {
        return (int) Math.min(BINS - 1, millionths * BINS / MILLION);
    }

    public long codes() {
        return bins.stream().mapToLong(Bin::codes).sum();
    }

    public Calibration plus(Calibration other) {
        List<Bin> sums = new ArrayList<>();
        for (int i = 0; i < BINS; i++) {
            sums.add(bins.get(i).plus(other.bins.get(i)));
        }
        return new Calibration(sums);
    }

    /**
     * Expected calibration error: the distance between claimed and right in each bin, weighed by its codes. Naeini, Cooper
     * &amp; Hauskrecht 2015, AAAI 29:2901-2907. Exact, then rounded to six places; empty where no code was given a
     * probability.
     */
    public Optional<BigDecimal> expectedError() {
        long all = codes();
        if (all == 0) {
            return Optional.empty();
        }
        long off = bins.stream()
                .mapToLong(bin -> Math.abs(bin.millionths() - bin.right() * MILLION))
                .sum();
        return Optional.of(BigDecimal.valueOf(off)
                .divide(BigDecimal.valueOf(all).multiply(BigDecimal.valueOf(MILLION)), 6, RoundingMode.HALF_EVEN));
    }
}
