package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * How taps fell on the flashes that they were meant for.
 *
 * @param flashes that were shown
 * @param meanLateNanos of those taps that have a flash; negative where they came early
 * @param spreadNanos the standard deviation of the same
 */
record TapTiming(int taps, int flashes, long meanLateNanos, long spreadNanos) {
    /** A tap belongs to the flash whose beginning is nearest, if that is no farther than this. */
    private static final long FARTHEST_NANOS = 400_000_000L;

    static TapTiming of(PulseTrain pulses, List<Interval> taps) {
        List<Interval> flashes =
                pulses.intervals().stream().filter(Interval::lit).toList();
        List<Long> late = new ArrayList<>();
        for (Interval tap : taps) {
            flashes.stream()
                    .map(flash -> tap.startNanos() - flash.startNanos())
                    .filter(nanos -> Math.abs(nanos) <= FARTHEST_NANOS)
                    .min((one, other) -> Long.compare(Math.abs(one), Math.abs(other)))
                    .ifPresent(late::add);
        }
        double mean = late.stream().mapToLong(Long::longValue).average().orElse(0);
        double variance = late.stream()
                .mapToDouble(nanos -> (nanos - mean) * (nanos - mean))
                .average()
                .orElse(0);
        return new TapTiming(taps.size(), flashes.size(), Math.round(mean), Math.round(Math.sqrt(variance)));
    }
}
