package telltally.simulator.document;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {
    @TempDir
    private Path folder;

    @Nested
    class Read {
        @Test
        void from_a_file() throws Exception {
            Path path = file("a.json", "{}\r\n\u00fc\u20ac".getBytes(UTF_8));

            assertThat(TextFile.read(path, 100)).isEqualTo(new TextFile(path.toString(), "{}\r\n\u00fc\u20ac"));
        }

        @Test
        void from_a_stream() throws Exception {
            TextFile file = TextFile.read("-", new ByteArrayInputStream("x".getBytes(UTF_8)), 1);

            assertThat(file).isEqualTo(new TextFile("-", "x"));
        }

        @Test
        void without_its_byte_order_mark() throws Exception {
            assertThat(TextFile.decode("a", "\uFEFFx".getBytes(UTF_8)).text()).isEqualTo("x");
        }
    }

    @Nested
    class Refused {
        @Test
        void where_there_is_none() {
            Path path = folder.resolve("none.json");

            assertProblem(() -> TextFile.read(path, 100), path + ": no such file");
        }

        @Test
        void where_it_is_a_directory() {
            assertProblem(() -> TextFile.read(folder, 100), folder + ": is a directory; a file was expected");
        }

        @Test
        void where_it_is_empty() throws IOException {
            Path path = file("empty.json", new byte[0]);

            assertProblem(() -> TextFile.read(path, 100), path + ": is empty");
            assertProblem(() -> TextFile.read("-", InputStream.nullInputStream(), 100), "-: is empty");
        }

        @Test
        void where_it_is_too_large() throws IOException {
            int most = TextFile.DOCUMENT_BYTES;
            Path path = file("large.json", new byte[most + 1]);
            String told = ": is larger than 1 MiB, the most that is read";

            assertProblem(() -> TextFile.read(path, most), path + told);
            assertProblem(() -> TextFile.read("-", new ByteArrayInputStream(new byte[most + 1]), most), "-" + told);
        }

        @Test
        void not_yet_at_the_most_that_is_read() throws Exception {
            Path path = file("full.json", "x".repeat(100).getBytes(UTF_8));

            assertThat(TextFile.read(path, 100).text()).hasSize(100);
        }

        @Test
        void where_it_cannot_be_read() {
            InputStream broken = new InputStream() {
                @Override
                public int read() throws IOException {
                    throw new IOException("the line went dead");
                }

                @Override
                public int read(byte[] bytes, int offset, int length) throws IOException {
                    return read();
                }
            };

            assertProblem(() -> TextFile.read("-", broken, 100), "-: cannot be read: the line went dead");
        }

        @Test
        void where_a_byte_is_no_text() {
            byte[] bytes = "one\r\nt\u00fc".getBytes(ISO_8859_1);

            assertProblem(() -> TextFile.decode("a", bytes), "a:2:2: is not UTF-8 text");
        }

        @Test
        void where_the_last_character_is_cut_off() {
            assertProblem(
                    () -> TextFile.decode("a", new byte[] {'x', (byte) 0xE2, (byte) 0x82}), "a:1:2: is not UTF-8 text");
        }

        @Test
        void with_a_place_that_does_not_count_the_byte_order_mark() {
            byte[] bytes = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'x', (byte) 0xFF};

            assertProblem(() -> TextFile.decode("a", bytes), "a:1:2: is not UTF-8 text");
        }
    }

    private Path file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static void assertProblem(ThrowingCallable reading, String told) {
        assertThat(catchThrowableOfType(ProblemException.class, reading).problems())
                .extracting(Problem::toString)
                .containsExactly(told);
    }
}
