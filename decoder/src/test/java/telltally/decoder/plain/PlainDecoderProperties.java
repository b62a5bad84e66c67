package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.Segment;
import telltally.simulator.format.Transmission;
import telltally.simulator.signal.PulseTrain;

/** What is sent is read back: every shipped format, any legal codes, the lamp and the wire, named and among all seven. */
@Domain(DomainContext.Global.class)
@Domain(SentArbitraries.class)
class PlainDecoderProperties {
    private static final int TRIES = 300;

    private final PlainDecoder decoder = new PlainDecoder();

    @Property(tries = TRIES)
    void every_message_is_read_back_from_a_clean_train(@ForAll Sent sent) {
        assertReadBack(sent, Impairment.CLEAN, 0);
    }

    @Property(tries = TRIES)
    void every_message_is_read_back_whatever_the_clock(@ForAll Sent sent, @ForAll long seed) {
        assertReadBack(sent, Impairment.SCALED, seed);
    }

    @Property(tries = TRIES)
    void every_message_is_read_back_when_every_length_strays(@ForAll Sent sent, @ForAll long seed) {
        assertReadBack(sent, Impairment.JITTERED, seed);
    }

    @Property(tries = TRIES)
    void every_message_is_read_back_through_bouncing_contacts(@ForAll Sent sent, @ForAll long seed) {
        assertReadBack(sent, Impairment.BOUNCED, seed);
    }

    @Property(tries = TRIES)
    void every_message_is_read_back_through_all_three(@ForAll Sent sent, @ForAll long seed) {
        assertReadBack(sent, Impairment.ALL, seed);
    }

    private void assertReadBack(Sent sent, Impairment impairment, long seed) {
        Transmission transmission = sent.transmission();
        Chance chance = Chance.of(seed);
        PulseTrain lamp = impairment.spoil(transmission.lamp(), chance.stream("lamp"));
        PulseTrain wire = impairment.spoil(transmission.wire(), chance.stream("wire"));
        for (PulseTrain train : List.of(lamp, wire)) {
            assertThat(decoder.decode(train, List.of(sent.format())).codes())
                    .as("named")
                    .isEqualTo(transmission.codes());
            if (impairment == Impairment.CLEAN || !sent.sentAlikeByAnotherFormat()) {
                assertThat(decoder.decode(train, Trains.SHIPPED).codes())
                        .as("among all")
                        .isEqualTo(transmission.codes());
            }
        }
    }

    /** A writer that shares no code with the encoder and takes more liberties. */
    @Property(tries = TRIES)
    void what_another_sender_sends_is_read_back(@ForAll Impairment impairment, @ForAll long seed) {
        Chance chance = Chance.of(seed);
        Sample sample =
                SampleWriter.write(Trains.SHIPPED.get(chance.below(Trains.SHIPPED.size())), chance.stream("sample"));
        PulseTrain wire = impairment.spoil(sample.wire(), chance.stream("noise"));

        assertThat(decoder.decode(wire, List.of(sample.format())).codes())
                .as(sample.toString())
                .isEqualTo(sample.codes());
    }

    @Property(tries = TRIES)
    void a_reading_keeps_its_promises(@ForAll Sent sent, @ForAll long seed) {
        PulseTrain train = Impairment.ALL.spoil(sent.transmission().wire(), Chance.of(seed));

        Reading reading = decoder.decode(train, Trains.SHIPPED);
        assertThat(reading.decoded()).isTrue();
        assertThat(reading.format().orElseThrow().probability()).isBetween(1.0 / 3, 1.0);
        long before = 0;
        for (Group group : reading.groups()) {
            assertThat(group.startNanos()).isGreaterThanOrEqualTo(before);
            assertThat(group.endNanos()).isBetween(group.startNanos() + 1, train.endNanos());
            assertThat(group.probability()).isBetween(0.0, 0.9999);
            before = group.endNanos();
        }
        assertThat(Reading.merged(reading.groups())).containsAllEntriesOf(withoutEmpty(reading));
        assertThat(decoder.decode(train, Trains.SHIPPED)).as("the same again").isEqualTo(reading);
    }

    private static Map<Segment, List<String>> withoutEmpty(Reading reading) {
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        reading.codes().forEach((segment, list) -> {
            if (!list.isEmpty()) {
                codes.put(segment, list);
            }
        });
        return codes;
    }
}
