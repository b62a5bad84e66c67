package telltally.trainer.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import telltally.trainer.logbook.Learner;
import telltally.trainer.logbook.Logbook;
import telltally.trainer.logbook.LogbookException;

class LearnersScreenTest {
    private final PracticeRun run = PracticeRun.usual();

    private LearnersScreen asked() {
        run.at(NoticeScreen.class).goOn();
        return run.at(LearnersScreen.class);
    }

    private LearnersScreen askedAgain() {
        run.at(HomeScreen.class).learners();
        return run.at(LearnersScreen.class);
    }

    private static Learner learner(LearnersScreen screen, String name) {
        return screen.state().learners().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void somebody_new_begins_at_once_and_is_there_next_time() {
        asked().enrol(" Mira ");
        assertThat(run.at(HomeScreen.class).title()).isEqualTo("Mira");

        LearnersScreen again = askedAgain();
        assertThat(again.state().learners()).extracting(Learner::name).containsExactly("Mira");
        again.choose(learner(again, "Mira"));
        assertThat(run.at(HomeScreen.class).title()).isEqualTo("Mira");
    }

    @Test
    void names_stand_in_the_order_of_the_alphabet() {
        asked().enrol("Zoe");
        askedAgain().enrol("Åsa");
        askedAgain().enrol("ben");

        assertThat(askedAgain().state().learners()).extracting(Learner::name).containsExactly("Åsa", "ben", "Zoe");
    }

    @Test
    void a_name_that_cannot_be_had_is_told_and_nobody_begins() {
        asked().enrol("Mira");
        LearnersScreen screen = askedAgain();
        screen.enrol("  ");
        assertThat(screen.state().message()).contains("Please type a name, or go on as a guest.");
        screen.enrol("MIRA");
        assertThat(screen.state().message().orElseThrow()).startsWith("This name is taken");
        screen.enrol("x".repeat(61));
        assertThat(screen.state().message().orElseThrow()).contains("60");
        assertThat(run.trainer.screen()).isSameAs(screen);
    }

    @Test
    void a_learner_is_deleted_after_a_question_and_the_answers_too() throws LogbookException {
        asked().enrol("Mira");
        LearnersScreen screen = askedAgain();
        screen.setDeleting(true);
        screen.choose(learner(screen, "Mira"));
        ForgetScreen question = run.at(ForgetScreen.class);
        assertThat(question.question()).contains("Mira").contains("has not answered anything yet");
        question.back();
        assertThat(run.at(LearnersScreen.class).state().learners()).hasSize(1);

        run.at(LearnersScreen.class).setDeleting(true);
        run.at(LearnersScreen.class).choose(learner(run.at(LearnersScreen.class), "Mira"));
        run.at(ForgetScreen.class).forget();
        assertThat(run.at(LearnersScreen.class).state().learners()).isEmpty();
        try (Logbook logbook = Logbook.open(run.records.folder())) {
            assertThat(logbook.learners()).isEmpty();
        }
    }

    @Test
    void escape_leaves_the_deleting_before_it_leaves_the_screen() {
        asked().enrol("Mira");
        LearnersScreen screen = askedAgain();
        screen.setDeleting(true);
        screen.back();
        assertThat(screen.state().deleting()).isFalse();
        screen.back();
        assertThat(run.trainer.screen()).isInstanceOf(NoticeScreen.class);
    }

    @Test
    void a_guest_leaves_nothing_behind() {
        LearnersScreen screen = asked();
        screen.goOnAsGuest();

        assertThat(run.at(HomeScreen.class).title()).isEqualTo("Practice as a guest");
        assertThat(run.at(HomeScreen.class).notes()).anyMatch(note -> note.contains("nothing is written down"));
        assertThat(askedAgain().state().learners()).isEmpty();
    }

    @Test
    void a_logbook_that_cannot_be_read_is_told_and_a_guest_can_still_practise() throws IOException {
        Files.writeString(Logbook.fileIn(run.records.folder()), "scribble ".repeat(500));
        LearnersScreen screen = asked();

        assertThat(screen.state().message().orElseThrow())
                .contains("is damaged, or is none")
                .contains("logbook.sqlite");
        assertThat(screen.state().waiting()).isFalse();
        screen.goOnAsGuest();
        assertThat(run.trainer.screen()).isInstanceOf(HomeScreen.class);
    }
}
