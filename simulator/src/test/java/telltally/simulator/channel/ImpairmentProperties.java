package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

@Domain(Trains.class)
@Domain(DomainContext.Global.class)
class ImpairmentProperties {
    private static final FilamentLamp PANEL = FilamentLamp.of(Bulb.panel(), 12.6);

    @Property(tries = 2000)
    void every_impairment_gives_a_valid_train_and_the_same_one_again(
            @ForAll PulseTrain train, @ForAll("any") Impairment impairment, @ForAll long seed) {
        PulseTrain spoiled = impairment.applyTo(train, Chance.of(seed));

        assertThat(rebuilt(spoiled)).isEqualTo(spoiled);
        assertThat(impairment.applyTo(train, Chance.of(seed))).isEqualTo(spoiled);
    }

    @Property
    void an_impairment_without_strength_gives_the_train_back(
            @ForAll PulseTrain train, @ForAll("powerless") Impairment impairment, @ForAll long seed) {
        assertThat(impairment.applyTo(train, Chance.of(seed))).isEqualTo(train);
    }

    @Property
    void the_others_in_a_chain_draw_the_same_when_one_is_added(
            @ForAll PulseTrain train,
            @ForAll("any") Impairment first,
            @ForAll("powerless") Impairment added,
            @ForAll("any") Impairment last,
            @ForAll long seed) {
        // The second of a kind draws from another stream on purpose.
        Assume.that(!added.kind().equals(last.kind()));
        PulseTrain without = ImpairmentChain.of(first, last).applyTo(train, Chance.of(seed));
        PulseTrain with = ImpairmentChain.of(first, added, last).applyTo(train, Chance.of(seed));

        assertThat(with).isEqualTo(without);
    }

    /** Through the checks of the public constructor, which the builder leaves out. */
    private static PulseTrain rebuilt(PulseTrain train) {
        long[] edges = new long[train.edgeCount()];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = train.edgeNanos(i);
        }
        return PulseTrain.of(train.litAtStart(), train.endNanos(), edges);
    }

    @Provide
    Arbitrary<Impairment> any() {
        Arbitrary<Double> share = Arbitraries.doubles().between(0, 1);
        Arbitrary<Long> nanos = Arbitraries.longs().between(0, 3 * Trains.SECOND);
        Arbitrary<Long> some = Arbitraries.longs().between(1, 3 * Trains.SECOND);
        Arbitrary<Finger> fingers =
                Combinators.combine(nanos, nanos, share, share).as(Finger::new);
        Arbitrary<Impairment> sender = Arbitraries.oneOf(
                Arbitraries.doubles().between(0.1, 10).map(ClockScale::new),
                Arbitraries.doubles().between(-1, 1).map(ClockDrift::new),
                share.map(Jitter::new),
                Combinators.combine(nanos, Arbitraries.integers().between(0, 50))
                        .as(ContactBounce::new));
        Arbitrary<Impairment> observer = Arbitraries.oneOf(
                share.map(MissedFlashes::new),
                Combinators.combine(share, some, nanos)
                        .as((p, least, more) -> new GhostFlashes(p, least, least + more)),
                nanos.map(LateStart::new),
                nanos.map(EarlyStop::new),
                nanos.map(Glare::new),
                Combinators.combine(Arbitraries.doubles().between(0, 5), nanos).as(LooseContact::new));
        Arbitrary<Impairment> recorder = Arbitraries.oneOf(
                Combinators.combine(
                                Arbitraries.doubles().between(1, 100),
                                Arbitraries.longs().between(1, 10_000_000))
                        .as((rate, exposure) -> new CameraFrames(rate, exposure, 0.5)),
                fingers.map(TapAlong::new),
                Combinators.combine(fingers, some).as(ShortTaps::new));
        Arbitrary<Impairment> instrument = Arbitraries.of(
                PANEL,
                FilamentLamp.of(Bulb.testLight(), 9),
                Led.at(12),
                MeterNeedle.standard(),
                new MeterNeedle(1.43, 0.32, new Hysteresis(0.9, 0.95)),
                new MeterNeedle(0.5, 3, new Hysteresis(0.5, 0.5)));
        return Arbitraries.oneOf(sender, observer, recorder, instrument);
    }

    @Provide
    Arbitrary<Impairment> powerless() {
        return Arbitraries.of(
                new ClockScale(1),
                new ClockDrift(0),
                new Jitter(0),
                new ContactBounce(0, 5),
                new ContactBounce(Trains.SECOND, 0),
                new MissedFlashes(0),
                GhostFlashes.ofReflections(0),
                new LateStart(0),
                new EarlyStop(0),
                new LooseContact(0, Trains.SECOND),
                new LooseContact(5, 0),
                new Glare(0),
                Led.at(12),
                new TapAlong(new Finger(0, 0, 0, 0)));
    }
}
