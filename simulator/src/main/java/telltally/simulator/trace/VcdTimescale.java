package telltally.simulator.trace;

import java.util.List;
import java.util.Optional;
import telltally.simulator.signal.Seconds;

/**
 * What one unit of time in a value change dump is worth. One of the two is 1.
 *
 * @param nanosPerUnit for units of a nanosecond and more
 * @param unitsPerNano for shorter units
 */
record VcdTimescale(long nanosPerUnit, long unitsPerNano) {
    static final String EXPECTED = "1, 10 or 100 and then s, ms, us, ns, ps or fs";
    static final VcdTimescale NANOSECOND = new VcdTimescale(1, 1);

    /** From the longest to the shortest, each a thousandth of the one before; the fourth is the nanosecond. */
    private static final List<String> UNITS = List.of("s", "ms", "us", "ns", "ps", "fs");

    /** Reads {@code 10us}; empty if it is none of the units that IEEE 1364-2005, 18.2.3 allows. */
    static Optional<VcdTimescale> parse(String text) {
        int letters = text.startsWith("100") ? 3 : text.startsWith("10") ? 2 : text.startsWith("1") ? 1 : 0;
        int unit = UNITS.indexOf(text.substring(letters));
        if (letters == 0 || unit < 0) {
            return Optional.empty();
        }
        long count = letters == 3 ? 100 : letters == 2 ? 10 : 1;
        return Optional.of(
                unit <= 3
                        ? new VcdTimescale(count * thousandTo(3 - unit), 1)
                        : new VcdTimescale(1, thousandTo(unit - 3) / count));
    }

    /** The most units that are read. */
    long mostUnits() {
        return unitsPerNano > 9 ? Long.MAX_VALUE : Seconds.MAX_NANOS / nanosPerUnit * unitsPerNano;
    }

    /** A time in nanoseconds, rounded half up. */
    long nanos(long units) {
        long whole = units / unitsPerNano;
        boolean up = unitsPerNano > 1 && units % unitsPerNano >= unitsPerNano / 2;
        return (up ? whole + 1 : whole) * nanosPerUnit;
    }

    private static long thousandTo(int power) {
        long value = 1;
        for (int i = 0; i < power; i++) {
            value *= 1000;
        }
        return value;
    }
}
