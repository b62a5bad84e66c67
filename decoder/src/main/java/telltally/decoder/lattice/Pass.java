package telltally.decoder.lattice;

/**
 * Something that may have been sent, run over the flashes of one recording: every way of pairing flashes sent with
 * flashes seen, with missed ones in between and ghosts left out. Layer {@code i + 1} of the lattice is flash {@code i};
 * a node's tag is the flash sent.
 */
abstract class Pass {
    static final int MOST_GHOSTS = 3;
    /** The tag of the last node of all. */
    static final int END = -1;

    /** A flash that is cut by the recording's brink and yet whole. */
    static final double CUT_WHOLE = 1e-3;

    /** A ghost is shorter than this share of the shortest flash. */
    private static final double GHOST_SHARE = 0.65;

    private static final double SMEARED = 1e-3;
    static final double LEAST_SMEARED = 0.67;
    static final double MOST_SMEARED = 1.33;

    final Flashes flashes;
    final Channel channel;
    final Lattice lattice;
    private final double beam;
    private final double longestGhost;
    private int sink = -1;

    /**
     * @param lattice is used up, until {@link #lattice} is needed no more
     * @param beam a path that lies further behind another into the same flash than this share is not followed
     */
    Pass(Flashes flashes, Channel channel, Lattice lattice, double shortestLightSeconds, double beam) {
        this.beam = beam;
        this.flashes = flashes;
        this.channel = channel;
        this.lattice = lattice;
        this.longestGhost = GHOST_SHARE * shortestLightSeconds * channel.scale();
    }

    Lattice lattice() {
        return lattice;
    }

    /** The last node, or -1 where no path explains the flashes. */
    int sink() {
        return sink;
    }

    /** Natural logarithm of the density of all paths; negative infinity where there is none. */
    double logSum() {
        return sink < 0 || lattice.forward(sink) == 0 ? Double.NEGATIVE_INFINITY : lattice.logSum(sink);
    }

    /** The arcs of the best path in order. */
    int[] bestPath() {
        int length = 0;
        for (int node = sink; lattice.bestArc(node) >= 0; node = lattice.arcFrom(lattice.bestArc(node))) {
            length++;
        }
        int[] path = new int[length];
        for (int node = sink; length > 0; node = lattice.arcFrom(path[length])) {
            path[--length] = lattice.bestArc(node);
        }
        return path;
    }

    /** Which flash seen a node of the lattice is; -1 for the start, the count of flashes for the end. */
    int flashOf(int latticeNode) {
        return lattice.layer(latticeNode) - 1;
    }

    /** Runs over all flashes, from the beginning of the recording to its end. */
    final void sweep() {
        lattice.clear();
        lattice.beginLayer();
        lattice.source(0, 1);
        lattice.endLayer();
        for (int flash = 0; flash < flashes.count; flash++) {
            lattice.beginLayer();
            begin(flash);
            double ghosts = 1;
            for (int before = flash - 1; before >= 0 && ghosts > 0 && before >= flash - 1 - MOST_GHOSTS; before--) {
                reach(flash, before, ghosts);
                ghosts *= ghost(before, flash);
            }
            if (ghosts > 0 && flash <= MOST_GHOSTS) {
                double lead = flashes.leadSeconds + flashes.start[flash] - flashes.start[0];
                lead(flash, lead, flash == 0 && flashes.cutAtStart, ghosts);
            }
            lattice.endLayer();
        }
        finish();
    }

    private void reach(int flash, int before, double ghosts) {
        gap(flashes.start[flash] - flashes.end[before]);
        double least = beam * lattice.scale(before + 1);
        double worth = ghosts * lattice.relative(before + 1);
        int last = lattice.lastNode(before + 1);
        for (int node = lattice.firstNode(before + 1); node < last; node++) {
            double here = lattice.forward(node);
            if (here >= least) {
                follow(node, here * worth, ghosts);
            }
        }
    }

    private void finish() {
        lattice.beginLayer();
        sink = lattice.node(END);
        double ghosts = 1;
        int last = flashes.count - 1;
        for (int before = last; before >= 0 && ghosts > 0 && before >= last - MOST_GHOSTS; before--) {
            double tail = flashes.tailSeconds + flashes.end[last] - flashes.end[before];
            boolean cut = before == last && flashes.cutAtEnd;
            for (int node = lattice.firstNode(before + 1); node < lattice.lastNode(before + 1); node++) {
                end(node, tail, cut, ghosts);
            }
            ghosts *= ghost(before, flashes.count);
        }
        lattice.endLayer();
    }

    /** Looks at a flash that will be reached. */
    abstract void begin(int flash);

    /** Looks at a gap before it. */
    abstract void gap(double seconds);

    /** Goes on from a node over the gap looked at. */
    abstract void follow(int node, double here, double ghosts);

    /** The flash is the first of those that were sent and seen. */
    abstract void lead(int flash, double seconds, boolean cut, double ghosts);

    /** The flash of a node is the last of those that were sent and seen. */
    abstract void end(int node, double seconds, boolean cut, double ghosts);

    final boolean isCutAtEnd(int flash) {
        return flash == flashes.count - 1 && flashes.cutAtEnd;
    }

    /** The weight of taking a flash for one that was not sent, in the gap that ends with another. */
    private double ghost(int flash, int next) {
        double length = flashes.lit(flash);
        if (length > longestGhost) {
            return 0;
        }
        double from = flash == 0 ? flashes.start[0] - flashes.leadSeconds : flashes.end[flash - 1];
        double to = next == flashes.count ? flashes.end[flash] + flashes.tailSeconds : flashes.start[next];
        return channel.ghost() * 2 * (1 - length / longestGhost) / longestGhost / Math.max(1e-3, to - from);
    }

    /** A pulse beside it that ran into it, or any other mishap, may change a length by up to a third. */
    static double smear(double seconds, double mean) {
        return seconds > LEAST_SMEARED * mean && seconds < MOST_SMEARED * mean ? SMEARED / mean : 0;
    }

    /**
     * How likely a recording is to begin so long before the first flash. Who begins to record just before it is rarer
     * than who begins within a list.
     */
    static double leadDensity(double seconds) {
        return seconds < 0.13 ? 0.03 : seconds < 1 ? 0.5 : 0.06;
    }

    /** How likely a recording is to end so long after the last flash. */
    static double tailDensity(double seconds) {
        return seconds < 1 ? 0.5 : 0.06;
    }
}
