package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

class ImpairmentChainTest {
    private final PulseTrain train = Trains.flashes(20);
    private final Chance chance = Chance.of(7);

    @Test
    void members_are_applied_in_order_each_from_the_stream_of_its_kind() {
        PulseTrain jittered = new Jitter(0.05).applyTo(train, chance.stream("jitter"));
        PulseTrain bounced = new ContactBounce(20_000_000, 3).applyTo(jittered, chance.stream("contact-bounce"));

        assertThat(ImpairmentChain.of(new Jitter(0.05), new ContactBounce(20_000_000, 3))
                        .applyTo(train, chance))
                .isEqualTo(bounced)
                .isNotEqualTo(jittered);
    }

    @Test
    void a_second_of_one_kind_draws_from_a_stream_of_its_own() {
        PulseTrain once = new Jitter(0.05).applyTo(train, chance.stream("jitter"));
        PulseTrain twice = new Jitter(0.1).applyTo(once, chance.stream("jitter/2"));

        assertThat(ImpairmentChain.of(new Jitter(0.05), new ClockScale(1), new Jitter(0.1))
                        .applyTo(train, chance))
                .isEqualTo(twice);
    }

    @Test
    void an_empty_chain_changes_nothing() {
        assertThat(ImpairmentChain.of().applyTo(train, chance)).isEqualTo(train);
    }
}
