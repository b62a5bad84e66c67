package telltally.decoder.plain;

import java.util.List;

/** What the runs of a train are taken for. */
final class Parse {
    private final Runs runs;
    private final List<Part> parts;
    private final double cost;
    private final boolean stopsEarly;
    private final GapRule[] gapsBefore;

    /**
     * One or more runs in one role; more than one where flashes between them were not seen.
     *
     * @param gap the rule for the gap before it
     */
    record Part(Role role, int firstRun, int lastRun, GapRule gap) {
        boolean hidesFlash() {
            return lastRun > firstRun;
        }
    }

    /**
     * @param cost of everything but the clock
     * @param stopsEarly whether more should follow by the rules of the format
     */
    Parse(Runs runs, List<Part> parts, double cost, boolean stopsEarly, Lengths lengths) {
        this.runs = runs;
        this.parts = List.copyOf(parts);
        this.cost = cost;
        this.stopsEarly = stopsEarly;
        this.gapsBefore = new GapRule[runs.size()];
        for (Part part : parts) {
            gapsBefore[part.firstRun()] = part.gap();
            for (int run = part.firstRun() + 1; run <= part.lastRun(); run++) {
                gapsBefore[run] = GapRule.near(lengths.unseen(runs.kind(run)));
            }
        }
    }

    Runs runs() {
        return runs;
    }

    List<Part> parts() {
        return parts;
    }

    double cost() {
        return cost;
    }

    boolean stopsEarly() {
        return stopsEarly;
    }

    /** What the gap before a run was taken for. */
    GapRule gapBefore(int run) {
        return gapsBefore[run];
    }
}
