package telltally.trainer.drill;

/** How hard a drill is, from 1 to 10; 10 is as on the vehicle. */
public record Level(int value) implements Comparable<Level> {
    public static final int LOWEST = 1;
    public static final int HIGHEST = 10;

    /** As on the vehicle: nominal timing, every digit, whole lists with their repeats. */
    public static final Level FULL = new Level(HIGHEST);

    public static final Level EASIEST = new Level(LOWEST);

    public Level {
        if (value < LOWEST || value > HIGHEST) {
            throw new IllegalArgumentException("a level is " + LOWEST + " to " + HIGHEST + ", not " + value);
        }
    }

    /** The level nearest to a number, which may lie beyond either end. */
    public static Level nearest(double value) {
        return new Level((int) Math.max(LOWEST, Math.min(HIGHEST, Math.round(value))));
    }

    public boolean full() {
        return value == HIGHEST;
    }

    /** How far from the easiest to the full level, from 0 to 1. */
    public double share() {
        return (double) (value - LOWEST) / (HIGHEST - LOWEST);
    }

    @Override
    public int compareTo(Level other) {
        return Integer.compare(value, other.value);
    }
}
