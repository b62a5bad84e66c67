package telltally.decoder.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import telltally.decoder.plain.PlainDecoder;
import telltally.simulator.chance.Chance;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FormatJson;
import telltally.simulator.format.FormatReader;

class InventedFormatTest {
    private static Stream<InventedFormat> drawn(int count) {
        return LongStream.range(0, count).mapToObj(seed -> InventedFormat.drawn(Chance.of(seed)));
    }

    @Test
    void every_invented_format_could_stand_in_a_file() throws ProblemException {
        for (InventedFormat invented : drawn(100).toList()) {
            String json = FormatJson.text(invented.format());
            assertThat(FormatReader.read(new TextFile("invented.json", json))).isEqualTo(invented.format());
        }
    }

    @Test
    void every_simpler_format_is_simpler() {
        assertThat(drawn(100))
                .allSatisfy(invented -> assertThat(invented.simpler())
                        .allSatisfy(simpler -> assertThat(Arrays.compare(simpler.size(), invented.size()))
                                .as(invented + " to " + simpler)
                                .isNegative()));
    }

    @Test
    void told_its_rules_the_plain_decoder_reads_what_is_sent_in_an_invented_format() {
        Stream<MessageSession> sessions =
                drawn(100).map(invented -> MessageSession.one(List.of(invented.format()), 4, Noise.NONE, 1));
        DecoderAssertions.assertReadsTold(new PlainDecoder(), sessions, 1);
    }
}
