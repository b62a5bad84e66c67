package telltally.decoder.lattice;

import java.util.List;
import java.util.Map;
import telltally.decoder.lattice.PracticeSessions.Session;
import telltally.decoder.lattice.PracticeSessions.Spoiler;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** Prints shares of sessions read wholly right, and how far probabilities can be trusted. */
public final class LatticeReport {
    private static final int BINS = 20;

    private final long[] binCount = new long[BINS];
    private final double[] binSum = new double[BINS];
    private final long[] binRight = new long[BINS];

    private LatticeReport() {}

    /** Arguments: sessions a format and impairment, first seed, then impairments (all where none is named). */
    public static void main(String[] args) {
        int sessions = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        boolean auto = !Boolean.getBoolean("told");
        List<FlashFormat> formats = FormatCatalog.shipped().all();
        LatticeReport report = new LatticeReport();
        Decoder decoder = new LatticeDecoder();
        for (Spoiler spoiler : Spoiler.values()) {
            if (args.length > 2 && !List.of(args).subList(2, args.length).contains(spoiler.name())) {
                continue;
            }
            StringBuilder line = new StringBuilder(spoiler.name());
            int rightOfAll = 0;
            int all = 0;
            int repeated = 0;
            int repeatedRight = 0;
            long began = System.nanoTime();
            for (FlashFormat format : formats) {
                int right = 0;
                for (int i = 0; i < sessions; i++) {
                    Session session = PracticeSessions.session(format, spoiler, seed + i);
                    Reading reading = decoder.decode(session.train(), auto ? formats : List.of(format));
                    boolean good = said(reading.codes()).equals(said(session.codes()));
                    right += good ? 1 : 0;
                    repeated += session.repeated() ? 1 : 0;
                    repeatedRight += good && session.repeated() ? 1 : 0;
                    report.calibrate(reading, session.codes());
                    if (!good && Boolean.getBoolean("show")) {
                        System.out.println(spoiler + " " + format.id() + " " + (seed + i) + " sent " + session.codes()
                                + " read "
                                + reading.format().map(f -> f.id() + " " + f.probability() + " " + f.clockScale())
                                + reading.codes() + " "
                                + reading.groups().stream()
                                        .map(g -> g.kind() + " " + g.digits() + " "
                                                + Math.round(g.probability() * 1000) / 1e3)
                                        .toList()
                                + " | " + session.story());
                        if (Boolean.getBoolean("trains")) {
                            System.out.println("   " + session.train());
                        }
                    }
                }
                rightOfAll += right;
                all += sessions;
                line.append("  ")
                        .append(format.id())
                        .append(' ')
                        .append(right)
                        .append('/')
                        .append(sessions);
            }
            long each = (System.nanoTime() - began) / all / 1000;
            System.out.println(line + "  ALL " + Math.round(1e4 * rightOfAll / all) / 1e2
                    + " %  of those seen whole at least once more "
                    + Math.round(1e4 * repeatedRight / Math.max(1, repeated)) / 1e2 + " % of " + repeated + "  " + each
                    + " us");
        }
        report.print();
    }

    /** Segments without a code say nothing unless all are so. */
    private static Map<Segment, List<String>> said(Map<Segment, List<String>> codes) {
        Map<Segment, List<String>> said = new java.util.EnumMap<>(Segment.class);
        codes.forEach((segment, list) -> {
            if (!list.isEmpty() || segment == Segment.CODES) {
                said.put(segment, list);
            }
        });
        return said;
    }

    private void calibrate(Reading reading, Map<Segment, List<String>> truth) {
        for (Segment segment : reading.codes().keySet()) {
            for (String code : reading.codes().get(segment)) {
                double probability = probability(reading, segment, code);
                int bin = (int) Math.min(BINS - 1, probability * BINS);
                binCount[bin]++;
                binSum[bin] += probability;
                binRight[bin] += truth.getOrDefault(segment, List.of()).contains(code) ? 1 : 0;
            }
        }
    }

    /** What a reading says of one of its codes. */
    static double probability(Reading reading, Segment segment, String code) {
        return reading.groups().stream()
                .filter(group -> group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE)
                .filter(group -> group.segment() == segment && group.digits().equals(code))
                .findFirst()
                .orElseThrow()
                .probability();
    }

    private void print() {
        long all = 0;
        double error = 0;
        for (int i = 0; i < BINS; i++) {
            all += binCount[i];
            error += Math.abs(binSum[i] - binRight[i]);
            if (binCount[i] > 0) {
                System.out.println("p about " + Math.round(1e4 * binSum[i] / binCount[i]) / 1e4 + "  right "
                        + Math.round(1e4 * binRight[i] / binCount[i]) / 1e4 + "  of " + binCount[i]);
            }
        }
        System.out.println(
                "expected calibration error " + Math.round(1e5 * error / all) / 1e5 + " over " + all + " codes");
    }
}
