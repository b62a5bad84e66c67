package telltally.decoder.lattice;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import telltally.decoder.lattice.PracticeSessions.Spoiler;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.signal.PulseTrain;

/**
 * Prints what sessions of about 120 flashes cost, and hours of one, in processor time of the one thread, so that other
 * work on the machine hardly counts: the median over rounds of the mean over sessions, after as many rounds that do not
 * count, and memory allocated.
 */
public final class LatticeSpeed {
    private static final int FLASHES = 120;
    private static final int SESSIONS = 20;
    private static final long HOUR_NANOS = 3_600_000_000_000L;

    private LatticeSpeed() {}

    /** Arguments: rounds a format and impairment, then impairments (clean, jitter and mixed where none is named). */
    public static void main(String[] args) {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 60;
        List<String> names =
                args.length > 1 ? List.of(args).subList(1, args.length) : List.of("CLEAN", "JITTER", "MIXED");
        List<FlashFormat> formats = FormatCatalog.shipped().all();
        LatticeDecoder decoder = new LatticeDecoder();
        for (String name : names) {
            for (FlashFormat format : formats) {
                List<PulseTrain> trains = trains(format, Spoiler.valueOf(name));
                if (trains.isEmpty()) {
                    continue;
                }
                String told = measured(decoder, trains, List.of(format), rounds);
                String auto = measured(decoder, trains, formats, rounds);
                System.out.printf(Locale.ROOT, "%-8s %-12s told %s   auto %s%n", name, format.id(), told, auto);
            }
        }
        hours(decoder, formats.get(0), formats);
    }

    private static void hours(LatticeDecoder decoder, FlashFormat format, List<FlashFormat> formats) {
        PulseTrain session = PracticeSessions.session(format, Spoiler.CLEAN, 1).train();
        for (int hours = 1; hours <= 4; hours *= 2) {
            PulseTrain.Builder joined = PulseTrain.builder();
            while (joined.nowNanos() < hours * HOUR_NANOS) {
                session.intervals().forEach(each -> joined.stay(each.lit(), each.lengthNanos()));
            }
            List<PulseTrain> one = List.of(joined.build());
            System.out.printf(
                    Locale.ROOT,
                    "%d h, %d flashes of %s: told %s   auto %s%n",
                    hours,
                    one.get(0).edgeCount() / 2,
                    format.id(),
                    measured(decoder, one, List.of(format), 20),
                    measured(decoder, one, formats, 20));
        }
    }

    private static List<PulseTrain> trains(FlashFormat format, Spoiler spoiler) {
        List<PulseTrain> trains = new java.util.ArrayList<>();
        for (long seed = 1; trains.size() < SESSIONS && seed < 20_000; seed++) {
            PulseTrain train = PracticeSessions.session(format, spoiler, seed).train();
            if (Math.abs(train.edgeCount() / 2 - FLASHES) <= 12) {
                trains.add(train);
            }
        }
        return trains;
    }

    private static String measured(
            LatticeDecoder decoder, List<PulseTrain> trains, List<FlashFormat> candidates, int rounds) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double[] micros = new double[rounds];
        double kilobytes = 0;
        for (int round = -rounds; round < 0; round++) {
            trains.forEach(train -> decoder.decode(train, candidates));
        }
        for (int round = 0; round < rounds; round++) {
            long bytes = threads.getCurrentThreadAllocatedBytes();
            long nanos = threads.getCurrentThreadCpuTime();
            for (PulseTrain train : trains) {
                decoder.decode(train, candidates);
            }
            micros[round] = (threads.getCurrentThreadCpuTime() - nanos) / 1e3 / trains.size();
            kilobytes = (threads.getCurrentThreadAllocatedBytes() - bytes) / 1e3 / trains.size();
        }
        Arrays.sort(micros);
        return String.format(Locale.ROOT, "%6.0f us (best %6.0f) %6.0f kB", micros[rounds / 2], micros[0], kilobytes);
    }
}
