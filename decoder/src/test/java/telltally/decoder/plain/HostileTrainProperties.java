package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import telltally.decoder.reading.Reading;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** No train whatsoever makes the decoder throw, or wait for ever. */
class HostileTrainProperties {
    private static final int EDGES = 100_000;

    @Property(tries = 1000)
    void any_train_gives_a_reading(
            @ForAll("trains") PulseTrain train, @ForAll("candidates") List<FlashFormat> formats) {
        Reading reading = new PlainDecoder().decode(train, formats);

        assertThat(reading.decoded()).isEqualTo(reading.format().isPresent());
        assertThat(reading.decoded() || !reading.warnings().isEmpty()).isTrue();
    }

    @Provide
    Arbitrary<PulseTrain> trains() {
        Arbitrary<Long> anything = Arbitraries.longs().between(1, Long.MAX_VALUE / 300);
        Arbitrary<Long> tiny = Arbitraries.longs().between(1, 20_000_000);
        Arbitrary<Long> likeFlashes = Arbitraries.longs().between(100_000_000, 7_000_000_000L);
        Arbitrary<Long> nominal = Arbitraries.of(250, 300, 400, 500, 1000, 1200, 1500, 2000, 2500, 3000, 4000, 6000)
                .map(millis -> millis * 1_000_000L);
        Arbitrary<Long> length = Arbitraries.oneOf(anything, tiny, likeFlashes, nominal);
        return Combinators.combine(
                        Arbitraries.of(true, false), length.list().ofMinSize(1).ofMaxSize(200))
                .as(HostileTrainProperties::train);
    }

    private static PulseTrain train(boolean litAtStart, List<Long> lengthsNanos) {
        PulseTrain.Builder train = PulseTrain.builder();
        boolean lit = litAtStart;
        for (long nanos : lengthsNanos) {
            train.stay(lit, nanos);
            lit = !lit;
        }
        return train.build();
    }

    @Provide
    Arbitrary<List<FlashFormat>> candidates() {
        return Arbitraries.of(Trains.SHIPPED).list().uniqueElements().ofMinSize(1);
    }

    enum Kind {
        EVERY_NANOSECOND(0),
        HALF_SECONDS(500_000_000),
        QUARTER_SECONDS(250_000_000),
        RANDOM(0),
        SINGLE_FLASHES(0);

        final long nanos;

        Kind(long nanos) {
            this.nanos = nanos;
        }

        PulseTrain train() {
            Chance chance = Chance.of(1);
            PulseTrain.Builder train = PulseTrain.builder();
            for (int i = 0; i < EDGES; i++) {
                long between = i % 4 == 0 ? 2_000_000_000L : 4_000_000_000L;
                long lengthNanos = switch (this) {
                    case RANDOM -> 200_000_000L + chance.below(2_000_000_000);
                    case SINGLE_FLASHES -> i % 2 == 1 ? 500_000_000L : between;
                    default -> Math.max(1, nanos);
                };
                train.stay(i % 2 == 1, lengthNanos);
            }
            return train.build();
        }
    }

    /** About a second on one core; the limit is there to tell proportion from squares, with room for a busy machine. */
    @ParameterizedTest
    @EnumSource
    @Timeout(value = 30, unit = TimeUnit.SECONDS)
    void a_hundred_thousand_edges_are_read_in_proportion(Kind kind) {
        assertThat(new PlainDecoder().decode(kind.train(), Trains.SHIPPED)).isNotNull();
    }

    @Test
    void years_of_silence_hide_no_flash() {
        long last = Long.MAX_VALUE - 1_000_000_000L;
        PulseTrain train = PulseTrain.of(false, Long.MAX_VALUE, last, last + 500_000_000L);

        assertThat(Trains.told(Trains.read(train, "pair-even"))).containsExactly("balance balance 1");
    }

    @Test
    void trains_of_no_edge_and_of_one_hold_no_codes() {
        for (PulseTrain train : Arrays.asList(
                PulseTrain.of(true, 1),
                PulseTrain.of(false, 1),
                PulseTrain.of(true, Long.MAX_VALUE),
                PulseTrain.of(false, Long.MAX_VALUE, 1),
                PulseTrain.of(true, Long.MAX_VALUE, Long.MAX_VALUE - 1))) {
            assertThat(Trains.read(train).decoded()).as(train.toString()).isFalse();
        }
    }
}
