package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.BenchEvent.Kind;

/** What counts as an answer to the prompt, and until when. Common practice, no source; the limits are ours. */
class PromptAnswerTest {
    private static final String NOT_MOVED = "34";

    /** With its first instant at which the prompt can have been seen. */
    private static final double PROMPTED = running(Workshop.sound()).until(60).secondsOf(Kind.PROMPT);

    private static Workshop running(Workshop workshop) {
        return workshop.prompting().jumperIn(1).crank(2);
    }

    private static List<String> codes(Workshop workshop) {
        return workshop.until(180).bench().codes().get(Segment.RUNNING);
    }

    @Test
    void the_instant_at_which_the_pedal_goes_down_is_noted_once() {
        Workshop workshop = running(Workshop.sound()).press(61, 0.3).press(63, 0.3);
        assertThat(codes(workshop)).containsExactly("11");
        assertThat(workshop.events(Kind.PROMPT_ANSWERED))
                .extracting(BenchEvent::atNanos)
                .containsExactly(Workshop.nanos(61));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 15})
    void it_counts_from_the_prompt_until_fifteen_seconds_after(double seconds) {
        assertThat(codes(running(Workshop.sound()).press(PROMPTED + seconds, 0.3)))
                .containsExactly("11");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 15.01})
    void before_and_after_it_does_not(double seconds) {
        assertThat(codes(running(Workshop.sound()).press(PROMPTED + seconds, 0.3)))
                .containsExactly(NOT_MOVED);
    }

    @Test
    void a_touch_is_no_answer() {
        Workshop workshop = running(Workshop.sound()).press(61, 0.1);
        assertThat(codes(workshop)).containsExactly(NOT_MOVED);
        assertThat(workshop.events(Kind.PROMPT_ANSWERED)).isEmpty();
    }

    @Test
    void a_pedal_that_is_held_already_has_to_go_further_by_as_much() {
        assertThat(codes(running(Workshop.sound())
                        .throttle(40, 0.1)
                        .throttle(61, 0.2)
                        .throttle(63, 0)))
                .contains(NOT_MOVED);
        assertThat(codes(running(Workshop.sound())
                        .throttle(40, 0.1)
                        .throttle(61, 0.3)
                        .throttle(63, 0)))
                .doesNotContain(NOT_MOVED);
    }

    @Test
    void under_a_dead_sensor_a_touch_is_the_operators_omission_and_a_press_is_not() {
        Workshop touched = running(Workshop.sound().fault("throttle", Workshop.OPEN_SIGNAL))
                .press(61, 0.1);
        assertThat(codes(touched)).contains(NOT_MOVED);
        assertThat(touched.bench().codesFromConditions()).containsEntry(Segment.RUNNING, List.of(NOT_MOVED));
        Workshop pressed = running(Workshop.sound().fault("throttle", Workshop.OPEN_SIGNAL))
                .press(61, 0.15);
        assertThat(codes(pressed)).contains(NOT_MOVED);
        assertThat(pressed.bench().codesFromConditions()).isEmpty();
    }
}
