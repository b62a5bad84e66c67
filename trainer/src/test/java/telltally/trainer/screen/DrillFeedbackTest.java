package telltally.trainer.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Answer.Entry;
import telltally.trainer.drill.Answer.Written;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Skill;
import telltally.trainer.screen.ReplayScreen.Pace;
import telltally.trainer.screen.Timeline.Digit;
import telltally.trainer.screen.Timeline.Look;
import telltally.trainer.screen.Timeline.Piece;
import telltally.trainer.screen.Timeline.Verdict;

class DrillFeedbackTest {
    private final DrillRun run = new DrillRun();

    private DrillMarkedScreen answered(Drill drill, Answer answer) {
        DrillScreen screen = run.open(drill);
        run.passAll(drill);
        DrillRun.type(screen, answer);
        screen.answer();
        return run.run.at(DrillMarkedScreen.class);
    }

    private static Written written(String... codes) {
        return new Written(Arrays.stream(codes)
                .map(code -> new Entry(Segment.CODES, code, 0))
                .toList());
    }

    private static String changedLastDigit(String code) {
        char last = code.charAt(code.length() - 1);
        return code.substring(0, code.length() - 1) + (last == '1' ? '2' : (char) (last - 1));
    }

    @Test
    void a_miscounted_digit_stands_under_the_flashes_that_it_was_counted_from() {
        Drill drill = DrillRun.drill(Skill.HOLD_TWO_DIGITS, 10, 21);
        String sent = drill.truth().codes().get(Segment.CODES).get(0);
        String wrong = changedLastDigit(sent);
        DrillMarkedScreen marked = answered(drill, written(wrong));
        Piece piece = marked.timeline().pieces().get(0);
        assertThat(piece.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(piece.written()).isEqualTo(wrong);
        assertThat(piece.digits())
                .extracting(Digit::sent, Digit::written, Digit::right)
                .containsExactly(
                        tuple(sent.substring(0, 1), sent.substring(0, 1), true),
                        tuple(sent.substring(1), wrong.substring(1), false));
        assertThat(piece.bars()).allMatch(bar -> bar.look() == Look.SEEN);
        assertThat(marked.mistakes()).singleElement().satisfies(mistake -> {
            assertThat(mistake.name()).isEqualTo("Miscounted digit");
            assertThat(mistake.sentences()).singleElement().asString().contains(sent);
        });
        assertThat(marked.rules()).hasSize(1);
    }

    @Test
    void a_flash_that_was_not_seen_and_one_that_was_none_are_shown_for_what_they_were() {
        assertThat(looks(Skill.MISSED_FLASH)).contains(Look.MISSED).doesNotContain(Look.GHOST);
        assertThat(looks(Skill.GHOST_FLASH)).contains(Look.GHOST).doesNotContain(Look.MISSED);
    }

    private List<Look> looks(Skill skill) {
        return LongStream.range(0, 12)
                .mapToObj(seed -> DrillRun.drill(skill, 6, seed))
                .flatMap(drill -> answered(drill, new Answer.None()).timeline().pieces().stream())
                .flatMap(piece -> piece.bars().stream())
                .map(Timeline.Bar::look)
                .distinct()
                .toList();
    }

    @Test
    void every_light_of_a_list_that_was_joined_midway_is_drawn_once() {
        for (long seed = 0; seed < 10; seed++) {
            Drill drill = DrillRun.drill(Skill.FROM_THE_MIDDLE, 10, seed);
            long lights =
                    drill.pulses().intervals().stream().filter(Interval::lit).count();
            Timeline timeline = answered(drill, new Answer.None()).timeline();
            assertThat(timeline.pieces().stream()
                            .mapToLong(piece -> piece.bars().size())
                            .sum())
                    .isEqualTo(lights);
        }
    }

    @Test
    void the_answer_stands_under_the_first_sending_of_a_code_and_not_under_its_repeat() {
        Drill drill = DrillRun.drill(Skill.LIST_IN_THE_HEAD, 10, 3);
        Timeline timeline = answered(drill, drill.perfectAnswer()).timeline();
        int codes = drill.truth().codes().get(Segment.CODES).size();
        assertThat(timeline.pieces()).hasSize(2 * codes);
        assertThat(timeline.pieces().subList(0, codes)).allMatch(piece -> piece.verdict() == Verdict.RIGHT);
        assertThat(timeline.pieces().subList(codes, 2 * codes)).allMatch(piece -> piece.verdict() == Verdict.NONE);
    }

    @Test
    void what_was_written_and_never_sent_stands_below_what_was() {
        Drill drill = DrillRun.drill(Skill.HOLD_TWO_DIGITS, 10, 21);
        String sent = drill.truth().codes().get(Segment.CODES).get(0);
        Timeline timeline = answered(drill, written(sent, "99")).timeline();

        assertThat(timeline.pieces()).extracting(Piece::written).containsExactly(sent, "99");
        Piece extra = timeline.pieces().get(1);
        assertThat(extra.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(extra.group()).isEmpty();
        assertThat(extra.bars()).isEmpty();
        assertThat(extra.spoken()).isEqualTo("Sent nothing, written 99, wrong.");
    }

    @Test
    void pauses_that_are_asked_for_are_told_by_the_numbers_that_the_choice_gives_them() {
        Drill drill = DrillRun.drill(Skill.SEPARATOR_PAUSE, 10, 4);
        List<Piece> pieces = answered(drill, drill.perfectAnswer()).timeline().pieces();
        int right = ((Answer.Chosen) drill.perfectAnswer()).option();

        assertThat(pieces.get(0).before()).isEmpty();
        List<Timeline.Pause> pauses =
                pieces.stream().flatMap(piece -> piece.before().stream()).toList();
        assertThat(pauses.get(right).told()).startsWith("Pause " + (right + 1) + ": ");
        assertThat(pauses)
                .allMatch(pause -> pause.lengthNanos() <= pauses.get(right).lengthNanos());
    }

    @Test
    void one_code_is_shown_again_with_a_running_count_and_more_slowly_if_wanted() {
        Drill drill = DrillRun.drill(Skill.HOLD_TWO_DIGITS, 10, 21);
        DrillMarkedScreen marked = answered(drill, written("11"));
        String sent = drill.truth().codes().get(Segment.CODES).get(0);
        marked.replay(marked.timeline().pieces().get(0));
        ReplayScreen replay = run.run.at(ReplayScreen.class);
        long asSentNanos = replayedNanos(replay);
        assertThat(replay.digitsProperty().get()).isEqualTo(sent);
        replay.paceProperty().set(Pace.SLOWEST);
        assertThat(replay.countProperty().get()).isEmpty();
        assertThat(replayedNanos(replay)).isGreaterThan(asSentNanos + 3_000_000_000L);
        assertThat(replay.digitsProperty().get()).isEqualTo(sent);
    }

    private long replayedNanos(ReplayScreen replay) {
        long from = run.run.clockNanos.get();
        do {
            run.run.pass(0.1);
        } while (!replay.player().ended());
        return run.run.clockNanos.get() - from;
    }

    @Test
    void how_late_taps_are_is_told_by_their_mean_and_spread() {
        PulseTrain pulses =
                PulseTrain.of(false, 10_000_000_000L, 1_000_000_000L, 1_500_000_000L, 2_000_000_000L, 2_500_000_000L);
        List<Interval> taps = List.of(
                new Interval(true, 1_100_000_000L, 1_500_000_000L), new Interval(true, 2_200_000_000L, 2_500_000_000L));
        assertThat(TapTiming.of(pulses, taps)).isEqualTo(new TapTiming(2, 2, 150_000_000L, 50_000_000L));
    }
}
