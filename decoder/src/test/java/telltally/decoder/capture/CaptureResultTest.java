package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import telltally.decoder.capture.CaptureResult.Reason;

class CaptureResultTest {
    @ParameterizedTest
    @EnumSource
    void files_write_a_reason_in_small_letters_with_hyphens(Reason reason) {
        assertThat(reason.key())
                .isEqualTo(reason.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    @Test
    void there_is_a_key_for_every_reason() {
        assertThat(Reason.values())
                .extracting(Reason::key)
                .doesNotHaveDuplicates()
                .hasSize(9);
    }
}
