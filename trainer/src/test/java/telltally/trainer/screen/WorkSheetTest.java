package telltally.trainer.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import telltally.trainer.text.Texts;

class WorkSheetTest {
    private final FlashFormat format = FormatCatalog.shipped().find("pair-even").orElseThrow();
    private final WorkSheet sheet =
            new WorkSheet(Texts.in(Locale.ENGLISH), format, List.of(Segment.PRESENT, Segment.STORED));

    private void type(String signs) {
        signs.chars().forEach(sign -> sheet.type(Character.toString(sign)));
    }

    @Test
    void digits_become_codes_under_the_heading_that_is_active() {
        type("34");
        sheet.finish();
        type("42");
        sheet.finish();
        sheet.next();
        type("15");

        assertThat(sheet.answers().codes(Segment.PRESENT)).containsExactly("34", "42");
        assertThat(sheet.answers().codes(Segment.STORED))
                .as("an unfinished code counts as it stands")
                .containsExactly("15");
    }

    @Test
    void only_digits_are_written_where_codes_are_digits() {
        type("3a4 -\r");

        assertThat(sheet.columns().get(0).typingProperty().get()).isEqualTo("34");
    }

    @Test
    void backspace_takes_the_last_digit_and_then_opens_the_last_code_again() {
        type("34");
        sheet.finish();
        type("4");
        sheet.erase();
        assertThat(sheet.columns().get(0).codes()).containsExactly("34");
        sheet.erase();
        assertThat(sheet.columns().get(0).typingProperty().get()).isEqualTo("34");
        sheet.erase();
        type("5");
        sheet.finish();

        assertThat(sheet.columns().get(0).codes()).containsExactly("35");
    }

    @Test
    void backspace_on_an_empty_sheet_does_nothing() {
        sheet.erase();

        assertThat(sheet.answers().segments()).isEmpty();
    }

    @Test
    void enter_on_an_empty_line_goes_to_the_next_heading_and_no_further_than_the_last() {
        sheet.finish();
        assertThat(sheet.activeProperty().get()).isEqualTo(1);
        sheet.finish();
        sheet.next();
        assertThat(sheet.activeProperty().get()).isEqualTo(1);
        sheet.previous();
        sheet.previous();
        assertThat(sheet.activeProperty().get()).isZero();
    }

    @Test
    void a_stuck_key_does_not_fill_the_sheet() {
        type("4".repeat(500));

        assertThat(sheet.columns().get(0).typingProperty().get()).hasSize(12);
    }

    @Test
    void a_column_can_be_heard() {
        type("34");
        sheet.finish();
        type("4");

        assertThat(sheet.columns().get(0).spoken()).isEqualTo("Present: 34, writing 4");
        assertThat(sheet.columns().get(1).spoken()).isEqualTo("Stored: nothing written");
    }
}
