package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.simulator.document.Place;

/** The rules are those of RFC 4180, section 2, by their numbers there. */
class CsvRecordsTest {
    @Nested
    class Rules {
        @Test
        void one_a_record_is_a_line() {
            assertThat(records("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))
                    .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
        }

        @Test
        void two_the_last_record_may_lack_its_line_end() {
            assertThat(records("aaa,bbb,ccc\r\nzzz,yyy,xxx"))
                    .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
        }

        @Test
        void four_blanks_belong_to_the_field_and_empty_fields_count() {
            assertThat(records(" a , b,\r\n,\r\n")).containsExactly(List.of(" a ", " b", ""), List.of("", ""));
        }

        @Test
        void five_fields_may_stand_in_quotes() {
            assertThat(records("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"))
                    .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
        }

        @Test
        void six_quoted_fields_may_hold_line_ends_and_commas() {
            assertThat(records("\"aaa\",\"b \r\nb,b\",\"ccc\"\r\nzzz,yyy,xxx"))
                    .containsExactly(List.of("aaa", "b \r\nb,b", "ccc"), List.of("zzz", "yyy", "xxx"));
        }

        @Test
        void seven_a_quote_within_quotes_is_doubled() {
            assertThat(records("\"aaa\",\"b\"\"bb\",\"ccc\"")).containsExactly(List.of("aaa", "b\"bb", "ccc"));
        }

        /** Read alike by Python's csv module and two packages for JavaScript, which were run on it. */
        @Test
        void all_together_four_records_of_three_fields() {
            assertThat(
                            records(
                                    "t_ms,lit,note\r\n0,1,\"say \"\"on\"\", then off\"\r\n500,0,\"two\r\nlines\"\r\n1000,1,\r\n"))
                    .containsExactly(
                            List.of("t_ms", "lit", "note"),
                            List.of("0", "1", "say \"on\", then off"),
                            List.of("500", "0", "two\r\nlines"),
                            List.of("1000", "1", ""));
        }
    }

    @Test
    void lines_may_end_with_lf_alone_and_empty_ones_are_passed_over() {
        assertThat(records("\n\r\na,b\n\n\nc,d\r\n\n")).containsExactly(List.of("a", "b"), List.of("c", "d"));
    }

    @Test
    void a_lone_cr_ends_nothing() {
        assertThat(records("a\rb\r")).containsExactly(List.of("a\rb\r"));
    }

    @Test
    void a_field_that_goes_on_after_its_quotes_is_handed_on_as_it_stands() {
        assertThat(records("\"1\" ,2\n3\"4\",5")).containsExactly(List.of("\"1\" ", "2"), List.of("3\"4\"", "5"));
    }

    @Test
    void a_quote_that_is_never_closed_takes_all_the_rest() {
        CsvRecords records = new CsvRecords("a,\"b\nc,d\n");

        assertThat(records.next()).isTrue();
        assertThat(records.unclosed()).isTrue();
        assertThat(records.place(1)).isEqualTo(new Place(1, 3));
        assertThat(records.next()).isFalse();
    }

    @Test
    void places_count_lines_within_quotes_too() {
        CsvRecords records = new CsvRecords("\"a\r\nb\",\"c\nd\",e\r\nf");

        assertThat(records.next()).isTrue();
        assertThat(records.place(0)).isEqualTo(new Place(1, 1));
        assertThat(records.place(1)).isEqualTo(new Place(2, 4));
        assertThat(records.place(2)).isEqualTo(new Place(3, 4));
        assertThat(records.end()).isEqualTo(new Place(3, 5));
        assertThat(records.next()).isTrue();
        assertThat(records.place(0)).isEqualTo(new Place(4, 1));
    }

    @Test
    void comments_may_hold_anything() {
        CsvRecords records = new CsvRecords("# a \"quote, and more\r\n\n#\n# end\na\n# b");
        records.skipComments();

        assertThat(records.next()).isTrue();
        assertThat(records.field(0)).isEqualTo("a");
        assertThat(records.place(0)).isEqualTo(new Place(5, 1));
        assertThat(records.next()).isTrue();
        assertThat(records.field(0)).isEqualTo("# b");
    }

    private static List<List<String>> records(String text) {
        List<List<String>> found = new ArrayList<>();
        CsvRecords records = new CsvRecords(text);
        while (records.next()) {
            List<String> fields = new ArrayList<>();
            for (int i = 0; i < records.count(); i++) {
                fields.add(records.field(i));
            }
            found.add(fields);
        }
        return found;
    }
}
