package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Counts;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.Part;
import telltally.decoder.card.RightCases;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.Tally;
import telltally.decoder.card.WorstCase;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.SeedBlock;
import telltally.decoder.score.SeedSet;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.signal.PulseTrain;

/** One block after the other, whatever the decoder does. */
class WorkerTest {
    private static final SeedSet FOUR = SmallSet.of("four", 4, 0);

    /** Counts flashes, and fails at some readings since it was opened. */
    private static final class Tiring implements Entrant {
        private final List<Integer> readings = new ArrayList<>();
        private final int failsAt;
        private final int failsAgainAt;
        private int open;

        Tiring(int failsAt, int failsAgainAt) {
            this.failsAt = failsAt;
            this.failsAgainAt = failsAgainAt;
        }

        @Override
        public String id() {
            return "tiring";
        }

        @Override
        public Reader open() {
            open++;
            readings.add(0);
            return new Reader() {
                @Override
                public Outcome read(PulseTrain train, List<FlashFormat> candidates) {
                    int reading = readings.get(readings.size() - 1) + 1;
                    readings.set(readings.size() - 1, reading);
                    return reading == failsAt || reading == failsAgainAt
                            ? new Outcome.Failed(Failure.DIED, "tired")
                            : new Outcome.Read(SmallSet.counted(train));
                }

                @Override
                public void close() {
                    open--;
                }
            };
        }
    }

    private static Worker worker(Entrant entrant, boolean beside) {
        RunOrder order = new RunOrder(List.of(FOUR), Extent.OWN, List.of(Line.LAMP), false, beside, Part.WHOLE, 1);
        return new Worker(order, entrant, false, FormatCatalog.shipped());
    }

    private static SetCard empty(SeedSet set, Line... lines) {
        int cases = set.seeds().count();
        SetCard.Title title =
                new SetCard.Title(set.id(), set.why(), Optional.empty(), List.of(), 1, cases, cases, "none");
        List<LineCard> cards = IntStream.range(0, lines.length)
                .mapToObj(i -> new LineCard(lines[i], List.of(), new RightCases(cases, new BitSet()), List.of()))
                .toList();
        return new SetCard(title, Optional.empty(), List.of(), cards);
    }

    private static Block block(SeedSet set, int index) {
        return new Block(set, set.blocks().get(index), 2 * index, Optional.empty());
    }

    private static SetCard card(Worker worker, SeedSet set, int block) {
        return worker.card(block(set, block), empty(set, Line.LAMP));
    }

    private static Tally tally(SetCard card) {
        return card.lines().get(0).decoder();
    }

    @Test
    void a_block_adds_its_own_cases_and_no_others() {
        try (Worker worker = worker(new Tiring(0, 0), false)) {
            SetCard second = worker.card(block(FOUR, 1), empty(FOUR, Line.LAMP, Line.PIN));
            for (LineCard line : second.lines()) {
                assertThat(line.decoder().counts()).isEqualTo(new Counts(2, 2, 2, 2, 2, 2, 0, 0));
                assertThat(line.right().right(1)).isFalse();
                assertThat(line.right().right(2)).isTrue();
                assertThat(line.right().right(3)).isTrue();
                assertThat(line.plain()).isEmpty();
                assertThat(line.told()).isEmpty();
            }
            assertThat(second.title().id()).isEqualTo("four");
            assertThat(second.flaws()).isEmpty();
            assertThat(worker.times().sessions()).isEqualTo(4);
            // Of the clock on the wall: this test takes no hour.
            assertThat(worker.times().totalNanos()).isBetween(0L, 3_600_000_000_000L);
        }
    }

    @Test
    void what_runs_beside_reads_the_same_sessions() {
        try (Worker worker = worker(new Tiring(0, 0), true)) {
            LineCard line = card(worker, FOUR, 0).lines().get(0);
            assertThat(line.plain().orElseThrow().sessions()).isEqualTo(2);
            assertThat(line.told().orElseThrow().sessions()).isEqualTo(2);
        }
    }

    /** It fails at its third reading: in the second block, which is read once more by one that was opened for it. */
    @Test
    void a_block_in_which_a_used_decoder_fails_is_read_again_from_its_beginning() {
        Tiring tiring = new Tiring(3, 0);
        try (Worker worker = worker(tiring, false)) {
            assertThat(tally(card(worker, FOUR, 0)).failures()).isEmpty();
            assertThat(tally(card(worker, FOUR, 1)).failures()).isEmpty();
            assertThat(tiring.readings).containsExactly(4, 2);
            assertThat(worker.times().sessions()).isEqualTo(4);
        }
        assertThat(tiring.open).isZero();
    }

    @Test
    void a_decoder_that_failed_where_it_was_new_has_failed_and_the_next_block_gets_another() {
        Tiring tiring = new Tiring(2, 0);
        try (Worker worker = worker(tiring, false)) {
            for (int block = 0; block < 2; block++) {
                assertThat(tally(card(worker, FOUR, block)).failures()).isEqualTo(Map.of(Failure.DIED, 1L));
                assertThat(tally(card(worker, FOUR, block)).counts().sessionsRight())
                        .isEqualTo(1);
            }
            // Each of four blocks by one of its own; a fifth stands ready.
            assertThat(tiring.readings).containsExactly(2, 2, 2, 2, 0);
        }
        assertThat(tiring.open).isZero();
    }

    @Test
    void a_decoder_that_fails_in_the_second_reading_of_a_block_too_is_replaced() {
        Tiring tiring = new Tiring(3, 2);
        SeedSet six = SmallSet.of("six", 6, 0);
        try (Worker worker = worker(tiring, false)) {
            assertThat(tally(card(worker, six, 0)).failures()).hasSize(1);
            assertThat(tally(card(worker, six, 1)).failures()).hasSize(1);
            assertThat(tiring.readings).containsExactly(2, 2, 0);
        }
    }

    @Test
    void a_failure_is_among_the_worst_cases() {
        try (Worker worker = worker(new Tiring(1, 0), false)) {
            List<WorstCase> worst = card(worker, FOUR, 1).lines().get(0).worst();
            assertThat(worst).hasSize(1);
            assertThat(worst.get(0).index()).isEqualTo(2);
            assertThat(worst.get(0).seed()).isEqualTo(3);
            assertThat(worst.get(0).failure()).contains(Failure.DIED);
        }
    }

    @Test
    void a_case_that_cannot_be_made_is_a_flaw_and_the_others_keep_their_places() {
        SeedSet torn = SmallSet.of("torn", 2, 2);
        SeedBlock all = new SeedBlock(5, List.of(3L, 1L, 4L, 2L));
        try (Worker worker = worker(new Tiring(0, 0), false)) {
            SetCard card = worker.card(new Block(torn, all, 0, Optional.of("moved")), empty(torn, Line.LAMP));
            assertThat(card.flaws()).hasSize(2).allMatch(flaw -> flaw.block() == 5);
            assertThat(card.flaws().get(0).text()).startsWith("seed 3 cannot be run: java.lang.IndexOutOfBounds");
            assertThat(card.flaws().get(1).text()).startsWith("seed 4 cannot be run: ");
            RightCases right = card.lines().get(0).right();
            assertThat(IntStream.range(0, 4).filter(right::right)).containsExactly(1, 3);
        }
    }

    @Test
    void a_digest_must_be_that_of_the_cases() {
        SeedBlock seeds = FOUR.blocks().get(1);
        String hex = SmallSet.digest(FOUR, seeds.seeds());
        try (Worker worker = worker(new Tiring(0, 0), false)) {
            Block same = new Block(FOUR, seeds, 2, Optional.of(hex));
            assertThat(worker.card(same, empty(FOUR, Line.LAMP)).flaws()).isEmpty();
            Block unknown = new Block(FOUR, seeds, 2, Optional.empty());
            assertThat(worker.card(unknown, empty(FOUR, Line.LAMP)).flaws()).isEmpty();
            Block moved = new Block(FOUR, seeds, 2, Optional.of(hex.replace(hex.charAt(0), 'x')));
            assertThat(worker.card(moved, empty(FOUR, Line.LAMP)).flaws())
                    .containsExactly(new SetCard.Flaw(
                            2, "block 2, seeds 3 to 4: generated output changed: raise the generator version or undo"));
        }
    }

    @Test
    void a_worker_goes_from_one_set_to_another() {
        SeedSet other = SmallSet.of("other", 2, 0);
        try (Worker worker = worker(new Tiring(0, 0), false)) {
            card(worker, FOUR, 1);
            assertThat(tally(card(worker, other, 0)).counts().sessionsRight()).isEqualTo(2);
            assertThat(card(worker, other, 0).lines().get(0).right().count()).isEqualTo(2);
        }
    }
}
