package telltally.simulator.chance;

import java.nio.charset.StandardCharsets;

/**
 * A stream of random numbers, and the door to streams of other names. What a stream gives depends on the seed and on
 * the names that led to it, never on who drew before: adding a stream moves no other.
 *
 * <p>The generator is SplitMix64 (Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA
 * 2014), written out here so that no JDK can change it. Only {@code StrictMath} and exact arithmetic are used, so the
 * numbers are the same on every processor. Not for sharing between threads.
 */
public final class Chance {
    private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1.0p-53;

    private final long origin;
    private long state;
    private double spareNormal;
    private boolean spare;

    private Chance(long origin) {
        this.origin = origin;
        this.state = origin;
    }

    public static Chance of(long seed) {
        return new Chance(seed);
    }

    /** A fresh stream with this name below this one, from its beginning, however much was drawn before. */
    public Chance stream(String name) {
        // FNV-1a, 64 bit (Fowler, Noll, Vo; draft-eastlake-fnv), then mixed with the origin, so that names that
        // differ in one letter lead far apart.
        long hash = 0xcbf29ce484222325L;
        for (byte letter : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (letter & 0xff)) * 0x100000001b3L;
        }
        return new Chance(mix(mix(origin + GOLDEN_GAMMA) ^ hash));
    }

    /** The stream with this number below this one. */
    public Chance stream(long number) {
        return new Chance(mix(mix(origin + GOLDEN_GAMMA) + GOLDEN_GAMMA * (2 * number + 1)));
    }

    public long nextLong() {
        state += GOLDEN_GAMMA;
        return mix(state);
    }

    /** Evenly spread in [0, 1), in steps of 2^-53. */
    public double nextUnit() {
        return (nextLong() >>> 11) * UNIT;
    }

    /** Evenly spread in [from, to); the bound itself where the two are equal. */
    public double between(double from, double to) {
        double drawn = from + (to - from) * nextUnit();
        // The sum may be rounded up to the bound.
        return drawn < to ? drawn : Math.max(from, Math.nextDown(to));
    }

    /**
     * A whole number in [0, bound), every one equally likely.
     *
     * @throws IllegalArgumentException if the bound is not positive
     */
    public int below(int bound) {
        if (bound <= 0) {
            throw new IllegalArgumentException("nothing lies below " + bound);
        }
        // Numbers beyond the last whole multiple of the bound are drawn again, or the small ones would come too often.
        long limit = Long.MAX_VALUE - Long.MAX_VALUE % bound;
        long drawn;
        do {
            drawn = nextLong() >>> 1;
        } while (drawn >= limit);
        return (int) (drawn % bound);
    }

    public boolean happens(double probability) {
        return nextUnit() < probability;
    }

    /** Standard normal, by the polar method (Marsaglia and Bray, SIAM Review 6, 1964). */
    public double nextNormal() {
        if (spare) {
            spare = false;
            return spareNormal;
        }
        double x;
        double y;
        double square;
        do {
            x = 2 * nextUnit() - 1;
            y = 2 * nextUnit() - 1;
            square = x * x + y * y;
        } while (square >= 1 || square == 0);
        double stretch = Math.sqrt(-2 * StrictMath.log(square) / square);
        spareNormal = y * stretch;
        spare = true;
        return x * stretch;
    }

    /** Exponential with mean 1. */
    public double nextExponential() {
        return -StrictMath.log1p(-nextUnit());
    }

    /** David Stafford's thirteenth variant of the 64-bit finaliser, as SplitMix64 uses it. */
    private static long mix(long bits) {
        long z = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
