package telltally.simulator.channel;

import telltally.simulator.signal.PulseTrain;

/** Looks through a pulse train from its start to its end, eyes open or not. With closed eyes everything is dark. */
final class Watch {
    private final PulseTrain train;
    private final PulseTrain.Builder seen = PulseTrain.builder();
    private long nowNanos;
    private int edge;
    private boolean lit;

    Watch(PulseTrain train) {
        this.train = train;
        this.lit = train.litAtStart();
    }

    boolean over() {
        return nowNanos == train.endNanos();
    }

    Watch lookUntil(long untilNanos) {
        return go(untilNanos, true, true);
    }

    Watch lookAwayUntil(long untilNanos) {
        return go(untilNanos, true, false);
    }

    /** Leaves a stretch out: what comes later moves up. */
    Watch skipUntil(long untilNanos) {
        return go(untilNanos, false, false);
    }

    PulseTrain seen() {
        return seen.build();
    }

    private Watch go(long untilNanos, boolean counts, boolean open) {
        long until = Math.min(untilNanos, train.endNanos());
        while (nowNanos < until) {
            long next = edge < train.edgeCount() ? Math.min(train.edgeNanos(edge), until) : until;
            if (counts) {
                seen.stay(lit && open, next - nowNanos);
            }
            nowNanos = next;
            if (edge < train.edgeCount() && train.edgeNanos(edge) == next) {
                lit = !lit;
                edge++;
            }
        }
        return this;
    }
}
