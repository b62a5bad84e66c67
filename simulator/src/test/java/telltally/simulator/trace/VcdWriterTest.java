package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

class VcdWriterTest {
    private static final PulseTrain LAMP = PulseTrain.of(false, 3_000_000_000L, 1_000_000_000L, 1_500_000_000L);
    private static final PulseTrain PIN = PulseTrain.of(true, 2_000_000_000L, 1_000_000_000L);
    private static final SampledSignal SPEED =
            SampledSignal.of(new long[] {0, 1_000_000_000L, 2_500_000_000L}, new double[] {0, 650.25, 900});

    @Test
    void a_dump_has_a_change_a_line_and_ends_with_a_time_of_its_own() {
        assertThat(new VcdWriter("recording")
                        .wire("lamp", LAMP)
                        .wire("pin", PIN)
                        .real("speed_rpm", SPEED, 1)
                        .text())
                .isEqualTo("""
                        $date none: the same signals give the same file $end
                        $version Telltally $end
                        $timescale 1 us $end
                        $scope module recording $end
                        $var wire 1 a lamp $end
                        $var wire 1 b pin $end
                        $var real 64 c speed_rpm $end
                        $upscope $end
                        $enddefinitions $end
                        #0
                        $dumpvars
                        0a
                        1b
                        r0.0 c
                        $end
                        #1000000
                        1a
                        0b
                        r650.3 c
                        #1500000
                        0a
                        #2500000
                        r900.0 c
                        #3000000
                        """);
    }

    @Test
    void the_unit_is_a_nanosecond_where_a_time_is_no_whole_number_of_microseconds() {
        PulseTrain edge = PulseTrain.of(false, 3000, 1500);
        PulseTrain end = PulseTrain.of(false, 3001, 1000);
        SampledSignal sample = SampledSignal.of(new long[] {0, 1001, 2000}, new double[3]);

        assertThat(new VcdWriter("x").wire("a", edge).text()).contains("$timescale 1 ns $end", "#1500\n", "#3000\n");
        assertThat(new VcdWriter("x").wire("a", end).text()).contains("$timescale 1 ns $end", "#3001\n");
        assertThat(new VcdWriter("x").real("a", sample, 0).text()).contains("$timescale 1 ns $end", "#1001\n");
    }

    @Test
    void before_its_first_sample_a_real_value_is_that_sample() {
        SampledSignal late = SampledSignal.of(new long[] {5_000, 9_000}, new double[] {2, 3});

        assertThat(new VcdWriter("x").real("volts", late, 0).text())
                .endsWith("$dumpvars\nr2 a\n$end\n#5\nr2 a\n#9\nr3 a\n");
    }

    @Test
    void a_train_that_ends_early_keeps_its_level() throws ProblemException {
        String text = new VcdWriter("x").wire("lamp", LAMP).wire("pin", PIN).text();

        assertThat(Vcd.read(new TextFile("x.vcd", text)).train(Optional.of("pin")))
                .isEqualTo(PulseTrain.of(true, 3_000_000_000L, 1_000_000_000L));
    }

    @Test
    void many_wires_have_an_identifier_each() throws ProblemException {
        VcdWriter writer = new VcdWriter("x");
        for (int i = 0; i < 800; i++) {
            writer.wire("w" + i, PulseTrain.of(false, 10_000, i + 1));
        }
        String text = writer.text();

        assertThat(text).contains(" z w25 ", " aa w26 ", " zz w701 ", " aaa w702 ");
        assertThat(Vcd.read(new TextFile("x.vcd", text)).train(Optional.of("w700")))
                .isEqualTo(PulseTrain.of(false, 10_000, 701));
    }

    @Test
    void it_goes_to_wherever_text_can_go() throws IOException {
        StringBuilder out = new StringBuilder();
        VcdWriter writer = new VcdWriter("x").wire("lamp", LAMP);
        writer.write(out);

        assertThat(out).hasToString(writer.text());
    }

    @Nested
    class Refused {
        @Test
        void are_names_that_a_reader_would_take_apart() {
            VcdWriter writer = new VcdWriter("x").wire("lamp", LAMP);

            assertThatIllegalArgumentException()
                    .isThrownBy(() -> writer.wire("the lamp", LAMP))
                    .withMessage("a name is printable and without blanks, not \"the lamp\"");
            assertThatIllegalArgumentException().isThrownBy(() -> writer.wire("", LAMP));
            assertThatIllegalArgumentException().isThrownBy(() -> new VcdWriter("\u00fc"));
            assertThatIllegalArgumentException().isThrownBy(() -> writer.wire("$end", LAMP));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> writer.wire("lamp", LAMP))
                    .withMessage("two signals are called lamp");
        }

        @Test
        void are_samples_before_the_start_or_none_at_all() {
            SampledSignal early = SampledSignal.of(new long[] {-1, 1}, new double[2]);
            SampledSignal none = SampledSignal.of(new long[0], new double[0]);

            assertThatIllegalArgumentException().isThrownBy(() -> new VcdWriter("x").real("a", early, 0));
            assertThatIllegalArgumentException().isThrownBy(() -> new VcdWriter("x").real("a", none, 0));
        }

        @Test
        void is_a_dump_without_a_length() {
            assertThatIllegalStateException().isThrownBy(() -> new VcdWriter("x").text());
            assertThatIllegalStateException()
                    .isThrownBy(() -> new VcdWriter("x")
                            .real("a", SampledSignal.of(new long[] {0}, new double[1]), 0)
                            .text());
        }
    }
}
