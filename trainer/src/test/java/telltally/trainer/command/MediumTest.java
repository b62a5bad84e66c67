package telltally.trainer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MediumTest {
    /** Bytes that are no text are written as %xx. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
            time_s,                         TEXT
            $timescale,                     TEXT
            %ff%fet%00,                     TEXT
            RIFF%24%00%00%00WAVE,           SOUND
            RIFF%24%00%00%00AVI LIST,       CLIP
            %00%00%00%18ftypmp42,           CLIP
            %00%00%00%08wide%00%00,         CLIP
            %1aE%df%a3%01,                  CLIP
            %00%00%00%1cftypM4A ,           OTHER_SOUND
            ID3%04,                         OTHER_SOUND
            OggS%00,                        OTHER_SOUND
            %ff%fb%90,                      OTHER_SOUND
            %89PNG%0d,                      PICTURE
            %ff%d8%ff%e0,                   PICTURE
            PK%03%04,                       PACKED
            %1f%8b%08,                      PACKED
            """)
    void a_file_is_known_by_its_first_bytes(String start, Medium expected) {
        assertThat(Medium.of(bytes(start))).isEqualTo(expected);
    }

    @Test
    void nothing_is_too_short() {
        assertThat(Medium.of(new byte[0])).isEqualTo(Medium.TEXT);
    }

    @Test
    void what_is_not_read_is_answered_with_what_to_do(@TempDir Path folder) throws IOException {
        Path memo = Files.write(folder.resolve("memo.m4a"), bytes("%00%00%00%1cftypM4A "));
        CommandRun run = CommandRun.of("decode", memo.toString());
        assertThat(run.errorLines())
                .containsExactly(memo + ": is a sound in a coding that is not read; record or convert it as WAV");
        assertThat(run.status()).isEqualTo(2);
    }

    private static byte[] bytes(String text) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            boolean coded = text.charAt(i) == '%';
            all.append(coded ? (char) Integer.parseInt(text.substring(i + 1, i + 3), 16) : text.charAt(i));
            i += coded ? 2 : 0;
        }
        return all.toString().getBytes(StandardCharsets.ISO_8859_1);
    }
}
