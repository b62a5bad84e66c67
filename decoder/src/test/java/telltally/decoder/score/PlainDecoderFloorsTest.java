package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Decoder;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.signal.PulseTrain;

/** The plain decoder against the floors of every shipped seed set. It is not told the format. */
class PlainDecoderFloorsTest {
    private static final int NAMED_AT_MOST = 10;

    /** Where the decoder listens. */
    private enum Line {
        LAMP,
        PIN;

        PulseTrain train(SeedCase from) {
            return this == LAMP ? from.lamp() : from.pin();
        }
    }

    private final Decoder decoder = new PlainDecoder();
    private final List<FlashFormat> formats = FormatCatalog.shipped().all();

    static Stream<Arguments> setsAndLines() throws IOException {
        return SeedFolder.filesIn(SeedFolder.SHIPPED).stream()
                .flatMap(file -> Stream.of(Line.values()).map(line -> Arguments.of(file, line)));
    }

    @ParameterizedTest
    @MethodSource("setsAndLines")
    void the_plain_decoder_stays_above_the_floors(Path file, Line line) throws ProblemException {
        SeedSet set = SeedSetReader.read(file);
        SeedCases cases = new SeedCases(set);
        Score score = Score.NOTHING;
        List<String> wrong = new ArrayList<>();
        for (SeedBlock block : set.blocks()) {
            for (long seed : block.seeds()) {
                for (SeedCase each : cases.of(seed)) {
                    Score one = Score.of(each.truth(), decoder.decode(line.train(each), formats));
                    score = score.plus(one);
                    if (!one.perfect()) {
                        wrong.add("seed " + seed + ", " + each.origin() + ", "
                                + each.format().id());
                    }
                }
            }
        }
        assertThat(score.lists()).isPositive();
        assertThat(set.floors().shortfalls(score))
                .as(wrong.size() + " cases wrong, such as "
                        + wrong.stream().limit(NAMED_AT_MOST).toList())
                .isEmpty();
    }
}
