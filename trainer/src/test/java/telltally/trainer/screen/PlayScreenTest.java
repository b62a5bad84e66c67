package telltally.trainer.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Message;
import telltally.simulator.recording.Recording;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.SampleLessons;
import telltally.trainer.playback.Sound;

class PlayScreenTest {
    private static final double LONGER_THAN_ANY_SAMPLE_S = 300;

    private final PracticeRun run = PracticeRun.usual();

    @Test
    void the_lamp_follows_the_train_from_the_first_frame_on() {
        PlayScreen play = run.playing(Display.LAMP);
        run.pass(0.1);
        assertThat(play.player().levelProperty().get()).isZero();
        assertThat(play.captionProperty().get()).contains("may take a few seconds");

        // No lead is longer than five seconds, and a flash of half a second is seen at least at every fourth tenth.
        double brightest = 0;
        for (int i = 0; i < 60; i++) {
            run.pass(0.1);
            brightest = Math.max(brightest, play.player().levelProperty().get());
        }
        assertThat(brightest)
                .as("a bulb comes near its full light within half a second")
                .isBetween(0.9, 1.0);
    }

    @Test
    void a_run_to_the_end_is_scored_and_says_that_all_was_sent() {
        PlayScreen play = run.playing(Display.LAMP);
        run.pass(LONGER_THAN_ANY_SAMPLE_S);

        assertThat(play.player().ended()).isTrue();
        assertThat(play.captionProperty().get()).startsWith("Everything has been sent");
        play.mark();
        assertThat(run.at(MarkingScreen.class).notScored()).isEmpty();
    }

    @Test
    void a_run_that_lagged_is_marked_and_not_scored() {
        PlayScreen play = run.playing(Display.LAMP);
        run.pass(1);
        run.stall(30);
        play.mark();

        assertThat(run.at(MarkingScreen.class).notScored().orElseThrow()).endsWith("This run is not scored.");
    }

    @Test
    void playing_again_begins_from_the_start_with_a_clean_slate_for_the_clock_and_the_same_sheet() {
        PlayScreen play = run.playing(Display.LAMP);
        run.pass(1);
        run.stall(30);
        play.sheet().type("3");
        play.playAgain();
        run.pass(20);

        assertThat(play.player().playback().positionNanos()).isBetween(19_000_000_000L, 21_000_000_000L);
        play.mark();
        assertThat(run.at(MarkingScreen.class).notScored()).isEmpty();
        assertThat(play.sheet().columns().get(0).typingProperty().get()).isEqualTo("3");
    }

    @Test
    void a_train_that_is_too_fast_to_be_seen_flashing_stays_dim() {
        PulseTrain.Builder fast = PulseTrain.builder().dark(1_000_000_000L);
        for (int i = 0; i < 50; i++) {
            fast.lit(100_000_000L).dark(100_000_000L);
        }
        PulseTrain train = fast.build();
        Player player = new Player(run.trainer, train, 0, train.endNanos(), Display.LAMP);
        for (long nanos = 0; nanos < 9_000_000_000L; nanos += PracticeRun.FRAME_NANOS) {
            player.advanceTo(nanos);
            assertThat(player.levelProperty().get()).isEqualTo(Player.DIM);
        }
        assertThat(player.remark()).contains("too fast").contains("sounder");
    }

    @Test
    void by_ear_nothing_is_seen_and_the_sound_follows_the_same_clock() {
        PlayScreen play = run.playing(Display.SOUNDER);
        assertThat(play.player().shownBy()).isEqualTo(Display.SOUNDER);
        run.pass(10);

        assertThat(play.player().levelProperty().get()).isZero();
        assertThat(run.sound.calls).containsExactly("play");
        assertThat(run.sound.positionNanos.getAsLong())
                .isEqualTo(play.player().playback().positionNanos());
        play.mark();
        assertThat(run.sound.calls).containsExactly("play", "stop");
    }

    @Test
    void a_missing_sound_device_is_told_in_one_line_and_the_lamp_goes_on() {
        run.sound.trouble = Optional.of(Sound.Trouble.NO_DEVICE);
        PlayScreen play = run.playing(Display.LAMP_AND_SOUNDER);
        run.pass(8);

        assertThat(play.remarkProperty().get())
                .isEqualTo("No sound: this computer has no sound device that can be used. The lamp goes on alone.");
        assertThat(play.player().playback().shown()).isNotEmpty();
    }

    @Test
    void by_ear_a_run_without_a_sound_is_told_and_not_scored() {
        run.sound.trouble = Optional.of(Sound.Trouble.NO_DEVICE);
        PlayScreen play = run.playing(Display.SOUNDER);
        run.pass(1);
        assertThat(play.remarkProperty().get()).endsWith("Go back, and choose a lamp or another step.");
        play.mark();

        assertThat(run.at(MarkingScreen.class).notScored().orElseThrow()).startsWith("Nothing could be heard");
    }

    @Test
    void by_ear_a_stumbling_sound_spoils_the_run() {
        PlayScreen play = run.playing(Display.SOUNDER);
        run.sound.worstOffNanos = 51_000_000L;
        run.pass(1);
        play.mark();

        assertThat(run.at(MarkingScreen.class).notScored().orElseThrow())
                .startsWith("The sound stumbled: a tone was 51 ms");
    }

    @Test
    void a_closed_list_of_nothing_can_be_right() {
        Lesson blinking = SampleLessons.in("pair-loop", new Message.Codes(List.of()));
        PracticeRun nothing = PracticeRun.of(blinking.scenario());
        nothing.playing(Display.LAMP).mark();

        MarkingScreen marking = nothing.at(MarkingScreen.class);
        assertThat(marking.headline()).isEqualTo("Nothing was sent, and nothing is written: right.");
        Recording recording = blinking.recording();
        assertThat(recording.truth().codes()).hasSize(1);
    }
}
