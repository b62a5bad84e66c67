package example;

import static telltally.decoder.testkit.DecoderAssertions.assertReadsTold;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import telltally.decoder.testkit.MessageSession;
import telltally.decoder.testkit.Noise;
import telltally.decoder.testkit.Session;
import telltally.decoder.testkit.jqwik.Sessions;
import telltally.decoder.testkit.junit.SeedSets;
import telltally.simulator.format.FormatCatalog;

class ThresholdDecoderTest {
    @ParameterizedTest
    @SeedSets(value = {"messages-clean", "messages-clock", "messages-bounce"}, first = 100)
    void every_recording_of_these_sets_is_read(Session session) {
        assertReadsTold(new ThresholdDecoder(), session);
    }

    @Test
    void nine_of_ten_are_read_when_timing_is_unsteady() {
        Noise unsteady = new Noise(115, 8, 0, 0, 10);
        assertReadsTold(
                new ThresholdDecoder(),
                MessageSession.drawn(FormatCatalog.shipped().all(), 5, unsteady, 1).limit(300),
                0.9);
    }

    @Property(tries = 100, seed = "1")
    void whatever_a_format_can_send_is_read(@ForAll("clean") MessageSession session) {
        assertReadsTold(new ThresholdDecoder(), session);
    }

    @Provide
    Arbitrary<MessageSession> clean() {
        return Sessions.clean(List.copyOf(FormatCatalog.shipped().all()), 6);
    }
}
