package telltally.trainer.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.logbook.DrillEntry;
import telltally.trainer.logbook.Learner;
import telltally.trainer.logbook.LessonEntry;
import telltally.trainer.logbook.Logbook;
import telltally.trainer.logbook.LogbookException;
import telltally.trainer.logbook.SampleLogbook;
import telltally.trainer.mastery.Choice;
import telltally.trainer.mastery.Stage;
import telltally.trainer.mastery.Tally;
import telltally.trainer.playback.Sound;
import telltally.trainer.settings.ByEar;

/** From home to a drill and back, with everything kept on the way. */
class HomeScreenTest {
    private final PracticeRun run = PracticeRun.usual();

    private HomeScreen mira() {
        run.at(NoticeScreen.class).goOn();
        run.at(LearnersScreen.class).enrol("Mira");
        return run.at(HomeScreen.class);
    }

    private HomeScreen practisedMira() throws LogbookException {
        SampleLogbook.practised(
                run.records.folder(), run.records.records().now().get());
        run.at(NoticeScreen.class).goOn();
        LearnersScreen learners = run.at(LearnersScreen.class);
        learners.choose(learners.state().learners().get(1));
        return run.at(HomeScreen.class);
    }

    private List<DrillEntry> kept() throws LogbookException {
        try (Logbook logbook = Logbook.open(run.records.folder())) {
            Learner mira = logbook.find("Mira").orElseThrow();
            return logbook.drills(mira);
        }
    }

    @Test
    void writing_at_once_is_proposed_first_and_the_reason_is_said() {
        HomeScreen home = mira();

        assertThat(home.proposal()).startsWith("Write it at once");
        assertThat(home.why()).contains("Next on the path");
        assertThat(home.path()).hasSize(Skill.values().length).allMatch(step -> step.stage() == Stage.NEW);
        assertThat(home.path().get(0).proposed()).isTrue();
        assertThat(home.spoken(home.path().get(0))).isEqualTo("Step 1: Write it at once, not begun, comes next");
    }

    @Test
    void who_hears_no_tones_can_leave_counting_by_ear_out_of_the_path() {
        HomeScreen home = mira();
        assertThat(step(home, Skill.BY_EAR).told()).isEqualTo("not begun");
        home.settings();
        SettingsScreen settings = run.at(SettingsScreen.class);
        List<SettingsScreen.Group> groups = settings.groups();
        SettingsScreen.Group last = groups.get(groups.size() - 1);
        assertThat(last.title()).isEqualTo("Counting by ear");
        settings.choose(groups.size() - 1, last.options().get(1));
        run.at(SettingsScreen.class).back();
        assertThat(step(run.at(HomeScreen.class), Skill.BY_EAR).told()).isEqualTo("left out");
        assertThat(run.trainer.leftOut()).containsExactly(Skill.BY_EAR);
        // Whoever opens it can still practise it.
        run.at(HomeScreen.class).open(Skill.BY_EAR);
        run.at(SkillScreen.class).begin();
        assertThat(run.at(AdviceScreen.class).title())
                .isEqualTo(step(home, Skill.BY_EAR).name());
    }

    @Test
    void what_was_proposed_and_then_left_out_is_proposed_no_more() {
        run.at(NoticeScreen.class).goOn();
        run.at(LearnersScreen.class).goOnAsGuest();
        Practice practice = run.at(HomeScreen.class).practice();
        Instant now = run.records.records().now().get();
        for (Skill skill : Skill.values()) {
            for (int seed = 0; skill != Skill.BY_EAR && practice.tutor().stage(skill) != Stage.PASSED; seed++) {
                practice.keep(SampleLogbook.right(skill, seed, now));
            }
        }
        HomeScreen home = new HomeScreen(run.trainer, practice, Optional.empty());
        assertThat(step(home, Skill.BY_EAR).proposed()).isTrue();
        run.trainer.change(run.trainer.settings().withByEar(ByEar.LEFT_OUT));
        assertThat(home.path()).filteredOn(HomeScreen.Step::proposed).hasSize(1);
        assertThat(step(home, Skill.BY_EAR).proposed()).isFalse();
    }

    @Test
    void what_cannot_be_heard_on_this_machine_is_not_proposed() {
        mira().begin();
        assertThat(run.trainer.leftOut()).isEmpty();
        run.sound.trouble = Optional.of(Sound.Trouble.NO_DEVICE);
        run.trainer.sound();
        assertThat(run.trainer.leftOut()).containsExactly(Skill.BY_EAR);
    }

    private static HomeScreen.Step step(HomeScreen home, Skill skill) {
        return home.path().stream()
                .filter(step -> step.skill() == skill)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void before_the_first_drill_of_a_skill_its_advice_is_shown_and_only_then() {
        mira().begin();
        AdviceScreen advice = run.at(AdviceScreen.class);
        assertThat(advice.title()).isEqualTo("Write it at once");
        assertThat(advice.advice()).contains("cannot be forgotten");
        assertThat(advice.example().pieces()).allMatch(piece -> piece.verdict() == Timeline.Verdict.RIGHT);
        advice.replay(advice.example().pieces().get(0));
        run.at(ReplayScreen.class).back();
        assertThat(run.trainer.screen()).isSameAs(advice);
        advice.start();
        run.at(DrillScreen.class).answer();
        run.at(DrillMarkedScreen.class).next();
        assertThat(run.at(DrillScreen.class).drill().skill()).isEqualTo(Skill.WRITE_AT_ONCE);
    }

    @Test
    void a_drill_that_comes_for_a_reason_of_its_own_says_it_with_the_marks() {
        mira();
        Practice practice = run.at(HomeScreen.class).practice();
        Choice weak = new Choice(Skill.COUNT_A_DIGIT, Level.FULL, "9", Choice.Why.WEAK_SPOT, new Tally(6, 11));
        Choice next = new Choice(Skill.COUNT_A_DIGIT, Level.FULL, "", Choice.Why.NEXT_ON_THE_PATH);
        DrillCourse course = new DrillCourse(run.trainer, practice, Optional.empty());
        run.trainer.drill(course, weak);
        run.at(DrillScreen.class).answer();
        assertThat(run.at(DrillMarkedScreen.class).reason())
                .isEqualTo("Chosen because 9s at full level are your weak spot: 6 of the last 11 were right.");
        run.trainer.drill(course, next);
        run.at(DrillScreen.class).answer();
        assertThat(run.at(DrillMarkedScreen.class).reason()).isEmpty();
    }

    @Test
    void the_example_shows_what_the_skill_is_about() {
        assertThat(exampleOf(Skill.MISSED_FLASH)).contains(Timeline.Look.MISSED);
        assertThat(exampleOf(Skill.GHOST_FLASH)).contains(Timeline.Look.GHOST);
        mira().open(Skill.SEPARATOR);
        run.at(SkillScreen.class).begin();
        assertThat(run.at(AdviceScreen.class).example().pieces())
                .extracting(Timeline.Piece::name)
                .contains("the separator");
        assertThat(run.at(AdviceScreen.class).answer().orElseThrow()).startsWith("The answer here: After group");
    }

    @Test
    void how_codes_are_numbered_is_told_where_their_meaning_is_learnt_and_where_it_was_not_known() {
        mira().open(Skill.CODE_MEANING);
        run.at(SkillScreen.class).begin();
        assertThat(run.at(AdviceScreen.class).notes().orElseThrow()).contains("The numbering is our own");
        run.at(AdviceScreen.class).start();
        run.at(DrillScreen.class).answer();
        assertThat(run.at(DrillMarkedScreen.class).rules()).hasSize(2);
    }

    private List<Timeline.Look> exampleOf(Skill skill) {
        PracticeRun other = PracticeRun.usual();
        other.at(NoticeScreen.class).goOn();
        other.at(LearnersScreen.class).goOnAsGuest();
        other.at(HomeScreen.class).open(skill);
        other.at(SkillScreen.class).begin();
        return other.at(AdviceScreen.class).example().pieces().stream()
                .flatMap(piece -> piece.bars().stream())
                .map(Timeline.Bar::look)
                .distinct()
                .toList();
    }

    @Test
    void an_answer_is_in_the_file_before_its_marks_are_shown() throws LogbookException {
        mira().begin();
        run.at(AdviceScreen.class).start();
        DrillScreen drill = run.at(DrillScreen.class);
        run.pass(2);
        assertThat(kept()).isEmpty();
        int[] keptWhenShown = {-1};
        run.trainer.screenProperty().addListener((property, before, after) -> {
            if (after instanceof DrillMarkedScreen) {
                keptWhenShown[0] = keptNow();
            }
        });
        drill.answer();

        assertThat(keptWhenShown[0]).isEqualTo(1);
        DrillEntry entry = kept().get(0);
        assertThat(entry.skill()).isEqualTo(Skill.WRITE_AT_ONCE);
        assertThat(entry.circumstances().program()).isEqualTo("0.1.0");
        assertThat(entry.timing().answerNanos()).isBetween(1_900_000_000L, 2_500_000_000L);
        assertThat(entry.timing().lampNanos()).isEqualTo(drill.drill().lampNanos());
        assertThat(entry.credits()).isNotEmpty();
    }

    private int keptNow() {
        try {
            return kept().size();
        } catch (LogbookException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void the_way_leads_from_drill_to_drill_and_home() throws LogbookException {
        mira().begin();
        run.at(AdviceScreen.class).start();
        run.at(DrillScreen.class).answer();
        run.at(DrillMarkedScreen.class).next();
        run.at(DrillScreen.class).answer();
        run.at(DrillMarkedScreen.class).done();

        assertThat(run.at(HomeScreen.class).path().get(0).stage()).isNotEqualTo(Stage.NEW);
        assertThat(kept()).hasSize(2);
    }

    @Test
    void the_same_drill_once_more_is_kept_and_not_scored() throws LogbookException {
        mira().begin();
        run.at(AdviceScreen.class).start();
        run.at(DrillScreen.class).answer();
        run.at(DrillMarkedScreen.class).again();
        run.at(DrillScreen.class).answer();

        assertThat(kept()).extracting(DrillEntry::scored).containsExactly(true, false);
        assertThat(kept().get(1).credits()).isEmpty();
    }

    @Test
    void any_skill_can_be_practised_at_any_level_about_any_item() throws LogbookException {
        mira().open(Skill.COUNT_A_DIGIT);
        SkillScreen skill = run.at(SkillScreen.class);
        assertThat(skill.beliefs()).containsExactly("No answers yet, so there is nothing to say about it.");
        assertThat(skill.items()).contains("9");
        skill.levelProperty().set(10);
        assertThat(skill.levelTold()).isEqualTo("full level, as on the vehicle");
        skill.itemProperty().set("9");
        skill.begin();
        run.at(AdviceScreen.class).start();
        for (int i = 0; i < 2; i++) {
            DrillScreen drill = run.at(DrillScreen.class);
            assertThat(drill.drill().item()).isEqualTo("9");
            assertThat(drill.drill().level().full()).isTrue();
            drill.answer();
            run.at(DrillMarkedScreen.class).next();
        }
        run.trainer.screen().back();

        assertThat(run.at(HomeScreen.class).cameFrom(Skill.COUNT_A_DIGIT)).isTrue();
        assertThat(kept()).hasSize(2);
    }

    @Test
    void an_answer_that_cannot_be_written_is_told_beside_its_marks_and_counts_in_this_sitting() throws Exception {
        mira().begin();
        run.at(AdviceScreen.class).start();
        deleteMiraElsewhere();
        run.at(DrillScreen.class).answer();

        assertThat(run.at(DrillMarkedScreen.class).remarks())
                .anyMatch(remark -> remark.contains("could not be written down") && remark.contains("deleted"));
        run.at(DrillMarkedScreen.class).done();
        assertThat(run.at(HomeScreen.class).path().get(0).stage()).isNotEqualTo(Stage.NEW);
    }

    private void deleteMiraElsewhere() throws LogbookException, IOException {
        assertThat(Files.exists(Logbook.fileIn(run.records.folder()))).isTrue();
        try (Logbook other = Logbook.open(run.records.folder())) {
            other.forget(other.find("Mira").orElseThrow());
        }
    }

    @Test
    void a_lesson_is_kept_too() throws LogbookException {
        mira().lessons();
        run.at(LessonsScreen.class).open(0);
        run.at(BriefingScreen.class).start();
        run.pass(1);
        run.at(PlayScreen.class).mark();
        assertThat(run.trainer.screen()).isInstanceOf(MarkingScreen.class);

        try (Logbook logbook = Logbook.open(run.records.folder())) {
            LessonEntry lesson =
                    logbook.lessons(logbook.find("Mira").orElseThrow()).get(0);
            assertThat(lesson.codesSent()).isEqualTo(3);
            assertThat(lesson.codesRight()).isZero();
            assertThat(lesson.sentText()).isEqualTo("present:34 present:42 stored:15");
            assertThat(lesson.lines().get(0).errors()).isEqualTo("lost-code");
        }
    }

    @Test
    void whoever_has_practised_sees_where_they_stand() throws LogbookException {
        HomeScreen home = practisedMira();

        assertThat(home.title()).isEqualTo("Mira Öberg");
        assertThat(home.path()).anyMatch(step -> step.stage() != Stage.NEW);
        assertThat(home.notes()).anyMatch(note -> note.contains("days in a row"));
    }

    @Test
    void progress_has_charts_a_table_of_digits_and_what_the_tutor_believes() throws LogbookException {
        practisedMira().progress();
        ProgressScreen progress = run.at(ProgressScreen.class);

        assertThat(progress.charts()).hasSize(3);
        Chart accuracy = progress.charts().get(0);
        assertThat(accuracy.points()).hasSize(13);
        assertThat(accuracy.points().get(0).across()).isZero();
        assertThat(accuracy.points().get(12).across()).isEqualTo(1);
        assertThat(accuracy.spoken()).contains("of 12 right");
        assertThat(progress.charts())
                .allSatisfy(chart -> assertThat(chart.points())
                        .allMatch(point -> point.up() >= 0
                                && point.up() <= 1
                                && !point.value().isBlank()));
        assertThat(progress.confusions()).isNotEmpty();
        assertThat(progress.beliefs()).isNotEmpty();
        assertThat(progress.summary().get(0)).isEqualTo("156 drills and one lesson answered on 13 days.");
        progress.back();
        assertThat(run.trainer.screen()).isInstanceOf(HomeScreen.class);
    }

    @Test
    void progress_before_the_first_answer_says_so() {
        mira().progress();
        ProgressScreen progress = run.at(ProgressScreen.class);

        assertThat(progress.charts()).isEmpty();
        assertThat(progress.confusions()).isEmpty();
        assertThat(progress.summary()).containsExactly("No drills and no lessons answered.");
    }

    @Test
    void a_day_off_ends_the_row_without_a_word() throws LogbookException {
        practisedMira();
        run.records.pass(Duration.ofDays(3));
        run.trainer.screen().back();
        LearnersScreen learners = run.at(LearnersScreen.class);
        learners.choose(learners.state().learners().get(1));

        assertThat(run.at(HomeScreen.class).notes()).noneMatch(note -> note.contains("in a row"));
    }
}
