package telltally.decoder.lattice;

/**
 * One list as it was sent, run over the flashes of one recording. A node's tag is the place of the flash in the row. The
 * same sum as that of an automaton whose flashes follow each other in one row, without the automaton.
 */
final class RowPass extends Pass {
    private static final int MOST_MISSED = Automaton.MOST_MISSED;
    private static final double FARTHEST = Noise.REACH * Noise.REACH;

    /** Wide, since a list that fits badly in one place may fit all the better later, and few paths lead through a row. */
    private static final double BEAM = 1e-14;

    private static final double NEGLIGIBLE = 1e-15;
    /** A row of so few flashes is summed whole. */
    private static final int SHORT_ROW = 32;

    private final SentList row;
    private final double negligible;
    private final LightDensities lights;
    private final double[] gapMean;
    private final double[] gapDeviation;
    private final double[] missed;
    private final int[] nodeAt;
    private int nodesFrom;
    private double most;
    private double gapSeconds;

    private RowPass(SentList row, Flashes flashes, Channel channel, Lattice lattice) {
        super(flashes, channel, lattice, row.shortestLight(), row.count() > SHORT_ROW ? BEAM : 0);
        this.negligible = row.count() > SHORT_ROW ? NEGLIGIBLE : 0;
        this.row = row;
        lights = new LightDensities(row.lights);
        lights.through(channel);
        int gaps = row.gaps.size();
        gapMean = new double[gaps];
        gapDeviation = new double[gaps];
        for (int i = 0; i < gaps; i++) {
            gapMean[i] = row.gaps.get(i).seconds() * channel.scale() - channel.biasSeconds();
            gapDeviation[i] = channel.deviation(row.gaps.get(i).squares());
        }
        missed = channel.missedInARow(MOST_MISSED);
        nodeAt = new int[row.count()];
    }

    static RowPass run(SentList row, Flashes flashes, Channel channel, Lattice lattice) {
        RowPass pass = new RowPass(row, flashes, channel, lattice);
        pass.sweep();
        return pass;
    }

    @Override
    void begin(int flash) {
        most = 0;
        nodesFrom = lattice.nodes();
        lights.lookAt(flashes.lit(flash), isCutAtEnd(flash));
    }

    @Override
    void gap(double seconds) {
        gapSeconds = seconds;
    }

    @Override
    void follow(int node, double here, double ghosts) {
        int from = lattice.tag(node);
        double sent = 0;
        double squares = 0;
        for (int unseen = 0; unseen <= MOST_MISSED && from + unseen + 1 < row.count(); unseen++) {
            int to = from + unseen + 1;
            Automaton.Gap gap = row.gaps.get(row.gapBefore(to));
            sent += gap.seconds();
            squares += gap.squares();
            double density = gapDensity(sent, squares);
            if (density > 0) {
                double weight = density * lights.density[row.light(to)] * missed[unseen];
                if (here * weight > most) {
                    most = Math.max(most, here * weight * negligible);
                    add(node, to, weight * ghosts);
                }
            }
            double light = row.lights.get(row.light(to)).seconds();
            sent += light;
            squares += light * light;
        }
    }

    private double gapDensity(double sent, double squares) {
        double mean = sent * channel.scale() - channel.biasSeconds();
        double off = gapSeconds - mean;
        double variance = channel.variance(squares);
        double smeared = smear(gapSeconds, mean);
        if (off * off >= FARTHEST * variance) {
            return smeared;
        }
        double deviation = Math.sqrt(variance);
        return Noise.density(off / deviation) / deviation + smeared;
    }

    private void add(int node, int to, double weight) {
        // Nodes are numbered one after the other: an older one belongs to a layer before.
        int known = nodeAt[to];
        if (known < nodesFrom) {
            known = lattice.node(to);
            nodeAt[to] = known;
        }
        lattice.arc(node, known, weight, 0);
    }

    @Override
    void lead(int flash, double seconds, boolean cut, double ghosts) {
        double before = row.firstWeight() * leadDensity(seconds) * (cut ? CUT_WHOLE : 1) * ghosts;
        for (int unseen = 0; unseen <= MOST_MISSED && unseen < row.count(); unseen++) {
            enter(unseen, before * missed[unseen] * lights.density[row.light(unseen)]);
        }
        if (!row.openStart()) {
            return;
        }
        double[] left = new double[gapMean.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = Noise.beyond((seconds - gapMean[i]) / gapDeviation[i]) * ghosts;
        }
        double[] whole = new double[lights.density.length];
        for (int i = 0; i < whole.length && cut; i++) {
            whole[i] = lights.of(i, flashes.lit(flash), true);
        }
        for (int to = 0; to < row.count(); to++) {
            int light = row.light(to);
            enter(to, row.entering() * (cut ? whole[light] : left[row.gapBefore(to)] * lights.density[light]));
        }
    }

    private void enter(int to, double weight) {
        if (weight > most) {
            most = Math.max(most, weight * negligible);
            add(0, to, weight);
        }
    }

    @Override
    void end(int node, double seconds, boolean cut, double ghosts) {
        int from = lattice.tag(node);
        double after = SentList.ENDING * tailDensity(seconds) * (cut ? CUT_WHOLE : 1) * ghosts;
        for (int unseen = 0; unseen <= MOST_MISSED && from + unseen < row.count(); unseen++) {
            if (row.mayEndAfter(from + unseen) && after > 0) {
                lattice.arc(node, sink(), after * missed[unseen], 0);
            }
        }
        if (row.openEnd() && from + 1 < row.count()) {
            int gap = row.gapBefore(from + 1);
            double rest = cut ? 1 : Noise.beyond((seconds - gapMean[gap]) / gapDeviation[gap]);
            double weight = rest * FreeGrammar.EARLY * ghosts;
            if (weight > 0) {
                lattice.arc(node, sink(), weight, 0);
            }
        }
    }
}
