package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.Interval;

/** What lies just inside and just outside of what can be said and sent. */
class FormatBoundsTest {
    private static final FlashFormat EVEN = TestFormats.shipped("pair-even");
    private static final Pacing PACING = new Pacing(1_000_000_000L, 1_000_000_000L, 2);

    private static String spelled(String flashes, String gaps) {
        return "{\"schema\":\"telltally/format/1\",\"id\":\"spelled\",\"title\":\"Spelled\",\"flashes_s\":{\".\":0.1},"
                + "\"code\":{\"signs\":{\"A\":\"" + flashes + "\"},\"most_signs\":2},\"gaps\":{" + gaps
                + "\"between_digits_s\":1.0,\"between_codes_s\":3.0},\"list\":{}}";
    }

    private static List<String> problems(String json) {
        try {
            FormatReader.read(new TextFile("test.json", json));
            return List.of();
        } catch (ProblemException e) {
            return e.problems().stream().map(Object::toString).toList();
        }
    }

    @Test
    void an_engine_has_two_cylinders_at_least_and_a_balance_result_one_to_nine_flashes() {
        assertThat(new Message.Running(2, false, List.of()).refusal(EVEN)).isEmpty();
        assertThat(new Message.Balance(1).refusal(EVEN)).isEmpty();
        assertThat(new Message.Balance(9).refusal(EVEN)).isEmpty();
        assertThat(new Message.Balance(10).refusal(EVEN)).isNotEmpty();
    }

    @Test
    void a_flash_and_the_waits_around_a_recording_have_a_length() {
        assertThatThrownBy(() -> new FlashKind("flash", 0)).hasMessage("a flash needs a length: 0 ns");
        assertThat(new FlashKind("flash", 1).onNanos()).isEqualTo(1);
        assertThatThrownBy(() -> new Pacing(0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Pacing(1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Pacing(1, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new Pacing(1, 1, 1).loops()).isEqualTo(1);
    }

    @Test
    void a_gap_within_a_digit_may_be_left_out_only_where_no_digit_has_two_flashes() {
        assertThat(problems(spelled(".", ""))).isEmpty();
        assertThat(problems(spelled("..", "\"within_digit_s\":0.1,"))).isEmpty();
        assertThat(problems(spelled("..", ""))).singleElement().asString().contains("/gaps/within_digit_s: is missing");
    }

    @Test
    void a_sign_has_forty_flashes_at_most() {
        assertThat(problems(spelled(".".repeat(40), "\"within_digit_s\":0.1,"))).isEmpty();
        assertThat(problems(spelled(".".repeat(41), "\"within_digit_s\":0.1,")))
                .singleElement()
                .asString()
                .contains("has 41 flashes; expected at most 40");
    }

    @Test
    void a_count_is_written_as_its_digit_and_no_other_count_is() {
        CodeShape.Place place = ((CodeShape.Counted) EVEN.shape()).places().get(0);
        assertThat(place.digit(1)).contains("1");
        assertThat(place.digit(9)).contains("9");
        assertThat(place.digit(10)).isEmpty();
    }

    @Test
    void every_kind_of_flash_is_told_once() {
        assertThat(EVEN.flashKinds()).extracting(FlashKind::name).containsExactly("flash");
        assertThat(TestFormats.shipped("long-short").flashKinds())
                .extracting(FlashKind::name)
                .containsExactly("long", "short");
        assertThat(TestFormats.read("telegraphy-20").flashKinds())
                .extracting(FlashKind::name)
                .containsExactlyInAnyOrder(".", "-");
    }

    @Test
    void even_blinking_lasts_eight_blinks_for_each_loop() {
        Transmission sent = new Encoder(TestFormats.shipped("pair-loop")).encode(new Message.Codes(List.of()), PACING);
        assertThat(sent.lamp().edgeCount()).isEqualTo(2 * 8 * 2);
    }

    @Test
    void after_a_frame_the_list_begins_as_any_code_does_and_only_its_repeat_waits_longer() {
        FlashFormat framed = TestFormats.parse(
                "{\"schema\":\"telltally/format/1\",\"id\":\"framed\",\"title\":\"Framed\",\"flashes_s\":{\"f\":0.1},"
                        + "\"code\":{\"places\":[{\"flash\":\"f\",\"from\":1,\"to\":9}]},"
                        + "\"gaps\":{\"within_digit_s\":0.1,\"between_codes_s\":1.0,\"before_repeat_s\":2.0},"
                        + "\"list\":{\"list_times\":2},\"framing_code\":\"2\"}");
        List<SentGroup> groups = new Encoder(framed)
                .encode(new Message.Codes(List.of("1")), PACING)
                .groups();
        assertThat(groups).extracting(SentGroup::digits).containsExactly("2", "1", "1", "2");
        assertThat(groups.get(1).startNanos() - groups.get(0).endNanos()).isEqualTo(1_000_000_000L);
        assertThat(groups.get(2).startNanos() - groups.get(1).endNanos()).isEqualTo(2_000_000_000L);
    }

    @Test
    void a_list_within_a_longer_test_is_sent_as_the_format_says() {
        Transmission sent = new Encoder(EVEN).encodeList(Segment.STORED, List.of("12"), PACING);
        assertThat(sent.codes()).containsOnlyKeys(Segment.STORED).containsValue(List.of("12"));
        assertThat(sent.groups()).extracting(SentGroup::digits).containsExactly("12", "12");
        assertThatThrownBy(() -> new Encoder(EVEN).encodeList(Segment.STORED, List.of("1"), PACING))
                .hasMessage("1: has 1 digit; this format sends 2");
    }

    @Test
    void a_lone_count_is_a_group_after_the_wait() {
        Transmission sent = new Encoder(EVEN).encodeCount(GroupKind.CYLINDERS, Segment.RUNNING, 3, PACING);
        assertThat(sent.lamp().edgeNanos(0)).isEqualTo(1_000_000_000L);
        SentGroup cylinders = sent.groups().get(0);
        assertThat(cylinders.digits()).isEqualTo("3");
        assertThat(cylinders.later(7).signs().get(0).flashes().get(0))
                .isEqualTo(new Interval(true, 1_000_000_007L, 1_500_000_007L));
    }
}
