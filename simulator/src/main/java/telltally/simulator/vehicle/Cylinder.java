package telltally.simulator.vehicle;

/**
 * How much of its share a cylinder does, and why not more.
 *
 * @param strength energy of its firing against that of a sound cylinder with the same air; 0 is dead
 * @param weakness NONE for a sound cylinder, whose strength is within a tenth of 1
 */
public record Cylinder(double strength, Weakness weakness) {
    /** A balance test tells which cylinder is weak, never which of these it is. */
    public enum Weakness {
        NONE,
        SPARK,
        FUEL,
        COMPRESSION
    }

    public static final Cylinder SOUND = new Cylinder(1, Weakness.NONE);

    private static final double SPREAD_OF_SOUND_ONES = 0.1;

    public Cylinder {
        if (weakness == Weakness.NONE) {
            if (!(Math.abs(strength - 1) <= SPREAD_OF_SOUND_ONES)) {
                throw new IllegalArgumentException("a cylinder of strength " + strength + " has some weakness");
            }
        } else if (!(strength >= 0 && strength < 1)) {
            throw new IllegalArgumentException(
                    "a cylinder weak in " + weakness + " has a strength from 0 to below 1, not " + strength);
        }
    }
}
