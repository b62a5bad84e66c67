package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;

class HuntCaseTest {
    private static final List<FlashFormat> FORMATS = FormatCatalog.shipped().all();

    private static FlashFormat format(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }

    private static HuntCase simplest(HuntCase start, Predicate<HuntCase> wrong) {
        Optional<HuntCase> simpler = Optional.of(start);
        HuntCase simplest = start;
        while (simpler.isPresent()) {
            simplest = simpler.get();
            simpler = simplest.simpler().filter(wrong).findFirst();
        }
        return simplest;
    }

    private static boolean holds(HuntCase each, char digit) {
        return each.truth().codes().values().stream().flatMap(List::stream).anyMatch(code -> code.indexOf(digit) >= 0);
    }

    @Test
    void a_case_shrinks_to_the_one_code_that_matters() {
        HuntCase start = new HuntCase(
                format("pair-even"),
                new Message.KeyOn(List.of("34", "97", "22"), List.of("55", "16")),
                2,
                true,
                List.of(new HuntNoise(HuntNoise.Kind.JITTER, 0.05), new HuntNoise(HuntNoise.Kind.CLOCK, -0.1)),
                7);
        HuntCase simplest = simplest(start, each -> holds(each, '9'));
        assertThat(simplest.message()).isEqualTo(new Message.KeyOn(List.of("91"), List.of()));
        assertThat(simplest.noises()).isEmpty();
        assertThat(simplest.onWire()).isFalse();
        assertThat(simplest).hasToString("pair-even present 91, stored 11; clean");
    }

    @Test
    void noise_that_matters_is_made_weaker_until_it_no_longer_does() {
        HuntCase start = new HuntCase(
                format("count-loop"),
                new Message.Codes(List.of("9")),
                3,
                false,
                List.of(new HuntNoise(HuntNoise.Kind.GHOSTS, 0.03), new HuntNoise(HuntNoise.Kind.JITTER, 0.05)),
                7);
        HuntCase simplest = simplest(
                start,
                each -> each.noises().stream()
                        .anyMatch(noise -> noise.kind() == HuntNoise.Kind.JITTER && noise.strength() > 0.02));
        assertThat(simplest.noises()).singleElement().satisfies(noise -> {
            assertThat(noise.kind()).isEqualTo(HuntNoise.Kind.JITTER);
            assertThat(noise.strength()).isBetween(0.02, 0.03);
        });
        assertThat(simplest.loops()).isEqualTo(2);
        assertThat(simplest.message()).isEqualTo(new Message.Codes(List.of()));
    }

    @Test
    void a_train_is_told_in_words() {
        assertThat(HuntCase.words(Map.of())).isEqualTo("nothing");
        assertThat(HuntCase.words(Map.of(Segment.CODES, List.of()))).isEqualTo("codes none");
    }

    @Test
    void every_kind_of_noise_comes_up_and_every_format() {
        List<HuntCase> drawn = IntStream.range(0, 200)
                .mapToObj(seed -> HuntCase.drawnFrom(Chance.of(seed), FORMATS))
                .toList();
        assertThat(drawn)
                .extracting(each -> each.format().id())
                .containsAll(FormatCatalog.shipped().ids());
        assertThat(drawn.stream().flatMap(each -> each.noises().stream()).map(HuntNoise::kind))
                .contains(HuntNoise.Kind.values());
    }

    @Property(tries = 60)
    void everything_simpler_can_be_sent_and_seen(@ForAll long seed) {
        HuntCase drawn = HuntCase.drawnFrom(Chance.of(seed), FORMATS);
        assertThat(drawn.simpler()).allSatisfy(each -> {
            assertThat(each.train().endNanos()).isPositive();
            assertThat(each).isNotEqualTo(drawn);
        });
    }
}
