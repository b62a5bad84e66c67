package telltally.simulator.signal;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Pulse trains for properties: they shrink to one short dark stretch. */
public final class PulseTrains {
    private PulseTrains() {}

    /** @param stepNanos what every instant is a multiple of */
    public static Arbitrary<PulseTrain> any(long stepNanos) {
        Arbitrary<List<Long>> lengths = Arbitraries.longs()
                .between(1, 10_000_000_000L)
                .list()
                .ofMinSize(1)
                .ofMaxSize(40);
        return Combinators.combine(Arbitraries.of(false, true), lengths).as((litAtStart, steps) -> {
            PulseTrain.Builder train = PulseTrain.builder();
            boolean lit = litAtStart;
            for (long length : steps) {
                train.stay(lit, length * stepNanos);
                lit = !lit;
            }
            return train.build();
        });
    }
}
