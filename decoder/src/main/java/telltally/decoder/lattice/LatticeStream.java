package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.signal.PulseTrain;

/**
 * Decodes while flashes still come in: takes edges one at a time and tells each group once, as soon as it is sure.
 * Keeps a fixed number of edges and forgets the oldest beyond that. Not for sharing between threads.
 */
public final class LatticeStream {
    private static final int MOST_EDGES = 4096;
    /** A gap of this share of the shortest between codes may be the end of one. */
    private static final double CODE_GAP_SHARE = 0.75;

    private final LatticeDecoder decoder;
    private final List<FlashFormat> candidates;
    private final double certainty;
    private final long settledNanos;
    private final long[] edges = new long[MOST_EDGES];
    private int count;
    private boolean litAtStart;
    private boolean lit;
    private boolean begun;
    private long originNanos;
    private long lastNanos;
    private long toldUntilNanos = Long.MIN_VALUE;
    private boolean looked;

    /** @param certainty a group, and the format, are told when each is at least so probable, 0 to 1 */
    public LatticeStream(LatticeDecoder decoder, List<FlashFormat> candidates, double certainty) {
        if (candidates.isEmpty()) {
            throw new IllegalArgumentException("at least one format is needed");
        }
        this.decoder = decoder;
        this.candidates = List.copyOf(candidates);
        this.certainty = certainty;
        this.settledNanos = (long) (CODE_GAP_SHARE
                * candidates.stream()
                        .mapToLong(format -> format.gaps().betweenCodesNanos())
                        .min()
                        .orElseThrow());
    }

    /**
     * The level changed. The first call says where the recording begins; calls that say the level it already has, or
     * go back in time, change nothing.
     *
     * @return groups that became certain, in order of time; often none
     */
    public List<Group> edge(long atNanos, boolean nowLit) {
        if (!begun) {
            begun = true;
            litAtStart = nowLit;
            lit = nowLit;
            originNanos = atNanos;
            lastNanos = atNanos;
            return List.of();
        }
        if (nowLit == lit || atNanos <= lastNanos) {
            return List.of();
        }
        List<Group> told = look(atNanos);
        if (count == MOST_EDGES) {
            forget();
        }
        edges[count++] = atNanos;
        lit = nowLit;
        lastNanos = atNanos;
        looked = false;
        return told;
    }

    /** The level has not changed until now. */
    public List<Group> quiet(long nowNanos) {
        return look(nowNanos);
    }

    /** Everything that is still kept, as read now. */
    public Reading reading(long nowNanos) {
        return decoder.decode(train(Math.max(nowNanos, lastNanos + 1)), candidates);
    }

    private List<Group> look(long nowNanos) {
        if (looked || count == 0 || nowNanos - lastNanos < settledNanos || withinFlash()) {
            return List.of();
        }
        looked = true;
        Reading reading = reading(nowNanos);
        if (reading.format().filter(format -> format.probability() >= certainty).isEmpty()) {
            return List.of();
        }
        List<Group> told = new ArrayList<>();
        for (Group group : reading.groups()) {
            long startNanos = originNanos + group.startNanos();
            long endNanos = originNanos + group.endNanos();
            boolean isNew = startNanos >= toldUntilNanos && group.kind() != GroupKind.UNREADABLE;
            if (isNew && group.probability() >= certainty) {
                told.add(new Group(
                        group.kind(),
                        group.segment(),
                        group.digits(),
                        group.probability(),
                        startNanos,
                        endNanos,
                        group.alternatives()));
            }
        }
        if (!told.isEmpty()) {
            toldUntilNanos = told.get(told.size() - 1).endNanos();
        }
        return told;
    }

    /** Whether every format would take the level for that of a flash, of which the end has to be seen. */
    private boolean withinFlash() {
        return candidates.stream().allMatch(format -> format.restsLit() != lit);
    }

    private PulseTrain train(long nowNanos) {
        long[] sinceOrigin = new long[count];
        for (int i = 0; i < count; i++) {
            sinceOrigin[i] = edges[i] - originNanos;
        }
        return PulseTrain.of(litAtStart, nowNanos - originNanos, sinceOrigin);
    }

    /** Leaves the older half out, an even number: what is kept begins with the level that it began with. */
    private void forget() {
        int half = MOST_EDGES / 2;
        originNanos = edges[half - 1];
        System.arraycopy(edges, half, edges, 0, count - half);
        count -= half;
    }
}
