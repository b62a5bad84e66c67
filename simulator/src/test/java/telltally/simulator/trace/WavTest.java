package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static telltally.simulator.trace.Traces.assertTold;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.HexFormat;
import java.util.stream.Stream;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.document.ProblemException;

class WavTest {
    /** Read alike by the class library, sox and Python's wave module, which were run on it: 00 80 ff and a pad byte. */
    private static final String MONO_8 =
            "52494646 28000000 57415645 666d7420 10000000 0100 0100 401f0000 401f0000 0100 0800"
                    + " 64617461 03000000 0080ff00";

    /** As above: left and right 0 and 32767, then -32768 and -1. */
    private static final String STEREO_16 =
            "52494646 2c000000 57415645 666d7420 10000000 0100 0200 44ac0000 10b10200 0400 1000"
                    + " 64617461 08000000 0000ff7f 0080ffff";

    private static final String RIFF = "52494646 00000000 57415645 ";
    private static final String MONO_16_FORMAT = "666d7420 10000000 0100 0100 401f0000 803e0000 0200 1000 ";
    private static final String DATA = "64617461 04000000 0000 0040";
    private static final Sound SILENCE_THEN_HALF = Sound.of(8000, 0, 0.5f);

    @Nested
    class Written {
        @Test
        void byte_for_byte_as_other_programs_have_it() {
            assertThat(Wav.bytes(Sound.of(8000, -1, 0, 127 / 128f), 8)).isEqualTo(hex(MONO_8));
        }

        @Test
        void with_sixteen_bits() {
            assertThat(Wav.bytes(SILENCE_THEN_HALF, 16))
                    .isEqualTo(hex("52494646 28000000 57415645 " + MONO_16_FORMAT + DATA));
        }

        @Test
        void with_samples_limited_to_what_the_steps_reach() {
            byte[] bytes = Wav.bytes(Sound.of(8000, 7, -7, 1, 0.4f / 32768, 0.6f / 32768), 16);

            assertThat(HexFormat.of().formatHex(bytes, 44, bytes.length))
                    .isEqualTo("ff7f" + "0080" + "ff7f" + "0000" + "0100");
        }

        @ParameterizedTest
        @ValueSource(ints = {8, 16})
        void so_that_the_class_library_reads_it(int bits) throws Exception {
            byte[] bytes = Wav.bytes(Sound.of(11025, 0, 0.5f, -0.5f), bits);
            try (AudioInputStream in = AudioSystem.getAudioInputStream(new ByteArrayInputStream(bytes))) {
                AudioFormat format = in.getFormat();
                assertThat(format.getSampleRate()).isEqualTo(11025);
                assertThat(format.getSampleSizeInBits()).isEqualTo(bits);
                assertThat(format.getChannels()).isEqualTo(1);
                assertThat(in.getFrameLength()).isEqualTo(3);
                assertThat(HexFormat.of().formatHex(in.readAllBytes()))
                        .isEqualTo(bits == 8 ? "80c040" : "0000004000c0");
            }
        }

        @Test
        void in_no_other_width() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Wav.bytes(SILENCE_THEN_HALF, 24))
                    .withMessage("8 or 16 bits are written, not 24");
        }
    }

    @Nested
    class Read {
        @Test
        void with_eight_bits_and_without_the_pad_byte() throws ProblemException {
            assertThat(read(MONO_8)).isEqualTo(Sound.of(8000, -1, 0, 127 / 128f));
        }

        @Test
        void with_the_channel_asked_for() throws ProblemException {
            assertThat(read(STEREO_16)).isEqualTo(Sound.of(44100, 0, -1));
            assertThat(Wav.read("a.wav", hex(STEREO_16), 2)).isEqualTo(Sound.of(44100, 32767 / 32768f, -1 / 32768f));
        }

        /** Written by the class library, so that the reader is not held against its own writer alone. */
        @ParameterizedTest
        @ValueSource(ints = {8, 16, 24, 32})
        void with_every_usual_width(int bits) throws Exception {
            int width = bits / 8;
            byte[] samples = new byte[3 * width];
            // Little-endian, the highest byte last: nothing, a half, minus a half. Eight bits have their middle at 128.
            samples[2 * width - 1] = 0x40;
            samples[3 * width - 1] = (byte) 0xC0;
            if (bits == 8) {
                samples = new byte[] {(byte) 0x80, (byte) 0xC0, 0x40};
            }
            AudioFormat.Encoding encoding =
                    bits == 8 ? AudioFormat.Encoding.PCM_UNSIGNED : AudioFormat.Encoding.PCM_SIGNED;
            AudioFormat format = new AudioFormat(encoding, 8000, bits, 1, width, 8000, false);

            assertThat(Wav.read("a.wav", written(samples, format))).isEqualTo(Sound.of(8000, 0, 0.5f, -0.5f));
        }

        @Test
        void with_floating_point() throws Exception {
            AudioFormat format = new AudioFormat(AudioFormat.Encoding.PCM_FLOAT, 8000, 32, 1, 4, 8000, false);

            assertThat(Wav.read("a.wav", written(hex("00000000 0000c0bf 0000003f"), format)))
                    .isEqualTo(Sound.of(8000, 0, -1.5f, 0.5f));
        }

        @Test
        void with_every_bit_of_24() throws ProblemException {
            Sound sound = read(RIFF + "666d7420 10000000 0100 0100 401f0000 c05d0000 0300 1800 64617461 09000000"
                    + " 010000 ffffff 0000 80");

            assertThat(sound).isEqualTo(Sound.of(8000, 0x1p-23f, -0x1p-23f, -1));
        }

        @Test
        void with_the_longer_format_chunk() throws ProblemException {
            assertThat(read(RIFF + "666d7420 28000000 feff 0100 401f0000 803e0000 0200 1000"
                            + " 1600 1000 04000000 0100 0000 0000 1000 8000 00aa00389b71 " + DATA))
                    .isEqualTo(SILENCE_THEN_HALF);
        }

        @Test
        void past_chunks_of_other_kinds_and_their_pad_bytes() throws ProblemException {
            assertThat(read(RIFF + "4c495354 03000000 61626300 " + MONO_16_FORMAT + "66616374 04000000 02000000 " + DATA
                            + "6a756e6b 01000000 78"))
                    .isEqualTo(SILENCE_THEN_HALF);
        }

        @Test
        void with_the_data_before_the_format() throws ProblemException {
            assertThat(read(RIFF + DATA + MONO_16_FORMAT)).isEqualTo(SILENCE_THEN_HALF);
        }

        @Test
        void as_far_as_it_goes_where_it_was_cut_off() throws ProblemException {
            assertThat(read(RIFF + MONO_16_FORMAT + "64617461 00010000 0000 0040 ff"))
                    .isEqualTo(SILENCE_THEN_HALF);
            assertThat(read(RIFF + MONO_16_FORMAT + "64617461 ffffffff 0000 0040"))
                    .isEqualTo(SILENCE_THEN_HALF);
        }
    }

    static Stream<Arguments> mistakes() {
        String none = "at byte 0: is no RIFF WAVE file; expected it to begin with RIFF, four bytes of size, WAVE";
        return Stream.of(
                Arguments.of("", none),
                Arguments.of("52494646", none),
                Arguments.of("52494658 00000000 57415645 " + MONO_16_FORMAT + DATA, none),
                Arguments.of("52494646 00000000 41564920 " + MONO_16_FORMAT + DATA, none),
                Arguments.of(RIFF, "at byte 12: has no format; expected a chunk called \"fmt \""),
                Arguments.of(RIFF + DATA, "at byte 12: has no format; expected a chunk called \"fmt \""),
                Arguments.of(
                        RIFF + "666d7420 02000000 0100 " + DATA,
                        "at byte 20: has a format of 2 bytes; expected at least 16"),
                Arguments.of(
                        RIFF + "666d7420 10000000 0100 0100",
                        "at byte 20: has a format of 4 bytes; expected at least 16"),
                Arguments.of(RIFF + MONO_16_FORMAT, "at byte 36: has no sound; expected a chunk called \"data\""),
                Arguments.of(
                        RIFF + MONO_16_FORMAT.replace("0100 0100", "0700 0100") + DATA,
                        "at byte 20: is encoded by method 7; expected 1 (PCM) or 3 (floating point)"),
                Arguments.of(
                        RIFF + MONO_16_FORMAT.replace("401f0000", "00000000") + DATA,
                        "at byte 24: has a sampling rate of 0 Hz; expected 1 to 10000000"),
                Arguments.of(
                        RIFF + MONO_16_FORMAT.replace("401f0000", "ffffffff") + DATA,
                        "at byte 24: has a sampling rate of 4294967295 Hz; expected 1 to 10000000"),
                Arguments.of(
                        RIFF + MONO_16_FORMAT.replace("0200 1000", "0200 0c00") + DATA,
                        "at byte 34: has 12 bits a sample; expected 8, 16, 24 or 32"),
                Arguments.of(
                        RIFF + MONO_16_FORMAT.replace("0100 0100", "0300 0100") + DATA,
                        "at byte 34: has 16 bits a sample; expected 32 for floating point"),
                Arguments.of(
                        RIFF + MONO_16_FORMAT.replace("0100 0100", "0100 0000") + DATA,
                        "at byte 32: has frames of 2 bytes; expected those of 0 channels of 16 bits"),
                Arguments.of(
                        RIFF + MONO_16_FORMAT.replace("0200 1000", "0400 1000") + DATA,
                        "at byte 32: has frames of 4 bytes; expected those of 1 channels of 16 bits"),
                Arguments.of(
                        RIFF + MONO_16_FORMAT + "64617461 00000000",
                        "at byte 44: has no samples; expected at least one"),
                Arguments.of(
                        RIFF + MONO_16_FORMAT + "64617461 02000000 00",
                        "at byte 44: has no samples; expected at least one"),
                Arguments.of(
                        RIFF
                                + "666d7420 10000000 0300 0100 401f0000 007d0000 0400 2000 64617461 08000000 00000000 0000c07f",
                        "at byte 48: has a sample that is no number; expected finite ones only"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void a_mistake_is_told_with_its_byte(String bytes, String told) {
        assertTold(() -> read(bytes)).containsExactly("a.wav: " + told);
    }

    @Test
    void a_channel_that_is_not_there_is_told() {
        assertTold(() -> Wav.read("a.wav", hex(STEREO_16), 3))
                .containsExactly("a.wav: at byte 22: has 2 channels; expected at least 3");
        assertTold(() -> Wav.read("a.wav", hex(STEREO_16), 0))
                .containsExactly("a.wav: at byte 22: has 2 channels; expected one counted from 1, not 0");
    }

    @Nested
    class Instants {
        @Test
        void are_those_of_the_samples_and_of_the_end() {
            Sound sound = Sound.of(44100, new float[44101]);

            assertThat(sound.atNanos(0)).isZero();
            assertThat(sound.atNanos(1)).isEqualTo(22_675);
            assertThat(sound.atNanos(44100)).isEqualTo(1_000_000_000);
            assertThat(sound.atNanos(sound.size())).isEqualTo(1_000_022_675);
        }

        @Test
        void of_long_sounds_do_not_overflow() {
            assertThat(Sound.of(1, 0).atNanos(Integer.MAX_VALUE)).isEqualTo(2_147_483_647_000_000_000L);
        }
    }

    @Test
    void a_sound_is_refused_where_it_is_none() {
        assertThatIllegalArgumentException().isThrownBy(() -> Sound.of(0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Sound.of(Sound.MOST_HZ + 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Sound.of(8000));
        assertThatIllegalArgumentException().isThrownBy(() -> Sound.of(8000, Float.NaN));
    }

    private static byte[] written(byte[] samples, AudioFormat format) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int frames = samples.length / format.getFrameSize();
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(samples), format, frames),
                AudioFileFormat.Type.WAVE,
                out);
        return out.toByteArray();
    }

    private static Sound read(String bytes) throws ProblemException {
        return Wav.read("a.wav", hex(bytes));
    }

    private static byte[] hex(String bytes) {
        return HexFormat.of().parseHex(bytes.replace(" ", ""));
    }
}
