package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Counts;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.score.DecoderFloors;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Floors;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSet.Digests;
import telltally.simulator.Simulation;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** Whole runs over sets of a few frozen recordings. */
class SmallRunTest {
    private static final SeedSet FIVE = SmallSet.of("five", 5, 0);
    private static final SeedSet THREE = SmallSet.of("three", 3, 0);

    /** Counts flashes, or never answers; says of itself what it is told to. */
    private record Counting(boolean answers, boolean wantsFormat, List<Integer> candidates) implements Entrant {
        @Override
        public String id() {
            return "counting";
        }

        @Override
        public Traits traits() {
            return new Traits(wantsFormat, false);
        }

        @Override
        public Reader open() {
            return new Reader() {
                @Override
                public Outcome read(PulseTrain train, List<FlashFormat> given) {
                    synchronized (candidates) {
                        candidates.add(given.size());
                    }
                    return answers
                            ? new Outcome.Read(SmallSet.counted(train))
                            : new Outcome.Failed(Failure.DIED, "no words");
                }

                @Override
                public void close() {}
            };
        }
    }

    /** What was told on the way. */
    private static final class Watched implements ScoreRun.Progress {
        private final List<String> told = new ArrayList<>();

        @Override
        public void sessions(long done, long all) {
            told.add(done + " of " + all);
        }

        @Override
        public void givenUp(String id, Outcome.Failed why) {
            told.add(id + " given up: " + why.failure());
        }
    }

    private static Counting answering() {
        return new Counting(true, false, new ArrayList<>());
    }

    private static RunOrder order(Part part, int threads, SeedSet... sets) {
        return new RunOrder(List.of(sets), Extent.OWN, List.of(Line.values()), false, false, part, threads);
    }

    private static ScoreRun.Result run(RunOrder order, Entrant entrant) {
        return ScoreRun.of(order, entrant, List.of("--decoder", "counting"), ScoreRun.Progress.NONE);
    }

    private static Counts right(int sessions) {
        return new Counts(sessions, sessions, sessions, sessions, sessions, sessions, 0, 0);
    }

    @Test
    void every_case_of_every_set_is_read_once_on_each_line() {
        ScoreRun.Result result = run(order(Part.WHOLE, 2, FIVE, THREE), answering());
        ScoreCard card = result.card();
        assertThat(card.decoder()).isEqualTo("counting");
        assertThat(card.generator()).isEqualTo(Simulation.GENERATOR_VERSION);
        assertThat(card.arguments()).containsExactly("--decoder", "counting");
        assertThat(card.part()).isEqualTo(Part.WHOLE);
        assertThat(card.total(Line.LAMP).counts()).isEqualTo(right(8));
        assertThat(card.sets().get(0).lines().get(1).decoder().counts()).isEqualTo(right(5));
        assertThat(card.sets().get(1).lines().get(0).right().count()).isEqualTo(3);
        assertThat(result.times().sessions()).isEqualTo(16);
    }

    /** Five seeds are blocks of 2, 2 and 1; three are 2 and 1: blocks go to shards by their place among all five. */
    @Test
    void blocks_of_all_sets_are_dealt_to_the_shards() {
        Watched watched = new Watched();
        Part second = new Part(2, List.of(2));
        ScoreCard card = ScoreRun.of(order(second, 1, FIVE, THREE), answering(), List.of(), watched)
                .card();
        assertThat(IntStream.range(0, 5)
                        .filter(card.sets().get(0).lines().get(0).right()::right))
                .containsExactly(2, 3);
        assertThat(IntStream.range(0, 3)
                        .filter(card.sets().get(1).lines().get(0).right()::right))
                .containsExactly(0, 1);
        assertThat(watched.told).containsExactly("4 of 8", "8 of 8");
    }

    @Test
    void a_set_is_told_by_its_title() throws Exception {
        Floors floors = new Floors(0.5, 0.6, 7);
        SeedSet set = new SeedSet(
                FIVE.id(),
                FIVE.why(),
                FIVE.curve(),
                List.of(Line.PIN),
                FIVE.source(),
                FIVE.channel(),
                FIVE.seeds(),
                List.of(),
                new Digests(2, List.of("a", "b", "c")),
                new DecoderFloors(Map.of("counting", floors)),
                List.of());
        SetCard card = run(order(Part.WHOLE, 1, set), answering()).card().sets().get(0);
        // SHA-256 of the digests, a line each.
        byte[] sum = MessageDigest.getInstance("SHA-256").digest("a\nb\nc".getBytes(StandardCharsets.US_ASCII));
        assertThat(card.title())
                .isEqualTo(new SetCard.Title(
                        "five",
                        "small",
                        Optional.empty(),
                        List.of(),
                        1,
                        5,
                        5,
                        HexFormat.of().formatHex(sum)));
        assertThat(card.floors()).contains(floors);
        assertThat(card.lines()).hasSize(1).allMatch(line -> line.line() == Line.PIN);
        // None of these is the digest of a block.
        assertThat(card.flaws()).extracting(SetCard.Flaw::block).containsExactly(1, 2, 3);
    }

    @Test
    void who_wants_the_format_or_is_to_have_it_is_told_it() {
        Counting wants = new Counting(true, true, new ArrayList<>());
        assertThat(run(order(Part.WHOLE, 1, THREE), wants).card().toldFormat()).isTrue();
        assertThat(wants.candidates).containsOnly(1);
        Counting told = answering();
        RunOrder order = new RunOrder(List.of(THREE), Extent.OWN, List.of(Line.LAMP), true, false, Part.WHOLE, 1);
        assertThat(run(order, told).card().toldFormat()).isTrue();
        assertThat(told.candidates).containsOnly(1);
        Counting untold = answering();
        assertThat(run(order(Part.WHOLE, 1, THREE), untold).card().toldFormat()).isFalse();
        assertThat(untold.candidates).doesNotContain(1);
    }

    @Test
    void who_never_answers_is_given_up_and_fails_every_session() {
        Counting dead = new Counting(false, false, new ArrayList<>());
        Watched watched = new Watched();
        SeedSet many = SmallSet.of("many", 30, 0);
        ScoreCard card = ScoreRun.of(order(Part.WHOLE, 1, many), dead, List.of(), watched)
                .card();
        assertThat(watched.told).startsWith("counting given up: DIED").endsWith("60 of 60");
        assertThat(card.decoder()).isEqualTo("counting");
        assertThat(card.total(Line.PIN).failures()).isEqualTo(Map.of(Failure.DIED, 30L));
        assertThat(dead.candidates).hasSize(10);
    }

    @Test
    void a_fault_while_a_block_is_read_ends_the_run() {
        Entrant faulty = new Entrant() {
            private int opened;

            @Override
            public String id() {
                return "faulty";
            }

            @Override
            public synchronized Reader open() {
                // The first to be opened is asked beforehand.
                if (opened++ > 0) {
                    throw new IllegalStateException("lost its mind");
                }
                return answering().open();
            }
        };
        assertThatThrownBy(() -> run(order(Part.WHOLE, 2, FIVE), faulty))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("a worker failed: java.lang.IllegalStateException: lost its mind");
    }

    @Test
    void a_larger_extent_has_no_floors_and_its_own_number_of_seeds() {
        RunOrder order = new RunOrder(List.of(FIVE), new Extent(2, 5), List.of(Line.LAMP), false, false, Part.WHOLE, 1);
        SetCard card = run(order, answering()).card().sets().get(0);
        assertThat(card.title().seeds()).isEqualTo(2);
        assertThat(card.title().cases()).isEqualTo(2);
        assertThat(card.floors()).isEmpty();
        assertThat(card.flaws()).isEmpty();
        assertThat(card.lines().get(0).decoder().counts()).isEqualTo(right(2));
    }
}
