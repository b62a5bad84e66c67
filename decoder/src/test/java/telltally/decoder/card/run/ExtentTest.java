package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Part;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSet.Digests;
import telltally.decoder.score.SeedSetReader;
import telltally.simulator.document.ProblemException;

/** How many seeds are run, in which blocks. */
class ExtentTest {
    private static final List<Line> LAMP = List.of(Line.LAMP);
    private static final SeedSet FIVE = SmallSet.of("five", 5, 0);

    private static int seeds(Extent extent, SeedSet set) {
        return extent.of(set).seeds().count();
    }

    private static SeedSet lessons() throws ProblemException {
        return SeedSetReader.read(Path.of("..", "seeds", "lessons.json"));
    }

    @Test
    void own_seeds_are_the_set_itself() {
        assertThat(Extent.OWN.of(FIVE)).isSameAs(FIVE);
    }

    @Test
    void a_multiple_is_rounded_up() {
        assertThat(seeds(new Extent(3, 1), FIVE)).isEqualTo(15);
        assertThat(seeds(new Extent(3, 2), FIVE)).isEqualTo(8);
        assertThat(seeds(new Extent(6, 5), FIVE)).isEqualTo(6);
        assertThat(seeds(new Extent(1, 1000), FIVE)).isEqualTo(1);
    }

    @Test
    void a_multiple_is_of_something() {
        assertThatThrownBy(() -> new Extent(0, 1)).hasMessage("0 for 1");
        assertThatThrownBy(() -> new Extent(1, 0)).hasMessage("1 for 0");
    }

    /** Five seeds on two lines and five on one are fifteen sessions: sixty are four times as many. */
    @Test
    void sessions_are_spread_over_the_lines_that_are_heard() {
        SeedSet pin = SmallSet.of("pin", 5, 0, List.of(Line.PIN), new Digests(2, List.of()));
        List<SeedSet> sets = List.of(FIVE, pin);
        assertThat(Extent.sessions(60, sets, List.of(Line.values()))).isEqualTo(new Extent(60, 15));
        assertThat(Extent.sessions(60, sets, LAMP)).isEqualTo(new Extent(60, 5));
        assertThat(Extent.sessions(60, List.of(pin), LAMP)).isEqualTo(new Extent(60, 1));
    }

    /** Twenty seeds, each of which plays eighteen lessons. */
    @Test
    void a_seed_of_lessons_is_a_case_of_each() throws ProblemException {
        assertThat(Extent.casesPerSeed(FIVE)).isEqualTo(1);
        assertThat(Extent.casesPerSeed(lessons())).isEqualTo(18);
        assertThat(Extent.sessions(720, List.of(lessons()), LAMP)).isEqualTo(new Extent(720, 360));
    }

    @Test
    void no_set_has_more_than_a_hundred_million_cases() throws ProblemException {
        assertThat(seeds(new Extent(30_000_000, 1), FIVE)).isEqualTo(100_000_000);
        assertThat(seeds(new Extent(30_000_000, 1), lessons())).isEqualTo(100_000_000 / 18);
    }

    @Test
    void blocks_know_their_cases_and_digests() {
        SeedSet set = SmallSet.of("digests", 5, 0, LAMP, new Digests(2, List.of("a", "b", "c")));
        List<Block> blocks = Block.cut(set, set);
        assertThat(blocks).extracting(Block::firstCase).containsExactly(0, 2, 4);
        assertThat(blocks).extracting(Block::cases).containsExactly(2, 2, 1);
        assertThat(blocks).extracting(block -> block.digest().orElse("none")).containsExactly("a", "b", "c");
    }

    @Test
    void only_blocks_of_the_sets_own_seeds_have_digests() {
        SeedSet set = SmallSet.of("digests", 5, 0, LAMP, new Digests(2, List.of("a", "b", "c")));
        // The third block goes on beyond the set's fifth seed, so it is another block.
        assertThat(Block.cut(set, set.withCount(9)))
                .extracting(block -> block.digest().orElse("none"))
                .containsExactly("a", "b", "none", "none", "none");
        assertThat(Block.cut(set, set.withCount(3)))
                .extracting(block -> block.digest().orElse("none"))
                .containsExactly("a", "none");
    }

    @Test
    void blocks_of_lessons_begin_after_all_lessons_of_the_seeds_before() throws ProblemException {
        SeedSet set = lessons();
        List<Block> blocks = Block.cut(set, set);
        assertThat(blocks).extracting(Block::firstCase).containsExactly(0, 90, 180, 270);
        assertThat(blocks).extracting(Block::cases).isEqualTo(Collections.nCopies(4, 90));
    }

    @Test
    void a_run_needs_sets_lines_and_threads() {
        List<SeedSet> sets = List.of(FIVE);
        assertThatThrownBy(() -> order(sets, LAMP, 0)).hasMessage("nothing to run, or nobody to do it");
        assertThatThrownBy(() -> order(sets, List.of(), 1)).hasMessage("nothing to run, or nobody to do it");
        assertThatThrownBy(() -> order(List.of(), LAMP, 1)).hasMessage("nothing to run, or nobody to do it");
        assertThat(order(sets, List.of(Line.PIN, Line.LAMP, Line.PIN), 1).lines())
                .containsExactly(Line.LAMP, Line.PIN);
    }

    private static RunOrder order(List<SeedSet> sets, List<Line> lines, int threads) {
        return new RunOrder(sets, Extent.OWN, lines, false, false, Part.WHOLE, threads);
    }
}
