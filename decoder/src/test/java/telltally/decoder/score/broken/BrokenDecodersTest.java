package telltally.decoder.score.broken;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.decoder.reading.Decoder;
import telltally.decoder.score.Floors;
import telltally.decoder.score.Line;
import telltally.decoder.score.Score;
import telltally.decoder.score.SeedCase;
import telltally.decoder.score.SeedCases;
import telltally.decoder.score.SeedFiles;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSetReader;
import telltally.decoder.score.SeedSource;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;

/** What the seed sets are for: a decoder that got worse in a small way falls below a floor. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrokenDecodersTest {
    private static final Path SHIPPED = Path.of("..", "seeds");
    private static final FormatCatalog FORMATS = FormatCatalog.shipped();

    private final List<SeedSet> sets = new ArrayList<>();

    BrokenDecodersTest() throws IOException, ProblemException {
        for (Path file : SeedFiles.in(SHIPPED)) {
            sets.add(SeedSetReader.read(file));
        }
        // Messages without strong noise first, since most mistakes show there, and few at a time.
        sets.sort(Comparator.comparing((SeedSet set) -> set.curve().isPresent())
                .thenComparing(set -> !(set.source() instanceof SeedSource.Messages))
                .thenComparing(set -> set.seeds().count()));
    }

    static List<BrokenDecoder> broken() {
        return List.of(
                BrokenDecoder.hearing("gap-border-too-low", HearingMistakes::gapBorderTooLow),
                BrokenDecoder.hearing("first-flash-lost", HearingMistakes::firstFlashAfterLongPauseLost),
                BrokenDecoder.hearing("fast-list-counted", HearingMistakes::fastListCounted),
                BrokenDecoder.telling("nine-read-as-eight", TellingMistakes::nineReadAsEight),
                BrokenDecoder.telling("repeats-told-again", TellingMistakes::repeatsToldAgain),
                BrokenDecoder.telling("separator-as-code", TellingMistakes::separatorTakenAsCode),
                BrokenDecoder.telling("cylinders-as-code", TellingMistakes::cylindersTakenAsCode),
                BrokenDecoder.telling("steady-light-as-code", TellingMistakes::steadyLightTakenAsCode),
                BrokenDecoder.telling("pass-code-swallowed", TellingMistakes::passCodeSwallowed),
                BrokenDecoder.telling("present-and-stored-swapped", TellingMistakes::presentAndStoredSwapped),
                BrokenDecoder.telling("last-code-dropped", TellingMistakes::lastOfSeveralCodesDropped),
                BrokenDecoder.telling("clock-not-adapted", TellingMistakes::clockNotAdapted));
    }

    @ParameterizedTest
    @MethodSource("broken")
    void a_mistake_is_caught(BrokenDecoder decoder) {
        Optional<SeedSet> caughtBy =
                sets.stream().filter(set -> fallsShort(set, decoder)).findFirst();
        assertThat(caughtBy).as(decoder.id()).isPresent();
        // The same decoder without its mistake is not caught there.
        assertThat(fallsShort(caughtBy.orElseThrow(), BrokenDecoder.telling("sound", BrokenDecoder.Told::reading)))
                .isFalse();
    }

    @Test
    void there_are_ten_mistakes_and_more() {
        assertThat(broken())
                .hasSizeGreaterThanOrEqualTo(10)
                .extracting(BrokenDecoder::id)
                .doesNotHaveDuplicates();
    }

    private static boolean fallsShort(SeedSet set, Decoder decoder) {
        Floors floors = set.floors().own("plain").orElseThrow();
        List<FlashFormat> candidates = set.candidates(FORMATS);
        return set.lines().stream()
                .anyMatch(line -> !floors.shortfalls(score(set, line, decoder, candidates))
                        .isEmpty());
    }

    private static Score score(SeedSet set, Line line, Decoder decoder, List<FlashFormat> candidates) {
        SeedCases cases = new SeedCases(set);
        return set.blocks().stream()
                .flatMap(block -> block.seeds().stream())
                .flatMap(seed -> cases.of(seed).stream())
                .map((SeedCase each) -> Score.of(each.truth(), decoder.decode(line.train(each), candidates)))
                .reduce(Score.NOTHING, Score::plus);
    }
}
