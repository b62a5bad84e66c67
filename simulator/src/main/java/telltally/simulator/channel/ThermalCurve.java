package telltally.simulator.channel;

import java.util.Arrays;

/**
 * How a filament warms or cools from one temperature to where it settles, under one supply: instants, temperatures and
 * light, with straight lines between. Since the balance knows no clock, a filament that comes in at some temperature
 * follows the same curve from that point on; so a lamp is solved twice, not once for every flash.
 */
final class ThermalCurve {
    /** Steps of at most 8 K, and 5 % of what is left: a straight line between misses the light by less than 0.1 %. */
    private static final double MOST_STEP_KELVIN = 8;

    private static final double LEAST_STEP_KELVIN = 0.05;
    private static final double STEP_SHARE = 0.05;

    private final boolean warming;
    private double[] nanos = new double[512];
    private double[] kelvins = new double[512];
    private int size;
    private final double[] lights;

    private ThermalCurve(
            boolean warming, HeatBalance balance, double fromKelvin, double toKelvin, FilamentLight light) {
        this.warming = warming;
        add(0, fromKelvin);
        double kelvin = fromKelvin;
        double seconds = 0;
        while (Math.abs(toKelvin - kelvin) > 2 * LEAST_STEP_KELVIN) {
            double stepKelvin = Math.min(MOST_STEP_KELVIN, STEP_SHARE * Math.abs(toKelvin - kelvin));
            double step = Math.max(LEAST_STEP_KELVIN, stepKelvin) / Math.abs(balance.kelvinPerSecond(kelvin));
            kelvin = rungeKutta(balance, kelvin, step);
            seconds += step;
            add(seconds * 1e9, kelvin);
        }
        lights = new double[size];
        Arrays.setAll(lights, i -> light.level(kelvins[i]));
    }

    /** From cold to where the filament settles. */
    static ThermalCurve warming(HeatBalance balance, FilamentLight light) {
        return new ThermalCurve(true, balance, Tungsten.LEAST_KELVIN, balance.steadyKelvin(), light);
    }

    /** Switched off, from a temperature to cold. */
    static ThermalCurve cooling(Filament filament, double fromKelvin, FilamentLight light) {
        return new ThermalCurve(false, new HeatBalance(filament, 0, 0), fromKelvin, Tungsten.LEAST_KELVIN, light);
    }

    double kelvinAt(double atNanos) {
        return at(kelvins, index(atNanos), atNanos);
    }

    /** The place on the curve where the filament has this temperature: its beginning or end if it lies beyond. */
    double nanosAtKelvin(double kelvin) {
        return inverse(kelvins, kelvin);
    }

    /** When the curve reaches a light level; infinity if it never does. */
    double nanosAtLight(double level) {
        boolean never = warming ? level > lights[size - 1] : level < lights[size - 1];
        return never ? Double.POSITIVE_INFINITY : inverse(lights, level);
    }

    /** Reads light along the curve; every place must not lie before the last one. */
    final class Reader {
        private int index;

        double lightAt(double atNanos) {
            while (index < size - 2 && nanos[index + 1] < atNanos) {
                index++;
            }
            return at(lights, index, atNanos);
        }
    }

    Reader readerFrom(double atNanos) {
        Reader reader = new Reader();
        reader.index = index(atNanos);
        return reader;
    }

    private void add(double atNanos, double kelvin) {
        if (size == nanos.length) {
            nanos = Arrays.copyOf(nanos, 2 * size);
            kelvins = Arrays.copyOf(kelvins, 2 * size);
        }
        nanos[size] = atNanos;
        kelvins[size++] = kelvin;
    }

    /** The classical rule of fourth order. */
    private static double rungeKutta(HeatBalance balance, double kelvin, double step) {
        double first = balance.kelvinPerSecond(kelvin);
        double second = balance.kelvinPerSecond(kelvin + first * step / 2);
        double third = balance.kelvinPerSecond(kelvin + second * step / 2);
        double fourth = balance.kelvinPerSecond(kelvin + third * step);
        return kelvin + (first + 2 * second + 2 * third + fourth) * step / 6;
    }

    private int index(double atNanos) {
        int found = Arrays.binarySearch(nanos, 0, size, atNanos);
        return Math.max(0, Math.min(size - 2, found >= 0 ? found : -found - 2));
    }

    private double at(double[] values, int index, double atNanos) {
        if (size == 1 || atNanos >= nanos[size - 1]) {
            return values[size - 1];
        }
        double share = (atNanos - nanos[index]) / (nanos[index + 1] - nanos[index]);
        return values[index] + share * (values[index + 1] - values[index]);
    }

    private double inverse(double[] values, double value) {
        int below = 0;
        int above = size - 1;
        if (warming ? value <= values[0] : value >= values[0]) {
            return 0;
        }
        if (warming ? value >= values[above] : value <= values[above]) {
            return nanos[above];
        }
        while (above - below > 1) {
            int middle = (above + below) >>> 1;
            if (warming == (values[middle] <= value)) {
                below = middle;
            } else {
                above = middle;
            }
        }
        double share = (value - values[below]) / (values[above] - values[below]);
        return nanos[below] + share * (nanos[above] - nanos[below]);
    }
}
