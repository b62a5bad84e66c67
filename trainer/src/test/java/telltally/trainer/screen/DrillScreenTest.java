package telltally.trainer.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import telltally.simulator.format.Segment;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.Interval;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Mistake;
import telltally.trainer.drill.Skill;
import telltally.trainer.text.Texts;

class DrillScreenTest {
    private final DrillRun run = new DrillRun();

    @ParameterizedTest
    @EnumSource(Skill.class)
    void every_skill_can_be_answered_right_by_keys_alone_and_says_all_it_says_in_both_languages(Skill skill) {
        Drill drill = DrillRun.drill(skill, 3, 11);
        DrillScreen screen = run.open(drill);
        if (skill != Skill.WRITE_AT_ONCE) {
            run.passAll(drill);
        }
        DrillRun.type(screen, drill.perfectAnswer());
        screen.answer();
        DrillMarkedScreen marked = run.run.at(DrillMarkedScreen.class);
        assertThat(marked.right()).isTrue();
        assertThat(marked.mistakes()).isEmpty();
        assertThat(marked.timeline().pieces()).isNotEmpty();
        for (Locale language : Texts.LANGUAGES) {
            Texts texts = Texts.in(language);
            assertThat(drill.question().task().in(texts)).isNotBlank();
            assertThat(texts.of("drill.skill-" + skill.key())).isNotBlank();
            assertThat(texts.of("drill.why-" + skill.key())).isNotBlank();
        }
    }

    @Test
    void an_answer_is_handed_over_before_anything_of_its_marks_is_shown() {
        Drill drill = DrillRun.drill(Skill.COUNT_A_DIGIT, 2, 5);
        DrillScreen screen = run.open(drill);
        run.passAll(drill);
        DrillRun.type(screen, drill.perfectAnswer());
        screen.answer();
        assertThat(run.calls).containsExactly("record on DrillScreen");
        assertThat(run.kept).hasSize(1);
        assertThat(run.kept.get(0).scored()).isTrue();
        assertThat(run.kept.get(0).marked().right()).isTrue();
    }

    @Test
    void an_answer_that_could_not_be_kept_is_marked_all_the_same_and_the_trouble_is_told() {
        run.trouble = Optional.of("The disk is full.");
        Drill drill = DrillRun.drill(Skill.COUNT_A_DIGIT, 2, 5);
        run.open(drill).answer();
        assertThat(run.run.at(DrillMarkedScreen.class).remarks()).contains("The disk is full.");
    }

    @Test
    void a_list_that_is_held_in_the_head_cannot_be_written_before_the_end() {
        Drill drill = DrillRun.drill(Skill.LIST_IN_THE_HEAD, 2, 3);
        DrillInput.Sheet sheet = (DrillInput.Sheet) run.open(drill).answerInput();
        run.run.pass(3);
        assertThat(sheet.openProperty().get()).isFalse();
        sheet.sheet().type("3");
        assertThat(sheet.answer()).isEqualTo(new Answer.Written(List.of()));
        run.passAll(drill);
        assertThat(sheet.openProperty().get()).isTrue();
    }

    @Test
    void codes_that_are_written_after_the_end_are_late_for_the_habit_of_writing_at_once() {
        Drill drill = DrillRun.drill(Skill.WRITE_AT_ONCE, 2, 3);
        DrillScreen screen = run.open(drill);
        run.passAll(drill);
        DrillRun.type(screen, drill.perfectAnswer());
        screen.answer();
        assertThat(run.kept.get(0).marked().mistakes())
                .isNotEmpty()
                .allMatch(mistake -> mistake instanceof Mistake.WrittenLate);
    }

    @Test
    void each_code_that_is_written_in_the_dark_after_it_is_in_time() {
        Drill drill = DrillRun.drill(Skill.WRITE_AT_ONCE, 2, 3);
        DrillScreen screen = run.open(drill);
        WorkSheet sheet = ((DrillInput.Sheet) screen.answerInput()).sheet();
        long passedNanos = 0;
        for (Answer.Entry entry : ((Answer.Written) drill.perfectAnswer()).entries()) {
            run.run.pass((entry.atMillis() * 1_000_000L - passedNanos) / 1e9 + 1);
            passedNanos = entry.atMillis() * 1_000_000L + 1_000_000_000L;
            entry.code().chars().forEach(digit -> sheet.type(Character.toString(digit)));
            sheet.finish();
        }
        screen.answer();
        assertThat(run.kept.get(0).marked().right()).isTrue();
    }

    @Test
    void taps_are_read_as_the_codes_that_they_were_tapped_for() {
        Drill drill = DrillRun.drill(Skill.HOLD_TWO_DIGITS, 6, 4);
        DrillScreen screen = run.open(drill);
        screen.meansProperty().set(Means.TAPPED);
        run.run.pass(0.02);
        long begun = run.run.clockNanos.get();
        for (Interval flash :
                drill.pulses().intervals().stream().filter(Interval::lit).toList()) {
            tapAt(screen, begun + flash.startNanos() + 90_000_000L, true);
            tapAt(screen, begun + flash.endNanos() + 70_000_000L, false);
        }
        run.passAll(drill);
        screen.answer();
        Answered answered = run.kept.get(0);
        assertThat(answered.means()).isEqualTo(Means.TAPPED);
        assertThat(((Answer.Written) answered.answer()).sheet().codes(Segment.CODES))
                .isEqualTo(drill.truth().codes().get(Segment.CODES));
        String sent = drill.truth().codes().get(Segment.CODES).get(0);
        List<String> said = run.run.at(DrillMarkedScreen.class).tapped();
        assertThat(said).hasSize(2);
        assertThat(said.get(0)).isEqualTo("To the decoder your taps read as " + sent + ".");
        assertThat(said.get(1)).contains(" ms after them on average");
    }

    @Test
    void taps_that_are_no_code_are_said_to_be_none() {
        Drill drill = DrillRun.drill(Skill.HOLD_TWO_DIGITS, 6, 4);
        DrillScreen screen = run.open(drill);
        screen.meansProperty().set(Means.TAPPED);
        run.run.pass(0.02);
        screen.tap(true);
        run.run.pass(5);
        screen.tap(false);
        run.passAll(drill);
        screen.answer();
        assertThat(run.run.at(DrillMarkedScreen.class).tapped())
                .first()
                .isEqualTo("The decoder could read no code from your taps.");
    }

    private void tapAt(DrillScreen screen, long atNanos, boolean down) {
        run.run.pass((atNanos - run.run.clockNanos.get()) / 1e9);
        screen.tap(down);
    }

    @Test
    void a_run_that_was_paused_is_practice_and_is_not_scored() {
        Drill drill = DrillRun.drill(Skill.HOLD_TWO_DIGITS, 2, 4);
        DrillScreen screen = run.open(drill);
        run.run.pass(2);
        long before = screen.player().playback().positionNanos();
        screen.pause();
        run.run.pass(5);
        assertThat(screen.player().playback().positionNanos()).isEqualTo(before);
        screen.pause();
        run.passAll(drill);
        assertThat(screen.player().ended()).isTrue();
        screen.answer();
        assertThat(run.kept.get(0).free()).isTrue();
        assertThat(run.kept.get(0).scored()).isFalse();
        assertThat(run.run.at(DrillMarkedScreen.class).remarks()).isNotEmpty();
    }

    @Test
    void going_back_shows_the_last_seconds_again_and_the_next_sending_shows_everything() {
        Drill drill = DrillRun.drill(Skill.HOLD_TWO_DIGITS, 9, 4);
        DrillScreen screen = run.open(drill);
        run.run.pass(7);
        long before = screen.player().playback().positionNanos();
        screen.goBack();
        assertThat(screen.player().playback().positionNanos()).isEqualTo(before - 5_000_000_000L);
        screen.nextSending();
        assertThat(screen.player().playback().positionNanos()).isZero();
        run.passAll(drill);
        screen.answer();
        assertThat(run.kept.get(0).sendings()).isEqualTo(2);
    }

    @Test
    void a_run_whose_lamp_lagged_is_not_scored() {
        Drill drill = DrillRun.drill(Skill.COUNT_A_DIGIT, 2, 5);
        DrillScreen screen = run.open(drill);
        run.run.pass(1);
        run.run.stall(drill.lampNanos() / 1e9 - 2);
        run.passAll(drill);
        DrillRun.type(screen, drill.perfectAnswer());
        screen.answer();
        assertThat(run.kept.get(0).lagged()).isTrue();
        assertThat(run.kept.get(0).scored()).isFalse();
        assertThat(run.run.at(DrillMarkedScreen.class).remarks()).isNotEmpty();
    }

    @Test
    void somebody_asks_something_in_the_middle_and_then_is_silent_again() {
        Drill drill = DrillRun.drill(Skill.INTERRUPTION, 5, 8);
        DrillScreen screen = run.open(drill);
        double from = drill.interruption().orElseThrow().fromNanos() / 1e9;
        run.run.pass(from - 0.1);
        assertThat(screen.askedProperty().get()).isEmpty();
        run.run.pass(0.3);
        assertThat(screen.askedProperty().get()).isNotBlank();
        run.passAll(drill);
        assertThat(screen.askedProperty().get()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Skill.class)
    void nothing_flashes_for_whoever_turned_the_lamp_down(Skill skill) {
        Drill drill = DrillRun.drill(skill, 10, 8);
        assertThat(DrillScreen.shownBy(drill, Display.METER)).isIn(Display.METER, Display.SOUNDER);
        assertThat(DrillScreen.shownBy(drill, Display.SOUNDER)).isEqualTo(Display.SOUNDER);
    }

    @Test
    void whoever_turned_the_lamp_down_hears_every_drill_and_others_see_what_the_drill_asks_for() {
        Drill needle = DrillRun.drill(Skill.NEEDLE, 5, 8);
        Drill ear = DrillRun.drill(Skill.BY_EAR, 5, 8);
        Drill lamp = DrillRun.drill(Skill.COUNT_A_DIGIT, 5, 8);
        assertThat(run.open(needle, Display.SOUNDER).display()).isEqualTo(Display.SOUNDER);
        assertThat(run.open(needle, Display.LAMP).display()).isEqualTo(Display.METER);
        assertThat(run.open(ear, Display.LAMP).display()).isEqualTo(Display.SOUNDER);
        assertThat(run.open(lamp, Display.LED).display()).isEqualTo(Display.LED);
        assertThat(run.open(DrillRun.drill(Skill.DIM_LAMP, 5, 8), Display.LED).display())
                .isEqualTo(Display.LAMP);
        assertThat(run.open(lamp, Display.LAMP_AND_SOUNDER).display()).isEqualTo(Display.LAMP_AND_SOUNDER);
    }

    @Test
    void the_ways_on_lead_where_they_say() {
        Drill drill = DrillRun.drill(Skill.COUNT_A_DIGIT, 2, 5);
        DrillScreen screen = run.open(drill);
        screen.back();
        screen.answer();
        DrillMarkedScreen marked = run.run.at(DrillMarkedScreen.class);
        marked.replayAll();
        run.run.at(ReplayScreen.class).back();
        assertThat(run.run.trainer.screen()).isSameAs(marked);
        marked.next();
        marked.done();
        marked.again();
        assertThat(run.run.at(DrillScreen.class).drill()).isEqualTo(drill);
        assertThat(run.calls).containsExactly("done", "record on DrillScreen", "next", "done");
    }
}
