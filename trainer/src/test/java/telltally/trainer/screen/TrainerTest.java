package telltally.trainer.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.SampleLessons;
import telltally.trainer.screen.MarkingScreen.Line;

class TrainerTest {
    private final PracticeRun run = PracticeRun.usual();

    private static void write(PlayScreen play, String keys) {
        for (int i = 0; i < keys.length(); i++) {
            if (keys.charAt(i) == ' ') {
                play.sheet().finish();
            } else {
                play.sheet().type(keys.substring(i, i + 1));
            }
        }
    }

    @Test
    void nothing_flashes_before_the_notice_was_read() {
        assertThat(run.trainer.screen()).isInstanceOf(NoticeScreen.class);
        assertThat(run.at(NoticeScreen.class).paragraphs().get(0)).contains("photosensitive epilepsy");
        assertThat(run.at(NoticeScreen.class).choices())
                .extracting("display")
                .containsExactly(Display.LAMP, Display.SOUNDER, Display.LAMP_AND_SOUNDER, Display.METER);
    }

    @Test
    void the_way_leads_from_the_notice_to_the_replay_and_back() {
        PlayScreen play = run.playing(Display.LAMP);
        run.pass(1);
        write(play, "35 42 ");
        play.sheet().next();
        write(play, "15");
        play.mark();

        MarkingScreen marking = run.at(MarkingScreen.class);
        assertThat(marking.headline()).isEqualTo("2 of 3 codes right, one error.");
        assertThat(marking.segments()).containsExactly(Segment.PRESENT, Segment.STORED);
        Line wrong = marking.lines(Segment.PRESENT).get(0);
        assertThat(wrong.errors()).containsExactly("Miscounted digit");
        assertThat(wrong.meaning()).isEqualTo("Throttle sensor: voltage too high");
        assertThat(marking.spoken(wrong)).startsWith("Sent 34, written 35. 34: the second digit was 4 flashes");

        marking.replay(wrong);
        assertThat(run.at(ReplayScreen.class).title()).isEqualTo("Code 34 again");
        run.trainer.screen().back();
        assertThat(run.trainer.screen()).isSameAs(marking);
        run.trainer.screen().back();
        assertThat(run.at(LessonsScreen.class).selected()).isZero();
        run.trainer.screen().back();
        assertThat(run.trainer.screen()).isInstanceOf(HomeScreen.class);
        run.trainer.screen().back();
        assertThat(run.trainer.screen()).isInstanceOf(LearnersScreen.class);
        run.trainer.screen().back();
        assertThat(run.trainer.screen()).isInstanceOf(NoticeScreen.class);
    }

    @Test
    void a_broken_file_is_listed_and_does_not_open() {
        run.at(NoticeScreen.class).goOn();
        LessonsScreen lessons = run.lessons();

        assertThat(lessons.items()).extracting(LessonsScreen.Item::playable).containsExactly(true, true, false);
        assertThat(lessons.items().get(2).trains()).contains("no format is called");
        lessons.open(2);
        assertThat(run.trainer.screen()).isSameAs(lessons);
    }

    @Test
    void a_start_lesson_comes_right_after_the_notice() {
        PracticeRun started = new PracticeRun(SampleLessons.shelf(), Optional.of("status-lamp"));
        started.at(NoticeScreen.class).goOn();

        assertThat(started.at(BriefingScreen.class).title()).isEqualTo("A status lamp that counts");
        started.trainer.screen().back();
        assertThat(started.at(LessonsScreen.class).selected()).isEqualTo(1);
    }

    @Test
    void a_start_lesson_that_is_not_there_is_told_above_the_list() {
        PracticeRun started = new PracticeRun(SampleLessons.shelf(), Optional.of("nowhere"));
        started.at(NoticeScreen.class).goOn();

        assertThat(started.at(LessonsScreen.class).message().orElseThrow()).contains("nowhere");
    }

    @Test
    void a_lesson_may_ask_for_the_sounder_but_never_for_a_lamp_that_was_turned_down() {
        Scenario byEar = shownBy(Display.SOUNDER);
        PracticeRun lampAgreed = PracticeRun.of(byEar);
        lampAgreed.at(NoticeScreen.class).goOn();
        lampAgreed.lessons().open(0);
        assertThat(lampAgreed.at(BriefingScreen.class).shownByProperty().get()).isEqualTo(Display.SOUNDER);

        PracticeRun lampRefused = PracticeRun.of(shownBy(Display.LAMP));
        lampRefused.at(NoticeScreen.class).choiceProperty().set(Display.SOUNDER);
        lampRefused.at(NoticeScreen.class).goOn();
        lampRefused.lessons().open(0);
        assertThat(lampRefused.at(BriefingScreen.class).shownByProperty().get()).isEqualTo(Display.SOUNDER);
    }

    @Test
    void a_lesson_for_another_display_is_shown_on_it_where_a_lamp_was_agreed_to() {
        for (Display display : List.of(Display.TEST_LIGHT, Display.METER, Display.LED)) {
            PracticeRun asked = PracticeRun.of(shownBy(display));
            asked.at(NoticeScreen.class).goOn();
            asked.lessons().open(0);

            BriefingScreen briefing = asked.at(BriefingScreen.class);
            assertThat(briefing.shownByProperty().get()).isEqualTo(display);
            briefing.start();
            assertThat(asked.at(PlayScreen.class).player().shownBy()).isEqualTo(display);
            assertThat(asked.soundsOpened()).isZero();
        }
    }

    @Test
    void where_the_story_has_no_lamp_that_works_only_what_is_joined_to_the_output_is_offered() {
        for (Display display : List.of(Display.TEST_LIGHT, Display.METER, Display.SOUNDER)) {
            for (Display agreed : List.of(Display.LAMP, Display.LAMP_AND_SOUNDER)) {
                PracticeRun asked = PracticeRun.of(shownBy(display));
                asked.at(NoticeScreen.class).choiceProperty().set(agreed);
                asked.at(NoticeScreen.class).goOn();
                asked.lessons().open(0);

                BriefingScreen briefing = asked.at(BriefingScreen.class);
                assertThat(briefing.shownByProperty().get()).isEqualTo(display);
                assertThat(briefing.choices())
                        .extracting("display")
                        .containsExactly(Display.SOUNDER, Display.TEST_LIGHT, Display.METER);
            }
        }
        PracticeRun lamp = PracticeRun.of(shownBy(Display.LED));
        lamp.at(NoticeScreen.class).choiceProperty().set(Display.LAMP_AND_SOUNDER);
        lamp.at(NoticeScreen.class).goOn();
        lamp.lessons().open(0);
        assertThat(lamp.at(BriefingScreen.class).shownByProperty().get()).isEqualTo(Display.LAMP_AND_SOUNDER);
        assertThat(lamp.at(BriefingScreen.class).choices())
                .extracting("display")
                .containsExactly((Object[]) Display.values());
    }

    @Test
    void a_light_that_was_chosen_in_the_settings_is_still_the_choice_at_the_next_start() {
        for (Display light : List.of(Display.LED, Display.TEST_LIGHT)) {
            NoticeScreen notice = new NoticeScreen(run.trainer, light);
            assertThat(notice.choiceProperty().get()).isEqualTo(light);
            assertThat(notice.choices()).extracting("display").contains(light).doesNotContain(Display.LAMP);
            notice.goOn();
            assertThat(run.trainer.agreed()).isEqualTo(light);
        }
    }

    @Test
    void a_needle_that_was_agreed_to_is_never_turned_into_something_that_flashes() {
        PracticeRun needle = PracticeRun.of(shownBy(Display.TEST_LIGHT));
        needle.at(NoticeScreen.class).choiceProperty().set(Display.METER);
        needle.at(NoticeScreen.class).goOn();
        needle.lessons().open(0);

        assertThat(needle.at(BriefingScreen.class).shownByProperty().get()).isEqualTo(Display.METER);
    }

    @Test
    void lessons_are_told_in_the_language_that_is_chosen_as_soon_as_it_is() {
        PracticeRun shipped = new PracticeRun(LessonShelf.of(Optional.empty()), Optional.empty());
        shipped.at(NoticeScreen.class).goOn();
        LessonsScreen lessons = shipped.lessons();
        assertThat(lessons.items().get(0).title()).isEqualTo("A cold morning: one count");
        shipped.trainer.change(shipped.trainer.settings().withLanguage(Optional.of(Locale.GERMAN)));

        assertThat(lessons.items().get(0).title()).isEqualTo("Ein kalter Morgen: eine Zahl");
        lessons.open(9);
        assertThat(shipped.at(BriefingScreen.class).task()).startsWith("Schreib die aktuellen");
        shipped.at(BriefingScreen.class).back();
        assertThat(shipped.at(LessonsScreen.class).selected()).isEqualTo(9);
    }

    @Test
    void the_sound_line_is_opened_at_the_briefing_and_only_where_something_is_to_be_heard() {
        run.playing(Display.LAMP);
        assertThat(run.soundsOpened()).isZero();

        PracticeRun heard = PracticeRun.usual();
        heard.at(NoticeScreen.class).choiceProperty().set(Display.LAMP_AND_SOUNDER);
        heard.at(NoticeScreen.class).goOn();
        heard.lessons().open(0);
        assertThat(heard.soundsOpened()).isEqualTo(1);
        heard.trainer.close();
        assertThat(heard.sound.calls).endsWith("close");
    }

    @Test
    void every_briefing_of_a_procedure_shows_the_cautions() {
        run.at(NoticeScreen.class).goOn();
        run.lessons().open(0);
        assertThat(run.at(BriefingScreen.class).cautions())
                .anyMatch(text -> text.contains("airbag"))
                .anyMatch(text -> text.contains("licensed technician"));

        Scenario running = SampleLessons.in("pair-even", new Message.Running(8, false, List.of("21")))
                .scenario();
        PracticeRun engine = PracticeRun.of(running);
        engine.at(NoticeScreen.class).goOn();
        engine.lessons().open(0);
        assertThat(engine.at(BriefingScreen.class).cautions()).anyMatch(text -> text.contains("carbon monoxide"));
    }

    @Test
    void playing_a_lesson_anew_waits_another_time_for_the_first_flash() {
        PlayScreen first = run.playing(Display.LAMP);
        first.mark();
        run.at(MarkingScreen.class).playAgain();
        PlayScreen second = run.at(PlayScreen.class);

        assertThat(second.sheet().answers().segments()).isEmpty();
        assertThat(second).isNotSameAs(first);
    }

    private static Scenario shownBy(Display display) {
        Scenario sample = SampleLessons.keyOn(List.of("34"), List.of()).scenario();
        return new Scenario(
                sample.id(),
                sample.title(),
                sample.briefing(),
                sample.task(),
                sample.format(),
                sample.codeList(),
                sample.content(),
                display,
                sample.loops());
    }
}
