package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static telltally.simulator.trace.Traces.assertTold;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/** The rules are those of IEEE 1364-2005, clause 18.2, the four-state format. */
class VcdTest {
    private static final String HEADER =
            "$timescale 1 ms $end\n$scope module lamp $end\n$var wire 1 ! lit $end\n$upscope $end\n$enddefinitions $end\n";

    private static final PulseTrain THREE_FLASHES = PulseTrain.of(
            false,
            7_000_000_000L,
            1_000_000_000L,
            1_500_000_000L,
            2_000_000_000L,
            2_500_000_000L,
            4_500_000_000L,
            5_000_000_000L);

    @Nested
    class OwnSample {
        private final Vcd vcd;

        /** Read alike by vcd2fst (GTKWave 3.3.118) and pyvcd, which were run on it; # is one of its identifiers. */
        OwnSample() throws IOException, ProblemException {
            try (InputStream in = VcdTest.class.getResourceAsStream("own-sample.vcd")) {
                vcd = Vcd.read(TextFile.read("own-sample.vcd", in, TextFile.RECORDING_BYTES));
            }
        }

        @Test
        void has_a_wire_a_vector_and_a_real() {
            assertThat(vcd.wires())
                    .containsExactly(
                            new Vcd.Wire("lamp.lit", "wire", 1),
                            new Vcd.Wire("lamp.digit[3:0]", "wire", 4),
                            new Vcd.Wire("lamp.volts", "real", 64));
        }

        @Test
        void gives_the_only_one_bit_wire() throws ProblemException {
            PulseTrain train = vcd.train(Optional.empty());

            assertThat(train).isEqualTo(THREE_FLASHES);
            // As an outside tool for captures counted it: 1.5 s lit of 7 s.
            assertThat(train.litNanosBetween(0, train.endNanos())).isEqualTo(1_500_000_000L);
        }

        @Test
        void gives_it_by_its_name_and_by_its_path() throws ProblemException {
            assertThat(vcd.train(Optional.of("lit"))).isEqualTo(THREE_FLASHES);
            assertThat(vcd.train(Optional.of("lamp.lit"))).isEqualTo(THREE_FLASHES);
        }

        @Test
        void has_no_other() {
            assertTold(() -> vcd.train(Optional.of("digit[3:0]")))
                    .containsExactly("own-sample.vcd: has no one-bit wire called \"digit[3:0]\"; expected one of"
                            + " \"lamp.lit\", \"lamp.digit[3:0]\" (4 bits), \"lamp.volts\" (64 bits)");
        }
    }

    @Nested
    class Levels {
        @Test
        void that_are_unknown_leave_the_level_as_it_was() throws ProblemException {
            assertThat(lamp("#0 x! #1 1! #2 x! #3 Z! #4 0! #5 X! #6")).isEqualTo(millis(false, 6, 1, 4));
        }

        @Test
        void are_dark_until_the_first_known_one() throws ProblemException {
            assertThat(lamp("#0 #5 1! #9")).isEqualTo(millis(false, 9, 5));
        }

        @Test
        void may_be_dumped_off_and_on_again() throws ProblemException {
            assertThat(lamp("#0 $dumpvars 1! $end #2 $dumpoff x! $end #4 $dumpon 0! $end #5 $dumpall 0! $end #6"))
                    .isEqualTo(millis(true, 6, 4));
        }

        @Test
        void may_be_written_as_vectors_of_one_bit() throws ProblemException {
            assertThat(lamp("#0 b0 ! #1 B1 ! #2 bx ! #3 b0 ! #4")).isEqualTo(millis(false, 4, 1, 3));
        }

        @Test
        void that_are_repeated_change_nothing() throws ProblemException {
            assertThat(lamp("#0 1! #1 1! #2 0! #3 0! #4")).isEqualTo(millis(true, 4, 2));
        }

        @Test
        void of_one_instant_count_by_the_last() throws ProblemException {
            assertThat(lamp("#0 0! #1 1! 0! #2 0! 1! #2 #3")).isEqualTo(millis(false, 3, 2));
        }

        @Test
        void may_stand_before_the_first_time() throws ProblemException {
            assertThat(lamp("$dumpvars 1! $end #100 #103 0! #104")).isEqualTo(millis(true, 4, 3));
        }
    }

    @Nested
    class Time {
        @ParameterizedTest
        @CsvSource({
            "1 s, 1000000000",
            "10 s, 10000000000",
            "100 s, 100000000000",
            "1ms, 1000000",
            "10 us, 10000",
            "100 ns, 100",
            "1 ns, 1"
        })
        void is_counted_in_units_of_the_timescale(String scale, long unitNanos) throws ProblemException {
            String text = HEADER.replace("1 ms", scale) + "#0 0! #2 1! #5";

            assertThat(read(text).train(Optional.empty()))
                    .isEqualTo(PulseTrain.of(false, 5 * unitNanos, 2 * unitNanos));
        }

        @ParameterizedTest
        @CsvSource({"100 ps, 10", "10 ps, 100", "1 ps, 1000", "100 fs, 10000", "10 fs, 100000", "1 fs, 1000000"})
        void shorter_than_a_nanosecond_is_rounded_half_up(String scale, long unitsPerNano) throws ProblemException {
            long half = unitsPerNano / 2;
            String text = HEADER.replace("1 ms", scale) + "#0 0! #" + (3 * unitsPerNano - half) + " 1! #"
                    + (7 * unitsPerNano + half - 1);

            assertThat(read(text).train(Optional.empty())).isEqualTo(PulseTrain.of(false, 7, 3));
        }

        @Test
        void swallows_what_is_over_within_a_nanosecond() throws ProblemException {
            String text = HEADER.replace("1 ms", "1 ps") + "#0 0! #1000 1! #1400 0! #5000";

            assertThat(read(text).train(Optional.empty())).isEqualTo(PulseTrain.of(false, 5));
        }

        @Test
        void starts_with_the_first_in_the_file() throws ProblemException {
            assertThat(lamp("#500 0! #501 1! #503 0! #510")).isEqualTo(millis(false, 10, 1, 3));
        }

        @Test
        void ends_with_the_last_in_the_file() throws ProblemException {
            assertThat(lamp("#0 0! #1 1! #9 1!")).isEqualTo(millis(false, 9, 1));
        }

        @Test
        void ends_a_unit_later_where_the_wire_changes_at_the_last() throws ProblemException {
            assertThat(lamp("#0 0! #1 1! #9 0!")).isEqualTo(millis(false, 10, 1, 9));
        }

        @Test
        void reaches_thirty_one_years() throws ProblemException {
            assertThat(lamp("#0 0! #1000000000000").endNanos()).isEqualTo(Seconds.MAX_NANOS);
        }
    }

    @Nested
    class Declarations {
        @Test
        void may_be_set_with_any_white_space() throws ProblemException {
            String text = HEADER.replace(" ", "\r\n\t") + "#0\f0!\t\t#1\r\n1!\r#2";

            assertThat(read(text).train(Optional.empty())).isEqualTo(millis(false, 2, 1));
        }

        @Test
        void may_follow_a_line_of_the_program_that_converted_the_file() throws ProblemException {
            assertThat(read("META samplerate: 1000\n" + HEADER + "#0 0! #1 1! #2")
                            .train(Optional.empty()))
                    .isEqualTo(millis(false, 2, 1));
        }

        @Test
        void may_have_scopes_within_scopes() throws ProblemException {
            Vcd vcd = read("$comment any $var words $end $timescale 1 ms $end $scope module top $end"
                    + " $scope task a $end $var reg 1 ! x $end $upscope $end"
                    + " $scope function b $end $var reg 1 % x [3] $end $upscope $end"
                    + " $var integer 32 & n $end $var event 1 ' e $end $upscope $end $enddefinitions $end"
                    + " #0 0! 1% b101 & 1' #1 1! #2");

            assertThat(vcd.wires())
                    .extracting(Vcd.Wire::name)
                    .containsExactly("top.a.x", "top.b.x[3]", "top.n", "top.e");
            assertThat(vcd.train(Optional.of("a.x"))).isEqualTo(millis(false, 2, 1));
            assertThat(vcd.train(Optional.of("x[3]"))).isEqualTo(millis(true, 2));
        }

        @Test
        void may_give_several_wires_one_identifier() throws ProblemException {
            Vcd vcd = read(HEADER.replace("$upscope", "$var wire 1 ! pin $end $upscope") + "#0 0! #1 1! #2");

            assertThat(vcd.train(Optional.of("pin"))).isEqualTo(millis(false, 2, 1));
            assertThat(vcd.train(Optional.empty())).isEqualTo(millis(false, 2, 1));
        }

        @Test
        void may_use_any_printable_signs_as_identifiers() throws ProblemException {
            for (String identifier : new String[] {"#", "#1", "$", "!\"$\"", "0", "b", "~~~"}) {
                String text = HEADER.replace("!", identifier) + "#0 0" + identifier + " #1 b1 " + identifier + " #2";

                assertThat(read(text).train(Optional.empty())).isEqualTo(millis(false, 2, 1));
            }
        }

        @Test
        void of_reals_and_strings_are_passed_over() throws ProblemException {
            Vcd vcd = read(HEADER.replace("$upscope", "$var real 1 r volts $end $var string 1 s word $end $upscope")
                    + "#0 0! r-1.25e-3 r sone s #1 1! rnan r R12 r Stwo s #2");

            assertThat(vcd.train(Optional.empty())).isEqualTo(millis(false, 2, 1));
        }
    }

    @Nested
    class Chosen {
        private static final String TWO = HEADER.replace("$upscope", "$var wire 1 % pin $end $upscope");

        @Test
        void is_the_only_wire_that_changes() throws ProblemException {
            assertThat(read(TWO + "#0 0! 1% #1 0% #2").train(Optional.empty())).isEqualTo(millis(true, 2, 1));
        }

        @Test
        void is_none_where_several_change_or_none_does() {
            String told = "lamp.vcd: has several one-bit wires; expected the name of one: \"lamp.lit\", \"lamp.pin\"";

            assertTold(() -> read(TWO + "#0 0! 1% #1 0% 1! #2").train(Optional.empty()))
                    .containsExactly(told);
            assertTold(() -> read(TWO + "#0 0! 1% #2").train(Optional.empty())).containsExactly(told);
        }

        @Test
        void is_none_where_there_is_no_one_bit_wire() {
            String text = HEADER.replace("wire 1", "wire 2") + "#0 b0 ! #1 b1 ! #2";

            assertTold(() -> read(text).train(Optional.empty()))
                    .containsExactly("lamp.vcd: has no one-bit wire; it has \"lamp.lit\" (2 bits)");
            assertTold(() -> read("$timescale 1 s $end $enddefinitions $end #0 #1")
                            .train(Optional.empty()))
                    .containsExactly("lamp.vcd: has no one-bit wire; it has none");
        }

        @Test
        void is_none_of_another_name() {
            assertTold(() -> read(TWO + "#0 #1").train(Optional.of("it")))
                    .containsExactly("lamp.vcd: has no one-bit wire called \"it\"; expected one of \"lamp.lit\","
                            + " \"lamp.pin\"");
        }

        @Test
        void is_none_where_a_name_means_several() {
            String text =
                    HEADER.replace("$enddefinitions", "$scope task b $end $var wire 1 % lit $end $enddefinitions");

            assertTold(() -> read(text + "#0 1% #1").train(Optional.of("lit")))
                    .containsExactly("lamp.vcd: has several wires called \"lit\"; expected the name of one:"
                            + " \"lamp.lit\", \"b.lit\"");
        }

        @Test
        void is_the_exact_name_before_the_end_of_a_path() throws ProblemException {
            String text = HEADER.replace("$enddefinitions", "$var wire 1 % lit $end $enddefinitions");

            assertThat(read(text + "#0 1% #1").train(Optional.of("lit"))).isEqualTo(millis(true, 1));
        }

        @Test
        void is_told_among_twenty_at_most() {
            StringBuilder many = new StringBuilder("$timescale 1 ms $end");
            for (int i = 0; i < 30; i++) {
                many.append(" $var wire 1 w").append(i).append(" w").append(i).append(" $end");
            }
            many.append(" $enddefinitions $end #0 #1");

            assertTold(() -> read(many.toString()).train(Optional.empty()))
                    .allSatisfy(told -> assertThat(told).endsWith("\"w18\", \"w19\" and 10 more"));
        }
    }

    static Stream<Arguments> mistakes() {
        String keywords = "expected $comment, $date, $enddefinitions, $scope, $timescale, $upscope, $var or $version";
        String dumps = "expected one of $comment, $dumpall, $dumpoff, $dumpon, $dumpvars";
        String scales = "expected 1, 10 or 100 and then s, ms, us, ns, ps or fs";
        return Stream.of(
                mistake("", "1:1: is the end of the file; expected $enddefinitions $end before it"),
                mistake(
                        "$timescale 1 s $end\n$var wire 1 ! a $end\n",
                        "3:1: is the end of the file; expected $enddefinitions $end before it"),
                mistake(
                        "$timescale 1 s $end\n$var wire 1 ! a $end\n#0 1!\n#1",
                        "3:1: is \"#0\"; expected $enddefinitions $end before it"),
                mistake(
                        "$date now!!!$end\n$enddefinitions $end\n",
                        "3:1: is the end of the file; expected $enddefinitions $end before it"),
                mistake("\n$date now!!!$end\n", "2:1: $date: is not closed; expected $end before the end of the file"),
                mistake("$enddefinitions $end\n#0 #1", "1:1: $timescale: is missing; " + scales),
                mistake("\n$timescale 5 ms $end $enddefinitions $end #0 #1", "2:1: $timescale: is \"5ms\"; " + scales),
                mistake("$timescale 1 min $end $enddefinitions $end #0 #1", "1:1: $timescale: is \"1min\"; " + scales),
                mistake("$timescale $end $enddefinitions $end #0 #1", "1:1: $timescale: is \"\"; " + scales),
                mistake(
                        "$timescale 1 s $end\n$timescale 1 s $end $enddefinitions $end #0 #1",
                        "2:1: $timescale: is there a second time; expected only one"),
                mistake("time_s,level\n0,0\n", "1:1: is \"time_s,level\"; " + keywords),
                mistake(HEADER.replace("$upscope", "lost\n$upscope") + "#0 #1", "4:1: is \"lost\"; " + keywords),
                mistake("$wire 1 ! a $end\n" + HEADER + "#0 #1", "1:1: is \"$wire\"; " + keywords),
                mistake(
                        HEADER.replace(" lit", "") + "#0 0! #1",
                        "3:1: $var: has 3 words; expected type, size, identifier and name",
                        "6:4: has the identifier \"!\"; expected one that a $var declared"),
                mistake(
                        HEADER.replace("wire 1", "wire one") + "#0 #1",
                        "3:1: $var: has the size \"one\"; expected 0 to 1048576 bits"),
                mistake(
                        HEADER.replace("wire 1", "wire -1") + "#0 #1",
                        "3:1: $var: has the size \"-1\"; expected 0 to 1048576 bits"),
                mistake(
                        HEADER.replace("$upscope", "$var wire 4 ! n $end\n$upscope") + "#0 #1",
                        "4:1: $var: has 4 bits for \"!\"; expected 1 as where it was declared first"),
                mistake(
                        HEADER.replace("module lamp", "lamp") + "#0 #1",
                        "2:1: $scope: has 1 words; expected a kind and a name"),
                mistake(
                        HEADER.replace("$upscope $end", "$upscope $end\n$upscope $end") + "#0 #1",
                        "5:1: $upscope: closes no scope; expected a $scope before it"),
                mistake(
                        HEADER.replace("$upscope $end", "$upscope lamp $end") + "#0 #1",
                        "4:1: $upscope: has \"lamp\"; expected $end"),
                mistake(HEADER + "#0\n1?\n#1", "7:1: has the identifier \"?\"; expected one that a $var declared"),
                mistake(HEADER + "#0\nb1 ?\n#1", "7:4: has the identifier \"?\"; expected one that a $var declared"),
                mistake(
                        HEADER + "#0 0!\n#9 1!\n#8 0!\n#10",
                        "8:1: is \"#8\"; expected no time before #9, since times must not fall"),
                mistake(
                        HEADER + "#0 #1000000000001",
                        "6:4: is \"#1000000000001\"; expected a time of at most #1000000000000"),
                mistake(
                        HEADER + "#0 #99999999999999999999",
                        "6:4: is \"#99999999999999999999\"; expected a time of at most #1000000000000"),
                mistake(HEADER + "#0 #-1 #1", "6:4: is \"#-1\"; expected a time such as #1000"),
                mistake(HEADER + "#0 #1.5 #2", "6:4: is \"#1.5\"; expected a time such as #1000"),
                mistake(
                        HEADER + "# 0 #1",
                        "6:1: is \"#\"; expected a time such as #1000",
                        "6:3: is \"0\"; expected the identifier right after the level"),
                mistake(
                        HEADER + "#0 hello #1",
                        "6:4: is \"hello\"; expected a time (#1000), a value change (1!) or a keyword"),
                mistake(HEADER + "#0 0 #1", "6:4: is \"0\"; expected the identifier right after the level"),
                mistake(HEADER + "#0 b12 ! #1", "6:4: is \"b12\"; expected b and then bits of 0, 1, x or z"),
                mistake(HEADER + "#0 b ! #1", "6:4: is \"b\"; expected b and then bits of 0, 1, x or z"),
                mistake(HEADER + "#0 b10 ! #1", "6:4: has 2 bits; expected at most 1"),
                mistake(HEADER + "#0 rfast ! #1", "6:4: is \"rfast\"; expected r and then a decimal number"),
                mistake(HEADER + "#0 #1 b1", "6:9: ends after \"b1\"; expected an identifier"),
                mistake(
                        HEADER + "#0 $dumpvars 0! #1",
                        "6:4: $dumpvars: is not closed; expected $end before the end of the file"),
                mistake(
                        HEADER + "#0 $dumpvars 0! $dumpall 0! $end #1",
                        "6:17: is $dumpall while $dumpvars is open; expected $end first"),
                mistake(
                        HEADER + "#0 $end #1",
                        "6:4: is $end; expected it only after one of $comment, $dumpall, $dumpoff, $dumpon, $dumpvars"),
                mistake(HEADER + "#0 $var wire 1 % x $end #1", "6:4: is \"$var\"; " + dumps),
                mistake(
                        HEADER + "#0 $comment never closed #1",
                        "6:4: $comment: is not closed; expected $end before the end of the file"),
                mistake(HEADER, "6:1: has no length in time; expected at least two times, such as #0 and #1000"),
                mistake(
                        HEADER + "#5 1!\n",
                        "7:1: has no length in time; expected at least two times, such as #0 and #1000"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void a_mistake_is_told_with_its_place(String text, List<String> told) {
        assertTold(() -> read(text)).isEqualTo(told);
    }

    @Test
    void of_very_many_mistakes_the_first_are_told_and_the_rest_counted() {
        assertTold(() -> read(HEADER + "#0\n" + "what\n".repeat(21)))
                .hasSize(21)
                .endsWith("lamp.vcd:27:1: ... and 1 more problem");
    }

    private static Arguments mistake(String text, String... told) {
        return Arguments.of(
                text, Stream.of(told).map(line -> "lamp.vcd:" + line).toList());
    }

    private static PulseTrain lamp(String changes) throws ProblemException {
        return read(HEADER + changes).train(Optional.of("lit"));
    }

    private static Vcd read(String text) throws ProblemException {
        return Vcd.read(new TextFile("lamp.vcd", text));
    }

    private static PulseTrain millis(boolean litAtStart, long end, long... edges) {
        long[] nanos = new long[edges.length];
        for (int i = 0; i < edges.length; i++) {
            nanos[i] = edges[i] * 1_000_000;
        }
        return PulseTrain.of(litAtStart, end * 1_000_000, nanos);
    }
}
