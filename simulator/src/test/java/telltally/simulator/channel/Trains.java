package telltally.simulator.channel;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import telltally.simulator.signal.PulseTrain;

/** Any pulse train: from stretches of a nanosecond to stretches of seconds, beginning at either level. */
public class Trains extends DomainContextBase {
    static final long MILLI = 1_000_000L;
    static final long SECOND = 1_000_000_000L;

    @Provide
    Arbitrary<PulseTrain> trains() {
        Arbitrary<Long> length = Arbitraries.oneOf(
                Arbitraries.longs().between(1, 100), Arbitraries.longs().between(1, 6 * SECOND));
        return Combinators.combine(
                        Arbitraries.of(true, false), length.list().ofMinSize(1).ofMaxSize(40))
                .as(Trains::of);
    }

    static PulseTrain of(boolean lit, List<Long> lengths) {
        PulseTrain.Builder train = PulseTrain.builder();
        boolean level = lit;
        for (long length : lengths) {
            train.stay(level, length);
            level = !level;
        }
        return train.build();
    }

    /** Dark for 6 s, then flashes of half a second with gaps of half a second, then dark for 6 s. */
    static PulseTrain flashes(int count) {
        PulseTrain.Builder train = PulseTrain.builder().dark(6 * SECOND);
        for (int i = 0; i < count; i++) {
            train.lit(SECOND / 2).dark(SECOND / 2);
        }
        return train.dark(6 * SECOND - SECOND / 2).build();
    }
}
