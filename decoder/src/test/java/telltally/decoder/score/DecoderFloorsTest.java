package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Decoder;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;

/** The built-in decoders against the floors of every shipped seed set. They are not told the format. */
class DecoderFloorsTest {
    private static final int NAMED_AT_MOST = 10;

    private static final FormatCatalog FORMATS = FormatCatalog.shipped();

    static Stream<Path> sets() throws IOException {
        return SeedFiles.in(SeedFolder.SHIPPED).stream();
    }

    @ParameterizedTest
    @MethodSource("sets")
    void the_plain_decoder_stays_above_its_floors(Path file) throws ProblemException {
        assertAboveFloors(SeedSetReader.read(file), new PlainDecoder());
    }

    @ParameterizedTest
    @MethodSource("sets")
    void the_probabilistic_decoder_stays_above_its_floors(Path file) throws ProblemException {
        assertAboveFloors(SeedSetReader.read(file), new LatticeDecoder());
    }

    private static void assertAboveFloors(SeedSet set, Decoder decoder) {
        List<FlashFormat> candidates = set.candidates(FORMATS);
        Floors floors = set.floors().own(decoder.id()).orElseThrow();
        for (Line line : set.lines()) {
            Score score = Score.NOTHING;
            List<String> wrong = new ArrayList<>();
            SeedCases cases = new SeedCases(set);
            for (SeedBlock block : set.blocks()) {
                for (long seed : block.seeds()) {
                    for (SeedCase each : cases.of(seed)) {
                        Score one = Score.of(each.truth(), decoder.decode(line.train(each), candidates));
                        score = score.plus(one);
                        if (!one.perfect()) {
                            wrong.add("seed " + seed + ", " + each.origin() + ", "
                                    + each.truth().formatId());
                        }
                    }
                }
            }
            assertThat(score.lists()).isPositive();
            assertThat(floors.shortfalls(score))
                    .as(line + ": " + wrong.size() + " cases wrong, such as "
                            + wrong.stream().limit(NAMED_AT_MOST).toList())
                    .isEmpty();
        }
    }
}
