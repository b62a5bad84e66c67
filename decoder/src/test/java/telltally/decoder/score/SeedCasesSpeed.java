package telltally.decoder.score;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import telltally.simulator.document.ProblemException;

/**
 * Prints what it costs to make the cases of each seed set: processor time of the one thread that makes them, so that
 * other work beside it hardly counts.
 *
 * <pre>mvn -q -Pprogram -pl decoder -am process-test-classes -Dprogram=telltally.decoder.score.SeedCasesSpeed</pre>
 */
final class SeedCasesSpeed {
    private static final int WARM_UP_PART = 1;
    private static final int SEEDS = 5_000;
    private static final int FEWER = 20;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

    private SeedCasesSpeed() {}

    /** @param args seed sets or folders of them; none for those of the project */
    public static void main(String[] args) throws IOException, ProblemException {
        SeedCasesSpeed speed = new SeedCasesSpeed();
        System.out.println("microseconds a case (edges of lamp and pin together), set");
        for (String place : args.length == 0 ? new String[] {SeedFolder.SHIPPED.toString()} : args) {
            for (Path file : SeedFiles.in(Path.of(place))) {
                speed.measure(SeedSetReader.read(file));
            }
        }
    }

    private void measure(SeedSet set) {
        if (set.source() instanceof SeedSource.Recordings) {
            return;
        }
        int seeds = set.source() instanceof SeedSource.Scenarios ? SEEDS / FEWER : SEEDS;
        SeedCases cases = new SeedCases(set);
        made(cases, set.seeds().from(), seeds / WARM_UP_PART);
        long before = threads.getCurrentThreadCpuTime();
        long edges = made(cases, set.seeds().from(), seeds);
        double micros = (threads.getCurrentThreadCpuTime() - before) / 1e3;
        long made = (long) seeds * cases.of(set.seeds().from()).size();
        System.out.printf("%8.1f (%5d) %s%n", micros / made, edges / made, set.id());
    }

    private static long made(SeedCases cases, long from, int seeds) {
        long edges = 0;
        for (long seed = from; seed < from + seeds; seed++) {
            for (SeedCase each : cases.of(seed)) {
                edges += each.lamp().edgeCount() + each.pin().edgeCount();
            }
        }
        return edges;
    }
}
