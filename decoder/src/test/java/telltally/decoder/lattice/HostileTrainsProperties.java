package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/** Trains that nobody sent: always answered. */
class HostileTrainsProperties {
    /** What takes so long does not end. */
    private static final int HANGS_SECONDS = 120;

    private final List<FlashFormat> formats = FormatCatalog.shipped().all();
    private final LatticeDecoder decoder = new LatticeDecoder();

    @Property(tries = 150)
    void any_train_at_all_is_answered(
            @ForAll long seed, @ForAll @IntRange(max = 60) int edges, @ForAll boolean litAtStart) {
        Chance chance = Chance.of(seed);
        PulseTrain.Builder train = PulseTrain.builder();
        boolean lit = litAtStart;
        for (int i = 0; i <= edges; i++) {
            // From a nanosecond to a few months, evenly in the logarithm.
            train.stay(lit, (long) StrictMath.exp(chance.between(0, 37)));
            lit = !lit;
        }
        Reading reading = decoder.decode(train.build(), formats);
        assertThat(reading.format().isPresent() || !reading.warnings().isEmpty())
                .isTrue();
    }

    @Property(tries = 300)
    void babble_in_the_lengths_of_any_format_of_ones_own_is_answered(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int flashes) {
        Chance chance = Chance.of(seed);
        FlashFormat own = OwnFormats.drawn(chance);
        PulseTrain train = OwnFormats.babble(own, flashes, chance);
        List<FlashFormat> all = new ArrayList<>(formats);
        all.add(own);
        for (List<FlashFormat> candidates : List.of(List.of(own), all)) {
            Reading reading = decoder.decode(train, candidates);
            assertThat(reading.format().isPresent() || !reading.warnings().isEmpty())
                    .isTrue();
            reading.format()
                    .ifPresent(format -> assertThat(format.probability()).isBetween(0.0, 1.0));
            assertThat(reading.groups()).allMatch(group -> group.probability() >= 0 && group.probability() <= 1);
        }
    }

    @Test
    void silence_of_years_has_no_flashes() {
        Reading reading = decoder.decode(PulseTrain.of(false, Seconds.MAX_NANOS), formats);
        assertThat(reading.warnings().get(0).kind()).isEqualTo(WarningKind.NO_FLASHES);
        assertThat(reading.decoded()).isFalse();
    }

    @Test
    void one_edge_is_answered() {
        assertThat(decoder.decode(PulseTrain.of(false, 10, 5), formats).decoded())
                .isFalse();
        assertThat(decoder.decode(PulseTrain.of(true, 60_000_000_000L, 2_000_000_000L), formats)
                        .codes())
                .isEmpty();
    }

    @Test
    @Timeout(HANGS_SECONDS)
    void a_million_edges_in_a_second_and_alternating_nanoseconds_are_dropped() {
        PulseTrain micro = blinking(1_000_000, 500);
        PulseTrain nano = blinking(1_000_000, 1);
        assertThat(decoder.decode(micro, formats).codes()).isEmpty();
        assertThat(decoder.decode(nano, formats).codes()).isEmpty();
    }

    @Test
    @Timeout(HANGS_SECONDS)
    void a_hundred_thousand_flashes_without_a_list_are_answered() {
        PulseTrain endless = blinking(200_000, 333_000_000L);
        Reading reading = decoder.decode(endless, formats);
        // The work is cut off at a number of flashes, so that time and memory have a bound.
        assertThat(reading.warnings())
                .extracting(Reading.Warning::text)
                .contains("only the first 20000 flashes were read");
    }

    @Test
    void noise_of_flashes_of_every_length_fits_no_format() {
        int none = 0;
        for (int seed = 0; seed < 20; seed++) {
            Chance chance = Chance.of(seed);
            PulseTrain.Builder noise = PulseTrain.builder();
            for (int i = 0; i < 80; i++) {
                noise.stay(i % 2 == 1, (long) (1e9 * StrictMath.exp(chance.between(-3, 2.5))));
            }
            Reading reading = decoder.decode(noise.build(), formats);
            none += reading.format().isEmpty() && reading.warnings().get(0).kind() == WarningKind.NO_FORMAT ? 1 : 0;
        }
        assertThat(none).isGreaterThanOrEqualTo(19);
    }

    private static PulseTrain blinking(int edges, long eachNanos) {
        long[] instants = new long[edges];
        for (int i = 0; i < edges; i++) {
            instants[i] = (i + 1) * eachNanos;
        }
        return PulseTrain.of(false, (edges + 1) * eachNanos, instants);
    }
}
