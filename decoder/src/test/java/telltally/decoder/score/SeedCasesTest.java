package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import telltally.decoder.score.SeedSet.Digests;
import telltally.decoder.score.SeedSet.SeedRange;
import telltally.simulator.Simulation;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.channel.ChannelRecipe.Step;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.Strength;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.recording.Recording;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.scenario.ScenarioReader;

class SeedCasesTest {
    private static final Step CLOCK =
            new Step("clock-scale", draw -> new ClockScale(draw.of("factor", new Strength(0.85, 1.18))));
    private static final Step JITTER = new Step("jitter", draw -> new Jitter(0.06));

    private static SeedSource messages(String formatId) {
        return new SeedSource.Messages(new MessageRecipe(
                List.of(FormatCatalog.shipped().find(formatId).orElseThrow()),
                List.of(SessionKind.KEY_ON),
                new WholeRange(1, 3),
                new WholeRange(4, 8),
                new WholeRange(2, 2)));
    }

    private static SeedSet set(SeedSource source, Digests digests, Step... channel) {
        ChannelRecipe recipe = new ChannelRecipe(List.of(channel));
        SeedRange seeds = new SeedRange(0, 9);
        return new SeedSet(
                "set",
                "why",
                Optional.empty(),
                List.of(Line.values()),
                source,
                recipe,
                seeds,
                List.of(),
                digests,
                new DecoderFloors(Map.of("plain", new Floors(1, 1, 0))),
                List.of());
    }

    private static SeedCase message(long seed, Step... channel) {
        return new SeedCases(set(messages("pair-thrice"), new Digests(5, List.of()), channel))
                .of(seed)
                .get(0);
    }

    @Test
    void the_same_seed_gives_the_same_case_and_another_one_another() {
        assertThat(message(7, CLOCK, JITTER)).isEqualTo(message(7, CLOCK, JITTER));
        assertThat(LongStream.range(0, 50).mapToObj(seed -> message(seed).lamp().toString()))
                .doesNotHaveDuplicates();
    }

    @Test
    void a_channel_changes_what_is_seen_but_not_what_was_sent() {
        SeedCase clean = message(7);
        SeedCase spoiled = message(7, JITTER);
        assertThat(spoiled.truth()).isEqualTo(clean.truth());
        assertThat(spoiled.lamp()).isNotEqualTo(clean.lamp());
    }

    /** In this format lamp and wire carry the same pulses. */
    @Test
    void lamp_and_pin_share_the_clock_of_the_sender_but_not_their_noise() {
        assertThat(message(7).pin()).isEqualTo(message(7).lamp());
        assertThat(message(7, CLOCK).pin()).isEqualTo(message(7, CLOCK).lamp());
        assertThat(message(7, JITTER).pin()).isNotEqualTo(message(7, JITTER).lamp());
    }

    @Test
    void each_seed_plays_every_lesson() throws ProblemException {
        Path lessons = Path.of("..", "scenarios", "lessons");
        Scenario one = ScenarioReader.shipped().read(lessons.resolve("01-one-digit.json"));
        Scenario two = ScenarioReader.shipped().read(lessons.resolve("03-two-digits.json"));
        SeedSet set = set(new SeedSource.Scenarios(List.of(one, two)), new Digests(5, List.of()));
        List<SeedCase> cases = new SeedCases(set).of(7);
        assertThat(cases).extracting(SeedCase::origin).containsExactly(one.id(), two.id());
        Recording played = Simulation.run(two, 7);
        assertThat(cases.get(1))
                .isEqualTo(new SeedCase(
                        7,
                        two.id(),
                        Optional.of(two.format()),
                        played.lamp(),
                        played.pin(),
                        played.truth(),
                        ImpairmentChain.of()));
    }

    @Test
    void a_digest_that_moved_is_told_with_its_block_and_its_seeds() {
        SeedSet undrawn = set(messages("pair-even"), new Digests(5, List.of()), CLOCK, JITTER);
        List<String> drawn = undrawn.blocks().stream()
                .map(block -> CaseDigest.of(undrawn, block))
                .toList();
        assertThat(DigestCheck.moved(set(undrawn.source(), new Digests(5, drawn), CLOCK, JITTER)))
                .isEmpty();

        Digests second = new Digests(5, List.of(drawn.get(0), "0".repeat(64)));
        assertThat(DigestCheck.moved(set(undrawn.source(), second, CLOCK, JITTER)))
                .containsExactly("seed set set, block 2, seeds 5 to 8: generated output changed: raise the generator"
                        + " version or undo (where a lesson or a format was changed on purpose, draw the digests"
                        + " anew)");
        assertThat(DigestCheck.moved(set(undrawn.source(), new Digests(5, drawn), CLOCK)))
                .hasSize(2);
    }
}
