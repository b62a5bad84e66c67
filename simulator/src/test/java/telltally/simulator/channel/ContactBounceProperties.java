package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

@Domain(Trains.class)
@Domain(DomainContext.Global.class)
class ContactBounceProperties {
    @Property
    void the_second_half_of_every_stretch_is_at_rest_and_every_edge_is_kept(
            @ForAll PulseTrain train,
            @ForAll @LongRange(max = 3 * Trains.SECOND) long longestNanos,
            @ForAll @IntRange(max = 50) int mostContacts,
            @ForAll long seed) {
        PulseTrain bounced = new ContactBounce(longestNanos, mostContacts).applyTo(train, Chance.of(seed));

        assertThat(bounced.endNanos()).isEqualTo(train.endNanos());
        for (Interval stretch : train.intervals()) {
            long settled = stretch.endNanos() - stretch.lengthNanos() / 2;
            long lit = bounced.litNanosBetween(settled, stretch.endNanos());
            assertThat(lit).isEqualTo(stretch.lit() ? stretch.endNanos() - settled : 0);
            assertThat(bounced.litAt(stretch.startNanos())).isEqualTo(stretch.lit());
        }
    }
}
