package telltally.simulator.channel;

import java.util.Objects;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * An incandescent lamp: it takes time to warm up and to cool, is dimmer and slower on a weak battery, and smooths
 * flashes that come too fast. Heat leaves by radiation only, so a small bulb, which also loses some through its leads,
 * is in truth a little quicker. Cold before a train that begins dark; steadily lit before one that begins lit.
 *
 * <p>Building one solves the heat balance; using it only reads the solution, so keep it for many trains.
 */
public final class FilamentLamp implements Lamp {
    /** Share of the rated light below which nothing is seen by day, whatever the marks; no source. */
    public static final double FAINTEST_LIGHT = 0.01;

    /** Seen from half of the light it settles at, no longer seen at a tenth; no source. */
    public static final Hysteresis USUAL_MARKS = new Hysteresis(0.1, 0.5);

    private final Bulb bulb;
    private final HeatBalance balance;
    private final Hysteresis marks;
    private final FilamentLight light;
    private final double steadyKelvin;
    private final ThermalCurve warming;
    private final ThermalCurve cooling;
    private final double seenNanos;
    private final double goneNanos;

    /**
     * @param supplyVolts at lamp and series resistance together while lit, 0 to 300
     * @param seriesOhms wiring, driver and battery, 0 to 10 000
     * @param marks shares of the light at which this lamp settles on this supply: seen from the upper, gone at the lower
     * @throws IllegalArgumentException if the filament would get hotter than 3500 K, near which tungsten melts
     */
    public FilamentLamp(Bulb bulb, double supplyVolts, double seriesOhms, Hysteresis marks) {
        Bounds.check("supply volts", supplyVolts, 0, 300);
        Bounds.check("series ohms", seriesOhms, 0, 10_000);
        Bounds.check("lower mark", marks.low(), 0.001, 1);
        Bounds.check("upper mark", marks.high(), 0.001, 0.999);
        this.bulb = bulb;
        Filament filament = new Filament(bulb);
        this.balance = new HeatBalance(filament, supplyVolts, seriesOhms);
        this.marks = marks;
        this.light = new FilamentLight(bulb.hotKelvin());
        this.steadyKelvin = balance.steadyKelvin();
        Bounds.check("steady temperature of the filament", steadyKelvin, 0, 3500);
        this.warming = ThermalCurve.warming(balance, light);
        this.cooling = ThermalCurve.cooling(filament, steadyKelvin, light);
        this.seenNanos = warming.nanosAtLight(Math.max(FAINTEST_LIGHT, marks.high() * steadyLight()));
        this.goneNanos = cooling.nanosAtLight(marks.low() * steadyLight());
    }

    public static FilamentLamp of(Bulb bulb, double supplyVolts) {
        return new FilamentLamp(bulb, supplyVolts, 0, USUAL_MARKS);
    }

    public double steadyKelvin() {
        return steadyKelvin;
    }

    public double steadyAmperes() {
        return balance.amperes(steadyKelvin);
    }

    /** What the filament turns into heat and light. */
    public double steadyWatts() {
        return balance.filamentWatts(steadyKelvin);
    }

    /** Relative to the bulb at its rated voltage. */
    public double steadyLight() {
        return light.level(steadyKelvin);
    }

    /** The inrush when switched on cold. */
    public double coldAmperes() {
        return balance.amperes(Tungsten.LEAST_KELVIN);
    }

    @Override
    public String kind() {
        return "filament-lamp";
    }

    @Override
    public PulseTrain visible(PulseTrain drive) {
        PulseTrain.Builder train = PulseTrain.builder();
        boolean seen = drive.litAtStart() && seenNanos < Double.POSITIVE_INFINITY;
        double kelvin = drive.litAtStart() ? steadyKelvin : Tungsten.LEAST_KELVIN;
        for (Interval stretch : drive.intervals()) {
            ThermalCurve curve = stretch.lit() ? warming : cooling;
            double from = curve.nanosAtKelvin(kelvin);
            double to = from + stretch.lengthNanos();
            double crossing = stretch.lit() ? seenNanos : goneNanos;
            if (seen != stretch.lit() && crossing <= to) {
                long until = stretch.startNanos() + (long) Math.max(0, crossing - from);
                train.stay(seen, until - train.nowNanos());
                seen = stretch.lit();
            }
            kelvin = curve.kelvinAt(to);
        }
        return train.stay(seen, drive.endNanos() - train.nowNanos()).build();
    }

    @Override
    public SampledSignal light(PulseTrain drive, double samplesPerSecond) {
        SampleClock clock = new SampleClock(samplesPerSecond, drive.endNanos());
        double[] levels = new double[clock.count()];
        double kelvin = drive.litAtStart() ? steadyKelvin : Tungsten.LEAST_KELVIN;
        int sample = 0;
        for (Interval stretch : drive.intervals()) {
            ThermalCurve curve = stretch.lit() ? warming : cooling;
            double from = curve.nanosAtKelvin(kelvin);
            ThermalCurve.Reader reader = curve.readerFrom(from);
            for (; sample < levels.length && clock.atNanos(sample) < stretch.endNanos(); sample++) {
                levels[sample] = reader.lightAt(from + (clock.atNanos(sample) - stretch.startNanos()));
            }
            kelvin = curve.kelvinAt(from + stretch.lengthNanos());
        }
        return SampledSignal.of(clock.all(), levels);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FilamentLamp that
                && bulb.equals(that.bulb)
                && balance.supplyVolts() == that.balance.supplyVolts()
                && balance.seriesOhms() == that.balance.seriesOhms()
                && marks.equals(that.marks);
    }

    @Override
    public int hashCode() {
        return Objects.hash(bulb, balance.supplyVolts(), balance.seriesOhms(), marks);
    }

    @Override
    public String toString() {
        return "FilamentLamp[" + bulb + " at " + balance.supplyVolts() + " V through " + balance.seriesOhms()
                + " ohms, seen by " + marks + "]";
    }
}
