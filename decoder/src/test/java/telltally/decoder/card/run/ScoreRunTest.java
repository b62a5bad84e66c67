package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.Cards;
import telltally.decoder.card.Counts;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.Tally;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.score.InProcess;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSet.Digests;
import telltally.simulator.document.ProblemException;

class ScoreRunTest {
    @Test
    void the_card_is_the_same_to_the_byte_with_any_number_of_threads_and_shards() throws ProblemException {
        String one = CardJson.text(Cards.forgetful(Part.WHOLE, 1));
        assertThat(CardJson.text(Cards.forgetful())).isEqualTo(one); // two threads
        ScoreCard first = Cards.forgetful(new Part(3, List.of(1)), 1);
        ScoreCard second = Cards.forgetful(new Part(3, List.of(2)), 2);
        ScoreCard third = Cards.forgetful(new Part(3, List.of(3)), 1);
        assertThat(CardJson.text(third.plus(first).plus(second))).isEqualTo(one);
        assertThat(first.total(Line.LAMP).counts().sessions()).isPositive().isLessThan(120);
    }

    @Test
    void what_a_decoder_loses_is_counted_and_its_worst_cases_are_kept() throws ProblemException {
        ScoreCard card = Cards.forgetful();
        for (Line line : Line.values()) {
            Counts counts = card.total(line).counts();
            assertThat(counts.sessions()).isEqualTo(120);
            assertThat(counts.codesLost()).isGreaterThan(50);
            assertThat(counts.codesLost() + counts.codesRight()).isEqualTo(counts.codes());
            assertThat(counts.listsRight()).isBetween(10L, counts.lists() - 50);
        }
        assertThat(Cards.lines(card)).hasSize(4).allSatisfy(line -> {
            assertThat(line.worst()).hasSize(5);
            assertThat(line.worst())
                    .allMatch(worst -> !line.right().right(worst.index()) && worst.errors() > 0)
                    .isSortedAccordingTo(telltally.decoder.card.WorstCase.WORST_FIRST);
            assertThat(line.right().count())
                    .isEqualTo((int) line.decoder().counts().sessionsRight());
        });
    }

    @Test
    void floor_and_ceiling_read_the_same_sessions() throws ProblemException {
        assertThat(Cards.lines(Cards.forgetful())).allSatisfy(line -> {
            assertThat(line.plain().orElseThrow().codes())
                    .isEqualTo(line.decoder().counts().codes());
            assertThat(line.told().orElseThrow().sessions()).isEqualTo(60);
            assertThat(line.plain().orElseThrow().listsRight())
                    .isGreaterThan(line.decoder().counts().listsRight());
        });
        ScoreCard plain = Cards.plain();
        assertThat(Cards.lines(plain))
                .allMatch(
                        line -> line.plain().orElseThrow().equals(line.decoder().counts()));
    }

    @Test
    void a_session_that_a_decoder_throws_on_is_read_wrong_and_named() throws ProblemException {
        ScoreCard card = Cards.run(Cards.order(Part.WHOLE, 2), new InProcess("brittle", Cards.Brittle::new));
        Tally lamp = card.total(Line.LAMP);
        long thrown = lamp.failures().getOrDefault(Failure.THREW, 0L);
        assertThat(thrown).isBetween(10L, 110L).isEqualTo(lamp.readAs().get(Tally.NO_ANSWER));
        assertThat(lamp.counts().sessionsRight()).isLessThanOrEqualTo(120 - thrown);
        assertThat(Cards.lines(card).findFirst().orElseThrow().worst().get(0).failure())
                .contains(Failure.THREW);
    }

    @Test
    void formats_are_told_apart_and_silence_is_none_of_them() throws ProblemException {
        FormatCard silent = Cards.lines(Cards.plain())
                .flatMap(line -> line.formats().stream())
                .filter(each -> each.format().equals(FormatCard.NOTHING_SENT))
                .findFirst()
                .orElseThrow();
        assertThat(silent.decoder().counts().codes()).isZero();
        assertThat(silent.decoder().readAs().keySet()).allMatch(silent::rightly);
    }

    @Test
    void a_digest_that_does_not_match_is_a_flaw_of_its_block_and_fails_the_card() throws ProblemException {
        SeedSet set = Cards.sets().get(1);
        List<String> sums = new ArrayList<>(set.digests().sha256());
        sums.set(1, "0".repeat(64));
        SeedSet moved = new SeedSet(
                set.id(),
                set.why(),
                set.curve(),
                set.lines(),
                set.source(),
                set.channel(),
                set.seeds(),
                set.noted(),
                new Digests(set.digests().per(), sums),
                set.floors(),
                set.lowered());
        ScoreCard card = Cards.run(
                new RunOrder(List.of(moved), Extent.OWN, List.of(Line.LAMP), false, false, Part.WHOLE, 2),
                new InProcess("plain", PlainDecoder::new));
        assertThat(card.sets().get(0).flaws())
                .containsExactly(new SetCard.Flaw(
                        2,
                        "block 2, seeds " + (set.seeds().from() + 50) + " to "
                                + (set.seeds().from() + 99)
                                + ": generated output changed: raise the generator version or undo"));
        assertThat(card.holds()).isFalse();
    }

    @Test
    void a_decoder_below_a_floor_fails_the_card_and_other_seeds_have_no_floors() throws ProblemException {
        RunOrder own =
                new RunOrder(List.of(Cards.sets().get(1)), Extent.OWN, List.of(Line.LAMP), false, false, Part.WHOLE, 2);
        ScoreCard card = Cards.run(own, new InProcess("forgetful", Cards.Forgetful::new));
        SetCard set = card.sets().get(0);
        assertThat(set.flaws()).isEmpty();
        assertThat(set.shortfalls(set.lines().get(0))).hasSize(2).allMatch(line -> line.contains("the floor is 1.0"));
        assertThat(card.holds()).isFalse();
        assertThat(Cards.run(own, new InProcess("plain", PlainDecoder::new)).holds())
                .isTrue();
        assertThat(Cards.forgetful().holds()).isTrue();
    }

    @Test
    void more_sessions_than_a_set_has_keep_the_sets_weights() throws ProblemException {
        List<SeedSet> sets = Cards.sets();
        Extent extent = Extent.sessions(1_000, sets, List.of(Line.LAMP));
        int all = sets.stream().mapToInt(set -> extent.of(set).seeds().count()).sum();
        assertThat(all).isBetween(1_000, 1_002);
        assertThat(extent.of(sets.get(0)).seeds().count())
                .isEqualTo(extent.of(sets.get(1)).seeds().count());
        List<Block> blocks = Block.cut(sets.get(0), new Extent(3, 1).of(sets.get(0)));
        assertThat(blocks.stream().filter(block -> block.digest().isPresent()))
                .hasSize(sets.get(0).seeds().count() / sets.get(0).digests().per());
        assertThat(IntStream.range(0, blocks.size()))
                .allMatch(i -> blocks.get(i).firstCase() == 50 * i);
    }

    @Test
    void progress_ends_at_all_sessions() throws ProblemException {
        List<Long> told = new ArrayList<>();
        ScoreRun.of(
                Cards.order(Part.WHOLE, 2),
                new InProcess("plain", PlainDecoder::new),
                List.of(),
                (done, all) -> told.add(done * 1000 + all));
        assertThat(told).hasSize(4).isSorted().endsWith(240L * 1000 + 240);
    }

    @Test
    void a_fault_of_telltally_itself_is_not_taken_for_a_score() throws ProblemException {
        RunOrder order = Cards.order(Part.WHOLE, 2);
        InProcess unmakable = new InProcess("none", () -> {
            throw new IllegalStateException("no such decoder");
        });
        assertThatThrownBy(() -> Cards.run(order, unmakable)).hasMessageContaining("no such decoder");
    }
}
