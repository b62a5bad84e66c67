package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.PulseTrains;
import telltally.simulator.signal.SampledSignal;

class TraceProperties {
    private static final int DECIMALS = 4;

    @Provide
    Arbitrary<PulseTrain> trains() {
        return Arbitraries.of(1L, 1_000L, 1_000_000L).flatMap(PulseTrains::any);
    }

    /** Values that {@link #DECIMALS} digits hold exactly, as far as a double does. */
    @Provide
    Arbitrary<SampledSignal> signals() {
        Arbitrary<List<Long>> steps = Arbitraries.longs()
                .between(1, 100_000_000_000L)
                .list()
                .ofMinSize(2)
                .ofMaxSize(30);
        Arbitrary<List<Long>> values = Arbitraries.longs()
                .between(-1_000_000_000, 1_000_000_000)
                .list()
                .ofSize(30);
        return Combinators.combine(Arbitraries.longs().between(-1_000_000_000, 0), steps, values)
                .as((start, lengths, tenThousandths) -> {
                    long[] at = new long[lengths.size()];
                    double[] value = new double[lengths.size()];
                    long now = start;
                    for (int i = 0; i < at.length; i++) {
                        now += lengths.get(i);
                        at[i] = now;
                        value[i] = tenThousandths.get(i) / 10_000.0;
                    }
                    return SampledSignal.of(at, value);
                });
    }

    @Provide
    Arbitrary<String> nearlyCsv() {
        return pieces(
                "time_s,level\n",
                "time_s,value\r\n",
                "0,0\n",
                "1.5,1\r\n",
                "2,0\n",
                ",",
                "\"",
                "\"\"",
                "\r",
                "\n",
                "# ",
                "1",
                "-",
                "e9",
                "1e999999999,",
                "0e-999999999,",
                "x",
                "\ud800");
    }

    @Provide
    Arbitrary<String> nearlyVcd() {
        String header = "$timescale 1 ms $end $var wire 1 ! a $end $enddefinitions $end ";
        return pieces(
                        "#0 ",
                        "#1 ",
                        "#5 ",
                        "#99999999999999999999 ",
                        "# ",
                        "0! ",
                        "1!",
                        "x! ",
                        "b1 ",
                        "b ",
                        "! ",
                        "r",
                        "r1e9 ",
                        "s",
                        "$end ",
                        "$dumpvars ",
                        "$comment ",
                        "$var wire 1 ",
                        "$scope ",
                        "$upscope $end ",
                        "$timescale 1fs $end ",
                        "$enddefinitions ",
                        "\n",
                        "$",
                        "1 ",
                        "\u0000",
                        "\ud800")
                .flatMap(text -> Arbitraries.of("", header).map(start -> start + text));
    }

    @Property
    void an_edge_file_is_read_as_it_was_written(@ForAll("trains") PulseTrain train) throws ProblemException {
        assertThat(EdgeCsv.read(file(EdgeCsv.text(train)))).isEqualTo(train);
    }

    @Property
    void an_edge_file_is_read_alike_with_lf_and_with_times_that_start_elsewhere(@ForAll("trains") PulseTrain train)
            throws ProblemException {
        String text = EdgeCsv.text(train).replace("\r\n", "\n").replaceFirst("\n0\\.0,", "\n-0.0,");

        assertThat(EdgeCsv.read(file(text))).isEqualTo(train);
    }

    @Property
    void a_sample_file_is_read_as_it_was_written(@ForAll("signals") SampledSignal signal) throws ProblemException {
        assertThat(SampleCsv.read(file(SampleCsv.text(signal, DECIMALS)))).isEqualTo(signal);
    }

    @Property
    void a_dump_is_read_as_it_was_written(@ForAll("trains") PulseTrain lamp, @ForAll("trains") PulseTrain pin)
            throws ProblemException {
        String text =
                new VcdWriter("recording").wire("lamp", lamp).wire("pin", pin).text();
        Vcd vcd = Vcd.read(file(text));
        PulseTrain longer = lamp.endNanos() >= pin.endNanos() ? lamp : pin;

        assertThat(vcd.train(Optional.of(longer.equals(lamp) ? "lamp" : "pin"))).isEqualTo(longer);
        assertThat(Vcd.read(file(new VcdWriter("x").wire("lamp", lamp).text())).train(Optional.empty()))
                .isEqualTo(lamp);
    }

    @Property
    void a_sound_of_sixteen_bits_is_read_as_it_was_written(
            @ForAll @IntRange(min = 1, max = 1_000_000) int rate, @ForAll @Size(min = 1) short[] steps)
            throws ProblemException {
        float[] samples = new float[steps.length];
        for (int i = 0; i < steps.length; i++) {
            samples[i] = steps[i] / 32768f;
        }
        Sound sound = Sound.of(rate, samples);

        assertThat(Wav.read("a.wav", Wav.bytes(sound, 16))).isEqualTo(sound);
    }

    @Property
    void a_sound_of_eight_bits_is_read_as_it_was_written(@ForAll @Size(min = 1) byte[] steps) throws ProblemException {
        float[] samples = new float[steps.length];
        for (int i = 0; i < steps.length; i++) {
            samples[i] = steps[i] / 128f;
        }

        assertThat(Wav.read("a.wav", Wav.bytes(Sound.of(8000, samples), 8))).isEqualTo(Sound.of(8000, samples));
    }

    @Property
    void any_text_is_read_or_refused_with_problems(@ForAll String text) {
        assertReadOrRefused(text);
    }

    @Property
    void pieces_of_csv_in_any_order_are_read_or_refused_with_problems(@ForAll("nearlyCsv") String text) {
        assertReadOrRefused(text);
    }

    @Property
    void pieces_of_a_dump_in_any_order_are_read_or_refused_with_problems(@ForAll("nearlyVcd") String text) {
        assertReadOrRefused(text);
    }

    @Property
    void any_bytes_are_read_as_a_sound_or_refused_with_a_problem(@ForAll byte[] bytes) {
        assertReadOrRefused(() -> Wav.read("a.wav", bytes));
    }

    /** One byte changed, or the end cut off: wrong, but deep inside. */
    @Property
    void a_damaged_sound_is_read_or_refused_with_a_problem(
            @ForAll @IntRange(min = 0, max = 51) int at,
            @ForAll byte changed,
            @ForAll @IntRange(min = 0, max = 52) int length) {
        byte[] bytes = Wav.bytes(Sound.of(8000, 0, 0.5f, -0.5f, 0), 16);
        bytes[at] = changed;

        assertReadOrRefused(() -> Wav.read("a.wav", java.util.Arrays.copyOf(bytes, length)));
    }

    private interface Reading {
        Object read() throws ProblemException;
    }

    private static void assertReadOrRefused(String text) {
        assertReadOrRefused(() -> EdgeCsv.read(file(text)));
        assertReadOrRefused(() -> SampleCsv.read(file(text)));
        assertReadOrRefused(() -> Vcd.read(file(text)).train(Optional.empty()));
        assertReadOrRefused(() -> Vcd.read(file(text)).train(Optional.of("a")));
    }

    private static void assertReadOrRefused(Reading reading) {
        Object read;
        try {
            read = reading.read();
        } catch (ProblemException e) {
            assertThat(e.problems()).isNotEmpty().hasSizeLessThanOrEqualTo(CappedProblems.SHOWN + 1);
            return;
        }
        assertThat(read).isNotNull();
    }

    private static Arbitrary<String> pieces(String... pieces) {
        return Arbitraries.of(pieces).list().ofMaxSize(25).map(list -> String.join("", list));
    }

    private static TextFile file(String text) {
        return new TextFile("any", text);
    }
}
