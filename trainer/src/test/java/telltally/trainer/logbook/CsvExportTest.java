package telltally.trainer.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Read back by commons-csv, a reader that knows nothing of ours. */
class CsvExportTest {
    private static final Learner MIRA = new Learner(1, "Mira", SampleEntries.MORNING);

    private static String exported(Learner learner, Entry entry) throws IOException {
        StringBuilder text = new StringBuilder();
        CsvExport export = new CsvExport(text);
        export.header();
        if (entry instanceof DrillEntry drill) {
            export.drill(learner, drill);
        } else {
            export.lesson(learner, (LessonEntry) entry);
        }
        return text.toString();
    }

    private static CSVRecord readBack(String text) throws IOException {
        List<CSVRecord> records = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text))
                .getRecords();
        assertThat(records).hasSize(1);
        return records.get(0);
    }

    @Test
    void a_drill_has_a_line_with_everything_about_it() throws IOException {
        DrillEntry drill = SampleEntries.drill("written codes:8@5400");
        CSVRecord line = readBack(exported(MIRA, drill));

        assertThat(line.toMap())
                .containsEntry("id", drill.id().toString())
                .containsEntry("learner", "Mira")
                .containsEntry("answered_at", "2026-03-02T09:15:30.250Z")
                .containsEntry("kind", "drill")
                .containsEntry("name", "count-a-digit")
                .containsEntry("level", "4")
                .containsEntry("item", "9")
                .containsEntry("right", "no")
                .containsEntry("expected", "written codes:9@5400")
                .containsEntry("given", "written codes:8@5400")
                .containsEntry("credits", "count-a-digit 4 9 wrong; end-of-a-code 4 right")
                .containsEntry("answer_s", "75.250")
                .containsEntry("lag_s", "0.009")
                .containsEntry("seed", "17");
    }

    @Test
    void a_lesson_has_a_line_with_its_codes() throws IOException {
        CSVRecord line = readBack(exported(MIRA, SampleEntries.lesson()));

        assertThat(line.get("kind")).isEqualTo("lesson");
        assertThat(line.get("expected")).isEqualTo("present:34 stored:15");
        assertThat(line.get("given")).isEqualTo("present:35 stored:15");
        assertThat(line.get("codes_right")).isEqualTo("1");
    }

    /** RFC 4180, section 2: lines end in CR LF; commas, quotes and line ends are quoted, quotes doubled. */
    @Test
    void cells_are_quoted_as_the_standard_says() throws IOException {
        String text =
                exported(new Learner(1, "O\"Hara, Mira\r\nJr", SampleEntries.MORNING), SampleEntries.drill("none"));

        assertThat(text).contains(",\"O\"\"Hara, Mira\r\nJr\",").endsWith("\r\n");
        assertThat(readBack(text).get("learner")).isEqualTo("O\"Hara, Mira\r\nJr");
    }

    @Test
    void no_cell_is_a_formula_to_a_spreadsheet() throws IOException {
        for (String name : List.of("=1+1", "+1", "-1+2", "@SUM(A1)", "'tis")) {
            String cell = readBack(exported(new Learner(1, name, SampleEntries.MORNING), SampleEntries.drill("none")))
                    .get("learner");
            assertThat(cell).isEqualTo("'" + name);
        }
    }

    @Property(tries = 200)
    void whatever_a_learner_is_called_comes_back(@ForAll @StringLength(max = 20) String name) throws IOException {
        String cell = readBack(exported(new Learner(1, name, SampleEntries.MORNING), SampleEntries.drill("none")))
                .get("learner");

        assertThat(cell.startsWith("'") ? cell.substring(1) : cell).isEqualTo(name);
    }
}
