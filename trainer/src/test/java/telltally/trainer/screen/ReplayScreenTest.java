package telltally.trainer.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Segment;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.lesson.LessonShelf;

/** The first sample lesson sends 34 and 42 as present and 15 as stored. */
class ReplayScreenTest {
    private final PracticeRun run = PracticeRun.usual();

    private MarkingScreen marking() {
        run.playing(Display.LAMP).mark();
        return run.at(MarkingScreen.class);
    }

    @Test
    void one_code_is_counted_flash_by_flash_and_digit_by_digit() {
        MarkingScreen marking = marking();
        marking.replay(marking.lines(Segment.PRESENT).get(1));
        ReplayScreen replay = run.at(ReplayScreen.class);

        List<String> seen = new ArrayList<>();
        while (!replay.player().ended()) {
            run.pass(0.02);
            String now =
                    replay.countProperty().get() + "/" + replay.digitsProperty().get();
            if (seen.isEmpty() || !seen.get(seen.size() - 1).equals(now)) {
                seen.add(now);
            }
        }
        assertThat(seen).containsExactly("/", "1/", "2/", "3/", "4/", "4/4", "1/4", "2/4", "2/42");
        assertThat(replay.captionProperty().get()).isEqualTo("A present code.");
    }

    @Test
    void all_of_it_tells_codes_repeats_and_the_separator_apart() {
        marking().replayAll();
        ReplayScreen replay = run.at(ReplayScreen.class);

        Set<String> told = new LinkedHashSet<>();
        while (!replay.player().ended()) {
            run.pass(0.25);
            told.add(replay.captionProperty().get());
        }
        assertThat(told)
                .containsExactly(
                        "Wait for the first flash.",
                        "A present code.",
                        "A present code, sent again to check the first count.",
                        "No code: the separator, the single flash between present and stored codes.",
                        "A stored code.",
                        "A stored code, sent again to check the first count.");
    }

    @Test
    void a_steady_light_counts_for_nothing() {
        Scenario story = LessonShelf.of(Optional.empty()).find("nothing-found").orElseThrow();
        PracticeRun told = PracticeRun.of(story);
        told.playing(Display.LAMP).mark();
        told.at(MarkingScreen.class).replayAll();
        ReplayScreen replay = told.at(ReplayScreen.class);
        while (!replay.player().ended() && !replay.captionProperty().get().startsWith("A steady light")) {
            told.pass(0.1);
        }

        assertThat(replay.captionProperty().get()).isEqualTo("A steady light, which is no flash.");
        assertThat(replay.countProperty().get()).isEmpty();
    }

    @Test
    void it_can_be_seen_again_and_again() {
        MarkingScreen marking = marking();
        marking.replay(marking.lines(Segment.STORED).get(0));
        ReplayScreen replay = run.at(ReplayScreen.class);
        run.pass(30);
        assertThat(replay.digitsProperty().get()).isEqualTo("15");
        replay.again();
        run.pass(0.5);

        assertThat(replay.countProperty().get()).isEmpty();
        assertThat(replay.player().ended()).isFalse();
    }

    @Test
    void a_code_that_was_never_sent_cannot_be_replayed() {
        PlayScreen play = run.playing(Display.LAMP);
        play.sheet().type("1");
        play.mark();
        MarkingScreen marking = run.at(MarkingScreen.class);
        marking.lines(Segment.PRESENT).stream()
                .filter(line -> line.sent().isEmpty())
                .forEach(marking::replay);

        assertThat(run.trainer.screen()).isSameAs(marking);
    }
}
