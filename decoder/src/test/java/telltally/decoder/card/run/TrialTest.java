package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Part;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSet.Digests;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.signal.PulseTrain;

/** Whom it is no use to ask. */
class TrialTest {
    private static final FormatCatalog FORMATS = FormatCatalog.shipped();
    private static final SeedSet TWENTY = SmallSet.of("twenty", 20, 0);

    /** Keeps what it was asked; fails where it is told to, and answers otherwise. */
    private static final class Asked implements Entrant {
        private final List<PulseTrain> trains = new ArrayList<>();
        private final List<List<FlashFormat>> candidates = new ArrayList<>();
        private final IntPredicate fails;
        private final Reading answer;
        private int open;

        Asked(IntPredicate fails, Reading answer) {
            this.fails = fails;
            this.answer = answer;
        }

        @Override
        public String id() {
            return "asked";
        }

        @Override
        public Reader open() {
            open++;
            return new Reader() {
                @Override
                public Outcome read(PulseTrain train, List<FlashFormat> all) {
                    trains.add(train);
                    candidates.add(all);
                    return fails.test(trains.size())
                            ? new Outcome.Failed(Failure.HUNG, "at " + trains.size())
                            : new Outcome.Read(answer);
                }

                @Override
                public void close() {
                    open--;
                }
            };
        }
    }

    private static final Reading FOUND = SmallSet.counted(SmallSet.train(1));
    private static final Reading UNREADABLE = Reading.nothing(new Warning(0, WarningKind.NO_FORMAT, "of another kind"));

    private static Asked failing(IntPredicate fails) {
        return new Asked(fails, FOUND);
    }

    private static Trial trial(boolean told, SeedSet... sets) {
        return trial(told, List.of(Line.values()), sets);
    }

    private static Trial trial(boolean told, List<Line> lines, SeedSet... sets) {
        return new Trial(new RunOrder(List.of(sets), Extent.OWN, lines, told, false, Part.WHOLE, 1), told, FORMATS);
    }

    private static List<PulseTrain> trains(int... seeds) {
        List<PulseTrain> trains = new ArrayList<>();
        for (int seed : seeds) {
            trains.add(SmallSet.train(seed));
        }
        return trains;
    }

    @Test
    void who_fails_ten_times_and_never_answers_is_not_asked_again() {
        Asked asked = failing(time -> true);
        assertThat(trial(false, TWENTY).failureOf(asked)).contains(new Outcome.Failed(Failure.HUNG, "at 10"));
        assertThat(asked.trains).hasSize(10);
        assertThat(asked.open).isZero();
    }

    @Test
    void one_answer_is_enough() {
        Asked last = failing(time -> time < 10);
        assertThat(trial(false, TWENTY).failureOf(last)).isEmpty();
        assertThat(last.trains).hasSize(10);
        Asked first = failing(time -> time > 1);
        assertThat(trial(false, TWENTY).failureOf(first)).isEmpty();
        assertThat(first.trains).hasSize(1);
    }

    @Test
    void who_is_not_asked_about_the_right_format_shows_nothing_by_that() {
        Asked asked = new Asked(time -> time % 2 == 0, UNREADABLE);
        assertThat(trial(false, TWENTY).failureOf(asked)).contains(new Outcome.Failed(Failure.HUNG, "at 20"));
        Asked never = new Asked(time -> false, UNREADABLE);
        assertThat(trial(false, TWENTY).failureOf(never)).isEmpty();
        assertThat(never.trains).hasSize(20);
    }

    @Test
    void a_reading_with_other_warnings_is_an_answer() {
        Reading doubtful = Reading.nothing(new Warning(0, WarningKind.NO_FLASHES, "dark"));
        Asked asked = new Asked(time -> time > 1, doubtful);
        assertThat(trial(false, TWENTY).failureOf(asked)).isEmpty();
        assertThat(asked.trains).hasSize(1);
    }

    @Test
    void of_fewer_than_ten_sessions_nothing_is_concluded() {
        Asked asked = failing(time -> true);
        assertThat(trial(false, SmallSet.of("nine", 9, 0)).failureOf(asked)).isEmpty();
        assertThat(asked.trains).hasSize(9);
    }

    @Test
    void sessions_are_taken_evenly_from_all_sets() {
        Asked asked = new Asked(time -> false, UNREADABLE);
        trial(false, SmallSet.of("one", 150, 0), SmallSet.of("other", 150, 0)).failureOf(asked);
        // Every third of three hundred.
        assertThat(asked.trains).hasSize(100);
        assertThat(asked.trains.subList(0, 2)).isEqualTo(trains(1, 4));
        assertThat(asked.trains.subList(49, 52)).isEqualTo(trains(148, 1, 4));
    }

    @Test
    void each_seed_of_few_is_taken_once_and_what_cannot_be_made_is_left_out() {
        Asked asked = new Asked(time -> false, UNREADABLE);
        trial(false, SmallSet.of("one", 2, 1), SmallSet.of("other", 3, 0)).failureOf(asked);
        assertThat(asked.trains).isEqualTo(trains(1, 2, 1, 2, 3));
    }

    @Test
    void a_set_on_none_of_the_lines_is_left_out() {
        SeedSet pin = SmallSet.of("pin", 3, 0, List.of(Line.PIN), new Digests(2, List.of()));
        Asked asked = new Asked(time -> false, UNREADABLE);
        trial(false, List.of(Line.LAMP), pin, SmallSet.of("both", 1, 0)).failureOf(asked);
        assertThat(asked.trains).isEqualTo(trains(1));
    }

    @Test
    void who_is_told_the_format_is_told_it_here_too() {
        Asked told = new Asked(time -> false, FOUND);
        trial(true, TWENTY).failureOf(told);
        assertThat(told.candidates.get(0)).containsExactly(SmallSet.FORMAT);
        Asked untold = new Asked(time -> false, FOUND);
        trial(false, TWENTY).failureOf(untold);
        assertThat(untold.candidates.get(0)).hasSameSizeAs(FORMATS.all());
    }
}
