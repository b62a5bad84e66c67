package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/**
 * Outside check: published rhythms of aids to navigation. IALA E-110 edition 4 (now R0110), tables 2 and 3; group
 * occulting from IHO M-12, June 2004; the two rhythms of nine seconds from the worked examples of the S-57 attribute
 * SIGSEQ. Occulting lights begin with the eclipse.
 *
 * <p>Not expressible, and left so: alternating lights such as OcAl 3s (class 11), because a flash has no colour here,
 * and fixed-and-flashing lights, because there are two levels only.
 */
class LightRhythmTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "light-fl-4s,       1,  4.0,  1 3",
        "light-lfl-10s,     1,  10.0, 2 8",
        "light-iso-4s,      1,  4.0,  2 2",
        "light-q,           1,  1.0,  0.5 0.5",
        "light-vq,          1,  0.5,  0.25 0.25",
        "light-fl2-1-16s,   21, 16.0, 1 1 1 3 1 9",
        "light-mo-a-7s,     A,  7.0,  0.5 0.5 1.5 4.5",
        "light-q3-10s,      3,  10.0, 0.5 0.5 0.5 0.5 0.5 7.5",
        "light-q6-lfl-15s,  61, 15.0, 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 2 7",
        "light-q9-15s,      9,  15.0, 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 6.5",
        "light-vq3-5s,      3,  5.0,  0.25 0.25 0.25 0.25 0.25 3.75",
        "light-vq6-lfl-10s, 61, 10.0, 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 2 5",
        "light-vq9-10s,     9,  10.0, 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 0.25 5.75",
        "light-fl2-9s,      2,  9.0,  0.8 2.2 0.8 5.2",
    })
    void a_flashing_light_keeps_its_published_list_and_period(
            String format, String code, String periodSeconds, String list) {
        assertThat(TestFormats.read(format).restsLit()).isFalse();
        assertRhythm(format, code, periodSeconds, list);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "light-oc-4s,       1,  4.0,  1 3",
        "light-oc2-13s,     2,  13.0, 1 1 1 10",
        "light-oc2-1-12s,   21, 12.0, 1 1 1 4 1 4",
        "light-oc2-9s,      2,  9.0,  0.8 2.2 0.8 5.2",
    })
    void an_occulting_light_keeps_its_published_list_eclipse_first(
            String format, String code, String periodSeconds, String list) {
        assertThat(TestFormats.read(format).restsLit()).isTrue();
        assertRhythm(format, code, periodSeconds, list);
    }

    private static void assertRhythm(String id, String code, String periodSeconds, String list) {
        FlashFormat format = TestFormats.read(id);
        int periods = 3;
        Transmission sent = new Encoder(format)
                .encode(new Message.Codes(List.of(code)), Pacing.usual().withLoops(periods));

        List<String> expected = new ArrayList<>();
        for (int i = 0; i < periods; i++) {
            OnOff.spelled(list).forEach(each -> expected.add(each.contains(".") ? each : each + ".0"));
        }
        // The last gap of the last period has no end that could be seen.
        expected.remove(expected.size() - 1);
        assertThat(OnOff.of(sent.lamp())).isEqualTo(expected);
        assertThat(sent.lamp().litAtStart()).isEqualTo(format.restsLit());
        assertThat(sent.groups()).hasSize(periods);
        for (int i = 1; i < periods; i++) {
            long periodNanos =
                    sent.groups().get(i).startNanos() - sent.groups().get(i - 1).startNanos();
            assertThat(Seconds.text(periodNanos)).isEqualTo(periodSeconds);
        }
    }

    @Test
    void the_flashes_of_an_occulting_light_are_its_dark_times() {
        Transmission sent = new Encoder(TestFormats.read("light-oc-4s"))
                .encode(new Message.Codes(List.of("1")), Pacing.usual().withLoops(1));

        PulseTrain lamp = sent.lamp();
        assertThat(sent.groups().get(0).signs().get(0).flashes())
                .containsExactly(lamp.intervals().get(1));
        assertThat(lamp.litAt(sent.groups().get(0).startNanos())).isFalse();
    }
}
