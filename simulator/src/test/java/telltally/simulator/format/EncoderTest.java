package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** What the formats that ship do not show: pacing, and options in other company. */
class EncoderTest {
    private static final Pacing PACING = new Pacing(1_000_000_000L, 2_000_000_000L, 1);

    /** A plain list of codes, sent twice, with a fast list a tenth as long; small enough to spell out. */
    private static final String BURST = """
            {"schema": "telltally/format/1", "id": "test", "title": "A test",
             "flashes_s": {"flash": 0.2},
             "code": {"places": [{"flash": "flash", "from": 1, "to": 5}]},
             "gaps": {"within_digit_s": 0.2, "between_codes_s": 1, "before_repeat_s": 3},
             "list": {"list_times": 2},
             "burst": {"times_faster": 10}}
            """;

    @Test
    void a_recording_waits_before_and_after_as_its_pacing_says() {
        FlashFormat format = TestFormats.shipped("count-loop");

        Transmission sent = new Encoder(format).encode(codes("1"), new Pacing(1_500_000_000L, 700_000_000L, 1));

        assertThat(OnOff.whole(sent.lamp())).isEqualTo(OnOff.spelled("1.5 0.3 0.7"));
    }

    @Test
    void a_repeat_is_preceded_by_its_own_gap() {
        Transmission sent = new Encoder(TestFormats.parse(BURST)).encode(codes("2", "1"), PACING);

        String once = "0.2 0.2 0.2  1.0  0.2";
        assertThat(OnOff.of(sent.lamp())).isEqualTo(OnOff.spelled(once, "3.0", once));
    }

    @Test
    void a_code_sent_twice_has_the_gap_between_codes_before_its_second_time_and_the_list_its_own() {
        String json = BURST.replace("\"list_times\": 2", "\"list_times\": 2, \"each_code_times\": 2");

        Transmission sent = new Encoder(TestFormats.parse(json)).encode(codes("1"), PACING);

        assertThat(OnOff.of(sent.lamp())).isEqualTo(OnOff.spelled("0.2 1.0 0.2  3.0  0.2 1.0 0.2"));
    }

    @Test
    void the_wire_makes_room_for_the_fast_list_before_the_first_flash() {
        Transmission sent = new Encoder(TestFormats.parse(BURST)).encode(codes("1"), PACING);

        assertThat(OnOff.whole(sent.lamp())).isEqualTo(OnOff.spelled("2.34 0.2 3.0 0.2 2.0"));
        assertThat(OnOff.whole(sent.wire())).isEqualTo(OnOff.spelled("1.0  0.02 0.3 0.02  1.0  0.2 3.0 0.2  2.0"));
    }

    @Test
    void the_wire_of_a_format_that_rests_lit_rests_lit_as_well() {
        String json = BURST.replace("\"id\"", "\"rests_lit\": true, \"id\"");
        Transmission dark = new Encoder(TestFormats.parse(BURST)).encode(codes("2", "3"), PACING);
        Transmission lit = new Encoder(TestFormats.parse(json)).encode(codes("2", "3"), PACING);

        assertThat(lit.lamp()).isEqualTo(dark.lamp().inverted());
        assertThat(lit.wire()).isEqualTo(dark.wire().inverted());
        assertThat(lit.groups().get(0).signs().get(0).flashes()).noneMatch(Interval::lit);
    }

    @Test
    void nothing_to_send_has_no_fast_list_either() {
        Transmission sent = new Encoder(TestFormats.parse(BURST)).encode(codes(), PACING);

        assertThat(sent.wire()).isEqualTo(PulseTrain.of(false, 3_000_000_000L));
        assertThat(sent.lamp()).isEqualTo(sent.wire());
    }

    @Test
    void a_format_without_a_fast_list_has_one_train_on_lamp_and_wire() {
        Transmission sent = new Encoder(TestFormats.shipped("quad-lead")).encode(codes("1234"), PACING);

        assertThat(sent.wire()).isEqualTo(sent.lamp());
    }

    private static Message codes(String... codes) {
        return new Message.Codes(List.of(codes));
    }
}
