package telltally.simulator.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SecondsTest {
    @Nested
    class Written {
        @ParameterizedTest
        @CsvSource({
            "0, 0.0",
            "1, 0.000000001",
            "-1, -0.000000001",
            "500000000, 0.5",
            "-500000000, -0.5",
            "12500000000, 12.5",
            "60000000000, 60.0",
            "-9223372036854775808, -9223372036.854775808",
            "9223372036854775807, 9223372036.854775807"
        })
        void as_decimals_without_needless_zeros(long nanos, String text) {
            assertThat(Seconds.text(nanos)).isEqualTo(text);
        }
    }

    @Nested
    class Read {
        @ParameterizedTest
        @CsvSource({
            "0, 0",
            "-0, 0",
            "0.5, 500000000",
            "+0.5, 500000000",
            ".5, 500000000",
            "5., 5000000000",
            "1e3, 1000000000000",
            "25e-1, 2500000000",
            "0.0000000004999, 0",
            "0.0000000005, 1",
            "-0.0000000005, -1",
            "1000000000, 1000000000000000000",
            "-1000000000.0, -1000000000000000000"
        })
        void rounded_half_up_to_a_nanosecond(String text, long nanos) {
            assertThat(Seconds.parseNanos(text)).isEqualTo(nanos);
        }

        @ParameterizedTest
        @ValueSource(strings = {"", " 1", "1 ", "one", "0x10", "NaN", "1,5", "1e", "--1"})
        void only_where_it_is_a_decimal_number(String text) {
            assertThatExceptionOfType(NumberFormatException.class).isThrownBy(() -> Seconds.parseNanos(text));
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "1000000000.000000001",
                    "-1000000000.000000001",
                    "9e99",
                    "1e999999999",
                    "1e2147483647",
                    "-1e2147483647"
                })
        void only_up_to_thirty_one_years(String text) {
            assertThatExceptionOfType(NumberFormatException.class).isThrownBy(() -> Seconds.parseNanos(text));
        }

        @ParameterizedTest
        @ValueSource(strings = {"0e999999999", "0e-999999999", "0e-2147483647", "1e-999999999", "-1e-2147483647"})
        void as_nothing_where_it_is_nothing_however_it_is_written(String text) {
            // Multiplied out, each of these is a number of a gigabyte.
            long nanos = Assertions.assertTimeoutPreemptively(
                    Duration.ofSeconds(10), () -> Seconds.nanos(new BigDecimal(text)));

            assertThat(nanos).isZero();
        }
    }
}
