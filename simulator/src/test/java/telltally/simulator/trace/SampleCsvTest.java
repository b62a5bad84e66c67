package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static telltally.simulator.trace.Traces.assertTold;

import java.io.IOException;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.SampledSignal;

class SampleCsvTest {
    private static final SampledSignal VOLTS =
            SampledSignal.of(new long[] {-500_000_000, 0, 33_000_000}, new double[] {12.5, -0.25, 0});

    @Nested
    class Written {
        @Test
        void with_the_digits_asked_for() throws IOException {
            StringBuilder out = new StringBuilder();
            SampleCsv.write(VOLTS, 2, out);

            assertThat(out).hasToString("time_s,value\r\n-0.5,12.50\r\n0.0,-0.25\r\n0.033,0.00\r\n");
        }

        @ParameterizedTest
        @CsvSource({
            "0.5, 0, 1",
            "-0.5, 0, -1",
            "1.005, 2, 1.00", // the nearest double lies below
            "2e23, 1, 199999999999999983222784.0", // its shortest text differs between JDK 17 and 25
            "1e-9, 3, 0.000",
            "-1e-9, 3, 0.000"
        })
        void from_the_exact_value_of_the_number(double value, int decimals, String text) {
            assertThat(SampleCsv.decimal(value, decimals)).isEqualTo(text);
        }

        @Test
        void only_with_a_sensible_count_of_digits() {
            assertThatIllegalArgumentException().isThrownBy(() -> SampleCsv.text(VOLTS, -1));
        }
    }

    @Nested
    class Read {
        @Test
        void with_times_as_they_are() throws ProblemException {
            assertThat(read("# volts\ntime_s,value\r\n-0.5,12.5\n0,-25e-2\n0.033,0\n"))
                    .isEqualTo(VOLTS);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dark   | 3:3: value: is \"dark\"; expected a decimal number",
                "NaN    | 3:3: value: is \"NaN\"; expected a decimal number",
                "0x1p3  | 3:3: value: is \"0x1p3\"; expected a decimal number",
                "1e999  | 3:3: value: is \"1e999\"; expected a decimal number",
                "1,5    | 3:5: the row has 3 fields; expected time_s,value"
            })
    void a_value_that_is_no_number_is_told_with_its_place(String value, String told) {
        assertTold(() -> read("time_s,value\n0,1\n1," + value + "\n2,1\n")).containsExactly("light.csv:" + told);
    }

    @Test
    void a_number_that_is_longer_than_any_measurement_is_no_number() {
        assertTold(() -> read("time_s,value\n0," + "1".repeat(61) + "\n1,0\n"))
                .containsExactly("light.csv:2:3: value: is \"" + "1".repeat(60) + "...\"; expected a decimal number");
    }

    @Test
    void the_header_of_an_edge_file_is_told() {
        assertTold(() -> read("time_s,level\n0,1\n1,1\n"))
                .containsExactly("light.csv:1:1: is \"time_s,level\"; expected the header time_s,value");
    }

    @Test
    void times_that_do_not_rise_are_told() {
        assertTold(() -> read("time_s,value\n0,1\n0,1\n-1,1\n"))
                .containsExactly(
                        "light.csv:3:1: time_s: is \"0\"; expected more than 0.0, the time of the row before",
                        "light.csv:4:1: time_s: is \"-1\"; expected more than 0.0, the time of the row before");
    }

    @Test
    void a_single_sample_has_no_length() {
        assertTold(() -> read("time_s,value\n0,1\n"))
                .containsExactly("light.csv:2:1: is the only row; expected another one at the end");
    }

    private static SampledSignal read(String text) throws ProblemException {
        return SampleCsv.read(new TextFile("light.csv", text));
    }
}
