package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static telltally.simulator.trace.Traces.assertTold;

import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;

class EdgeCsvTest {
    private static final PulseTrain ONE_FLASH = PulseTrain.of(false, 3_000_000_000L, 1_000_000_000L, 1_500_000_000L);

    @Nested
    class Written {
        @Test
        void a_row_at_the_start_one_per_change_and_one_at_the_end() {
            assertThat(EdgeCsv.text(ONE_FLASH)).isEqualTo("time_s,level\r\n0.0,0\r\n1.0,1\r\n1.5,0\r\n3.0,0\r\n");
        }

        @Test
        void two_rows_where_nothing_changes() {
            assertThat(EdgeCsv.text(PulseTrain.of(true, 1))).isEqualTo("time_s,level\r\n0.0,1\r\n0.000000001,1\r\n");
        }

        @Test
        void to_wherever_text_can_go() throws IOException {
            StringBuilder out = new StringBuilder("before ");
            EdgeCsv.write(PulseTrain.of(true, 1_000_000_000), out);

            assertThat(out).hasToString("before time_s,level\r\n0.0,1\r\n1.0,1\r\n");
        }
    }

    @Nested
    class Read {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "time_s,level\r\n0.0,0\r\n1.0,1\r\n1.5,0\r\n3.0,0\r\n",
                    "time_s,level\n0,0\n1,1\n1.5,0\n3,0",
                    "# of the yard, \"east\"\n\n# second\ntime_s,level\n0,0\n1,1\n1.5,0\n3,0\n\n",
                    "\"time_s\",\"level\"\n\"0\",\"0\"\n\"1\",1\n1.5,\"0\"\n3,0\n",
                    "time_s,level\n0,0\n0.5,0\n1,1\n1.25,1\n1.5,0\n2,0\n3,0\n",
                    "time_s,level\n100.25,0\n101.25,1\n101.75,0\n103.25,0\n",
                    "time_s,level\n-2,0\n-1,1\n-0.5,0\n1,0\n",
                    "time_s,level\n0e0,0\n10e-1,1\n+1.50,0\n.3e1,0\n"
                })
        void alike_however_it_is_written(String text) throws ProblemException {
            assertThat(read(text)).isEqualTo(ONE_FLASH);
        }

        @Test
        void with_a_million_rows_in_a_moment() throws ProblemException {
            PulseTrain.Builder train = PulseTrain.builder();
            for (int i = 0; i < 1_000_000; i++) {
                train.stay(i % 2 == 0, 1_234_567 + i % 1000);
            }
            PulseTrain long1 = train.build();

            long before = System.nanoTime();
            PulseTrain read = read(EdgeCsv.text(long1));
            long tookNanos = System.nanoTime() - before;

            assertThat(read).isEqualTo(long1);
            // About a second is what a person should wait; ten leave room for a machine that is busy otherwise.
            assertThat(tookNanos).isLessThan(10_000_000_000L);
        }
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                Arguments.of("", " is empty; expected the header time_s,level"),
                Arguments.of("# only\n# comments\n", " is empty; expected the header time_s,level"),
                Arguments.of("0,0\n1,0\n", "1:1: is \"0,0\"; expected the header time_s,level"),
                Arguments.of("time_s,value\n0,0\n1,0\n", "1:1: is \"time_s,value\"; expected the header time_s,level"),
                Arguments.of(
                        "# x\ntime_s, level\n0,0\n1,0\n",
                        "2:1: is \"time_s, level\"; expected the header time_s,level"),
                Arguments.of("time_s;level\n0;0\n1;0\n", "1:1: is \"time_s;level\"; expected the header time_s,level"),
                Arguments.of(
                        "time_s,level,note\n0,0,a\n",
                        "1:1: is \"time_s,level,note\"; expected the header time_s,level"),
                Arguments.of(
                        "time_s,level\n", "2:1: has no rows; expected at least one at the start and one at the end"),
                Arguments.of("time_s,level\n0,1\n", "2:1: is the only row; expected another one at the end"),
                Arguments.of("time_s,level\n0,0\n1\n2,0\n", "3:2: level: is missing; expected time_s,level"),
                Arguments.of("time_s,level\n0,0\n1,1,x\n2,0\n", "3:5: the row has 3 fields; expected time_s,level"),
                Arguments.of("time_s,level\n0,0\n# late\n2,0\n", "3:7: level: is missing; expected time_s,level"),
                Arguments.of(
                        "time_s,level\nnow,0\n1,0\n", "2:1: time_s: is \"now\"; expected a decimal number of seconds"),
                Arguments.of("time_s,level\n,0\n1,0\n", "2:1: time_s: is \"\"; expected a decimal number of seconds"),
                Arguments.of(
                        "time_s,level\n0,0\n\"1\"s,0\n",
                        "3:1: time_s: is \"\"1\"s\"; expected a decimal number of seconds"),
                Arguments.of(
                        "time_s,level\n0,0\n1e10,0\n",
                        "3:1: time_s: is \"1e10\"; expected seconds from -1000000000.0 to 1000000000.0"),
                Arguments.of(
                        "time_s,level\n0,0\n1,1\n1,0\n2,0\n",
                        "4:1: time_s: is \"1\"; expected more than 1.0, the time of the row before"),
                Arguments.of(
                        "time_s,level\r\n0,0\r\n1.5,1\r\n1.25,0\r\n2,0\r\n",
                        "4:1: time_s: is \"1.25\"; expected more than 1.5, the time of the row before"),
                Arguments.of("time_s,level\n0,0\n1,2\n2,0\n", "3:3: level: is \"2\"; expected 0 (dark) or 1 (lit)"),
                Arguments.of("time_s,level\n0,0\n1, 1\n2,0\n", "3:3: level: is \" 1\"; expected 0 (dark) or 1 (lit)"),
                Arguments.of("time_s,level\n0,0\n1,\n2,0\n", "3:3: level: is \"\"; expected 0 (dark) or 1 (lit)"),
                Arguments.of(
                        "time_s,level\n0,0\n1,1\n",
                        "3:3: level: changes in the last row; expected a last row that repeats the level at the end"),
                Arguments.of(
                        "time_s,level\n0,0\n1,\"1\n2,0\n",
                        "3:3: level: opens a quote that is never closed; expected another quote"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void a_mistake_is_told_with_its_place_and_column(String text, String told) {
        assertTold(() -> read(text)).containsExactly("yard.csv:" + told);
    }

    @Test
    void all_mistakes_are_told_in_one_run() {
        assertTold(() -> read("0,a\nx,1\n5,0\n4,0\n"))
                .containsExactly(
                        "yard.csv:1:1: is \"0,a\"; expected the header time_s,level",
                        "yard.csv:1:3: level: is \"a\"; expected 0 (dark) or 1 (lit)",
                        "yard.csv:2:1: time_s: is \"x\"; expected a decimal number of seconds",
                        "yard.csv:4:1: time_s: is \"4\"; expected more than 5.0, the time of the row before");
    }

    @Test
    void of_very_many_mistakes_the_first_are_told_and_the_rest_counted() {
        StringBuilder text = new StringBuilder("time_s,level\n");
        for (int i = 0; i < 100; i++) {
            text.append(i).append(",on\n");
        }

        assertTold(() -> read(text.toString()))
                .hasSize(21)
                .startsWith("yard.csv:2:3: level: is \"on\"; expected 0 (dark) or 1 (lit)")
                .endsWith("yard.csv:22:4: ... and 80 more problems");
    }

    private static PulseTrain read(String text) throws ProblemException {
        return EdgeCsv.read(new TextFile("yard.csv", text));
    }
}
