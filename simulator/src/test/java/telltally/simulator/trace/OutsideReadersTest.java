package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/** Dumps go through programs of other projects and come back, or are understood there. */
class OutsideReadersTest {
    private static final long MILLI = 1_000_000;
    private static final PulseTrain LAMP = PulseTrain.builder()
            .dark(1000 * MILLI)
            .lit(500 * MILLI)
            .dark(500 * MILLI)
            .lit(500 * MILLI)
            .dark(2000 * MILLI)
            .lit(500 * MILLI)
            .dark(2000 * MILLI)
            .build();

    @TempDir
    private Path folder;

    /** The converters between dumps and the compact files of a waveform viewer. */
    @Nested
    class WaveformViewer {
        @Test
        void keeps_every_change_of_our_dump_and_we_read_the_dump_that_it_writes() throws Exception {
            PulseTrain pin = LAMP.inverted();
            SampledSignal speed = SampledSignal.of(new long[] {0, 1500 * MILLI}, new double[] {0, 650.25});
            write(new VcdWriter("recording").wire("lamp", LAMP).wire("pin", pin).real("speed_rpm", speed, 2));

            Vcd back = thereAndBack();

            assertThat(back.wires())
                    .extracting(Vcd.Wire::name)
                    .containsExactly("recording.lamp", "recording.pin", "recording.speed_rpm");
            assertThat(back.train(Optional.of("lamp"))).isEqualTo(LAMP);
            assertThat(back.train(Optional.of("pin"))).isEqualTo(pin);
        }

        @Test
        void keeps_odd_nanoseconds() throws Exception {
            PulseTrain odd = PulseTrain.of(true, 1_000_000_007L, 1, 2, 999, 123_456_789);
            write(new VcdWriter("recording").wire("lamp", odd));

            assertThat(thereAndBack().train(Optional.empty())).isEqualTo(odd);
        }

        private Vcd thereAndBack() throws Exception {
            OutsideTool there = OutsideTool.orSkip("vcd2fst", "gtkwave", folder);
            OutsideTool back = OutsideTool.orSkip("fst2vcd", "gtkwave", folder);
            there.run("in.vcd", "in.fst");
            back.run("-f", "in.fst", "-o", "out.vcd");
            return Vcd.read(TextFile.read(folder.resolve("out.vcd"), TextFile.RECORDING_BYTES));
        }
    }

    /** A program for logic analysers, with decoders of its own. */
    @Nested
    class LogicAnalyser {
        @Test
        void reads_our_dump_and_we_read_the_dump_that_it_writes() throws Exception {
            OutsideTool sigrok = OutsideTool.orSkip("sigrok-cli", "sigrok-cli", folder);
            write(new VcdWriter("recording").wire("lamp", LAMP).wire("pin", LAMP.inverted()));
            sigrok.run("-I", "vcd", "-i", "in.vcd", "-O", "vcd", "-o", "out.vcd");

            Vcd back = Vcd.read(TextFile.read(folder.resolve("out.vcd"), TextFile.RECORDING_BYTES));

            assertThat(back.train(Optional.of("lamp"))).isEqualTo(LAMP);
            assertThat(back.train(Optional.of("pin"))).isEqualTo(LAMP.inverted());
        }

        /**
         * PARIS is the standard word: 50 dots long with the gap after it (ITU-R M.1677-1 for the lengths; dots of 60 ms
         * are 20 words a minute).
         */
        @Test
        void reads_a_telegraphed_word_from_our_dump() throws Exception {
            OutsideTool sigrok = OutsideTool.orSkip("sigrok-cli", "sigrok-cli", folder);
            PulseTrain word = telegraphed(60 * MILLI, ".--.", ".-", ".-.", "..", "...");
            write(new VcdWriter("recording").wire("lamp", word));

            assertThat(word.endNanos()).isEqualTo((50 + 7) * 60 * MILLI);
            assertThat(sigrok.run(
                            "-I", "vcd", "-i", "in.vcd", "-P", "morse:data=lamp:timeunit=0.06", "-A", "morse=word"))
                    .contains("paris");
        }
    }

    private void write(VcdWriter dump) throws Exception {
        Files.writeString(folder.resolve("in.vcd"), dump.text());
    }

    private static PulseTrain telegraphed(long dotNanos, String... letters) {
        // A gap between words first: the decoder over there needs to see the first dot begin.
        PulseTrain.Builder train = PulseTrain.builder().dark(7 * dotNanos);
        for (String letter : letters) {
            for (int i = 0; i < letter.length(); i++) {
                train.lit(letter.charAt(i) == '-' ? 3 * dotNanos : dotNanos).dark(dotNanos);
            }
            train.dark(2 * dotNanos);
        }
        return train.dark(4 * dotNanos).build();
    }
}
