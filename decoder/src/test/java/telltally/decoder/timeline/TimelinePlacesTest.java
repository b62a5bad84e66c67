package telltally.decoder.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.timeline.Drawing.Mark;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** Where things stand on a timeline: in time along its rows, and above or below one another. */
class TimelinePlacesTest {
    private static final long MILLISECOND = 1_000_000;
    private static final long SECOND = 1000 * MILLISECOND;

    /** A row is so long; more rows than that are not drawn. */
    private static final long ROW_SECONDS = 20;

    private static final int MOST_ROWS = 600;

    /** Letters are so high above the line that they stand on. */
    private static final double LETTER = 12;

    /** Places are written with one decimal. */
    private static final Offset<Double> WRITTEN = within(0.051);

    private static final Reading NOTHING = reading(List.of(), List.of());

    private static Reading reading(List<Group> groups, List<Warning> warnings) {
        return new Reading(Optional.empty(), Map.of(), groups, warnings);
    }

    private static Group code(String digits, double probability, long startNanos, long endNanos) {
        return new Group(GroupKind.CODE, Segment.CODES, digits, probability, startNanos, endNanos, List.of());
    }

    private static Warning warning(long atNanos, String text) {
        return new Warning(atNanos, WarningKind.DOUBTFUL_GAP, text);
    }

    /** Dark but for one flash. */
    private static PulseTrain flash(long fromNanos, long toNanos, long endNanos) {
        return PulseTrain.of(false, endNanos, fromNanos, toNanos);
    }

    private static Drawing drawing(PulseTrain train, Reading reading) throws Exception {
        return Drawing.of(TimelineSvg.text(train, reading, "source"));
    }

    /** The lines that rows stand on. */
    private static List<Row> rows(Drawing drawing) {
        return drawing.marks("path").stream()
                .filter(path -> path.said("d").contains("H"))
                .map(path -> path.numbers("d"))
                .map(d -> new Row(d.get(0), d.get(1), d.get(2)))
                .toList();
    }

    /** The line of a row from its left to its right end. */
    private record Row(double left, double y, double right) {
        double x(double seconds) {
            return left + (right - left) * seconds / ROW_SECONDS;
        }
    }

    private static List<Mark> bars(Drawing drawing) {
        return drawing.marks("rect").stream()
                .filter(rect -> rect.words().startsWith("flash"))
                .toList();
    }

    private static List<Mark> frames(Drawing drawing) {
        return drawing.marks("rect").stream()
                .filter(rect -> rect.said("fill").equals("none"))
                .toList();
    }

    /** The marks of warnings: upright lines. */
    private static List<Mark> warnings(Drawing drawing) {
        return drawing.marks("path").stream()
                .filter(path -> path.said("d").contains("v"))
                .toList();
    }

    private static double distance(List<Row> rows) {
        return rows.get(1).y() - rows.get(0).y();
    }

    @Test
    void there_is_a_row_for_every_twenty_seconds_begun() throws Exception {
        assertThat(rows(drawing(flash(1, 2, 20 * SECOND), NOTHING))).hasSize(1);
        assertThat(rows(drawing(flash(1, 2, 20 * SECOND + 1), NOTHING))).hasSize(2);
        assertThat(rows(drawing(flash(1, 2, 60 * SECOND), NOTHING))).hasSize(3);
    }

    @Test
    void rows_are_alike_one_below_the_other_with_the_same_margin_on_every_side() throws Exception {
        Drawing one = drawing(flash(1, 2, 20 * SECOND), NOTHING);
        Drawing three = drawing(flash(1, 2, 60 * SECOND), NOTHING);
        List<Row> rows = rows(three);
        double distance = distance(rows);
        assertThat(distance).isPositive();
        assertThat(rows.get(2).y() - rows.get(1).y()).isEqualTo(distance);
        double margin = rows.get(0).left();
        assertThat(rows)
                .allMatch(row ->
                        row.left() == margin && row.right() == three.whole().at("width") - margin);
        assertThat(three.whole().at("height")).isEqualTo(margin + 3 * distance + margin);
        assertThat(one.whole().at("height")).isEqualTo(margin + distance + margin);
        assertThat(rows.get(0).y()).isEqualTo(rows(one).get(0).y()).isBetween(margin, margin + distance);
    }

    @Test
    void each_row_has_the_second_that_it_begins_at_before_its_line() throws Exception {
        Drawing drawing = drawing(flash(1, 2, 60 * SECOND), NOTHING);
        List<Row> rows = rows(drawing);
        for (int i = 0; i < 3; i++) {
            Mark label = drawing.text(20 * i + " s");
            assertThat(label.at("y")).isEqualTo(rows.get(i).y());
            assertThat(label.said("text-anchor")).isEqualTo("end");
            assertThat(label.at("x"))
                    .isBetween(rows.get(i).left() - 10, rows.get(i).left());
        }
    }

    @Test
    void a_bar_stands_on_the_line_of_its_row_from_the_first_to_the_last_instant_of_its_flash() throws Exception {
        Drawing drawing = drawing(flash(24 * SECOND, 29 * SECOND, 40 * SECOND), NOTHING);
        Row row = rows(drawing).get(1);
        assertThat(bars(drawing)).hasSize(1);
        Mark bar = bars(drawing).get(0);
        assertThat(bar.at("x")).isEqualTo(row.x(4), WRITTEN);
        assertThat(bar.right()).isEqualTo(row.x(9), WRITTEN);
        assertThat(bar.foot()).isEqualTo(row.y());
        assertThat(bar.words()).isEqualTo("flash 1: 24 s, lit 5 s");
    }

    @Test
    void a_flash_goes_on_in_the_next_row() throws Exception {
        Drawing drawing = drawing(flash(15 * SECOND, 45 * SECOND, 60 * SECOND), NOTHING);
        List<Row> rows = rows(drawing);
        List<Mark> bars = bars(drawing);
        assertThat(bars)
                .extracting(Mark::foot)
                .containsExactlyElementsOf(rows.stream().map(Row::y).toList());
        Row line = rows.get(0);
        assertThat(bars.get(0).at("x")).isEqualTo(line.x(15), WRITTEN);
        assertThat(bars.get(0).right()).isEqualTo(line.right(), WRITTEN);
        assertThat(bars.get(1).at("x")).isEqualTo(line.left(), WRITTEN);
        assertThat(bars.get(1).right()).isEqualTo(line.right(), WRITTEN);
        assertThat(bars.get(2).at("x")).isEqualTo(line.left(), WRITTEN);
        assertThat(bars.get(2).right()).isEqualTo(line.x(5), WRITTEN);
    }

    @Test
    void a_flash_that_ends_with_its_row_leaves_nothing_in_the_next() throws Exception {
        assertThat(bars(drawing(flash(19 * SECOND, 20 * SECOND, 40 * SECOND), NOTHING)))
                .hasSize(1);
        assertThat(bars(drawing(flash(20 * SECOND, 21 * SECOND, 40 * SECOND), NOTHING)))
                .hasSize(1);
        assertThat(bars(drawing(flash(19 * SECOND, 20 * SECOND + 1, 40 * SECOND), NOTHING)))
                .hasSize(2);
    }

    @Test
    void the_shortest_flash_can_still_be_seen_and_flashes_are_numbered_through() throws Exception {
        PulseTrain train = PulseTrain.of(
                false, 5 * SECOND, SECOND, SECOND + 1, 2 * SECOND, 2 * SECOND + 345 * MILLISECOND, 4 * SECOND);
        List<Mark> bars = bars(drawing(train, NOTHING));
        assertThat(bars)
                .extracting(Mark::words)
                .containsExactly("flash 1: 1 s, lit 0 s", "flash 2: 2 s, lit 0.35 s", "flash 3: 4 s, lit 1 s");
        assertThat(bars.get(0).at("width")).isEqualTo(1);
    }

    @Test
    void a_gap_of_three_tenths_or_more_has_its_length_in_its_middle_between_the_bars() throws Exception {
        PulseTrain train = PulseTrain.of(
                true,
                32 * SECOND,
                21 * SECOND,
                24 * SECOND + 250 * MILLISECOND,
                25 * SECOND,
                25 * SECOND + 300 * MILLISECOND,
                26 * SECOND,
                26 * SECOND + 299 * MILLISECOND);
        Drawing drawing = drawing(train, NOTHING);
        Row row = rows(drawing).get(1);
        assertThat(drawing.texts()).containsExactly("source", "0 s", "20 s", "3.25", "0.3");
        Mark label = drawing.text("3.25");
        assertThat(label.at("x")).isEqualTo(row.x((1 + 4.25) / 2), WRITTEN);
        assertThat(label.said("text-anchor")).isEqualTo("middle");
        Mark bar = bars(drawing).get(1);
        assertThat(label.at("y")).isBetween(bar.at("y") + LETTER, bar.foot());
    }

    @Test
    void the_number_of_a_flash_within_its_group_stands_below_the_middle_of_its_bar() throws Exception {
        PulseTrain train = PulseTrain.of(
                false,
                40 * SECOND,
                22 * SECOND,
                23 * SECOND,
                25_500 * MILLISECOND,
                28 * SECOND,
                35 * SECOND,
                36 * SECOND);
        Drawing drawing = drawing(train, reading(List.of(code("2", 1, 22 * SECOND, 28 * SECOND)), List.of()));
        Row row = rows(drawing).get(1);
        assertThat(drawing.text("1").at("x")).isEqualTo(row.x(2.5), WRITTEN);
        Mark second = drawing.text("2");
        assertThat(second.at("x")).isEqualTo(row.x(6.75), WRITTEN);
        assertThat(second.said("text-anchor")).isEqualTo("middle");
        assertThat(second.at("y"))
                .isBetween(row.y() + LETTER, frames(drawing).get(0).foot());
        assertThat(drawing.texts()).doesNotContain("0", "3");
    }

    @Test
    void a_frame_holds_the_bars_of_its_group_with_the_same_air_on_both_sides_and_its_words_above_them()
            throws Exception {
        Drawing drawing = drawing(
                flash(22 * SECOND, 26 * SECOND, 40 * SECOND),
                reading(List.of(code("41", 0.9, 22 * SECOND, 26 * SECOND)), List.of()));
        Row row = rows(drawing).get(1);
        assertThat(frames(drawing)).hasSize(1);
        Mark frame = frames(drawing).get(0);
        double air = row.x(2) - frame.at("x");
        assertThat(air).isPositive();
        assertThat(frame.right()).isEqualTo(row.x(6) + air, WRITTEN);
        Mark bar = bars(drawing).get(0);
        Mark words = drawing.text("code 41 0.90");
        assertThat(words.said("text-anchor")).isEqualTo("start");
        assertThat(words.at("x")).isBetween(frame.at("x"), frame.at("x") + 10);
        assertThat(words.at("y")).isBetween(frame.at("y") + LETTER, bar.at("y"));
        assertThat(frame.foot()).isGreaterThan(bar.foot());
    }

    @Test
    void a_frame_ends_with_the_row_that_its_group_begins_in() throws Exception {
        Drawing drawing = drawing(
                flash(38 * SECOND, 45 * SECOND, 60 * SECOND),
                reading(List.of(code("1", 1, 38 * SECOND, 45 * SECOND)), List.of()));
        Row row = rows(drawing).get(1);
        Mark frame = frames(drawing).get(0);
        double air = row.x(18) - frame.at("x");
        assertThat(frame.right()).isEqualTo(row.right() + air, WRITTEN);
    }

    @Test
    void a_doubtful_group_has_a_dashed_frame_and_a_question_mark() throws Exception {
        PulseTrain train = flash(SECOND, 2 * SECOND, 20 * SECOND);
        Drawing sure = drawing(train, reading(List.of(code("3", 0.9, SECOND, 2 * SECOND)), List.of()));
        Drawing doubtful = drawing(train, reading(List.of(code("3", 0.8999, SECOND, 2 * SECOND)), List.of()));
        assertThat(frames(sure).get(0).said("stroke-dasharray")).isEmpty();
        assertThat(frames(doubtful).get(0).said("stroke-dasharray")).isNotEmpty();
        assertThat(doubtful.text("code 3? 0.89").said("fill"))
                .isEqualTo(frames(doubtful).get(0).said("stroke"))
                .isNotEqualTo(sure.text("code 3 0.90").said("fill"));
    }

    @Test
    void a_group_without_digits_is_called_by_its_kind() throws Exception {
        Group steady = new Group(GroupKind.STEADY, Segment.CODES, "", 0.999, SECOND, 2 * SECOND, List.of());
        assertThat(drawing(flash(SECOND, 2 * SECOND, 20 * SECOND), reading(List.of(steady), List.of()))
                        .texts())
                .contains("steady 0.99");
    }

    @Test
    void a_warning_cuts_through_the_bars_at_its_instant_and_its_text_stands_free_below() throws Exception {
        Drawing drawing = drawing(
                flash(22 * SECOND, 26 * SECOND, 60 * SECOND),
                reading(List.of(code("1", 1, 22 * SECOND, 26 * SECOND)), List.of(warning(24 * SECOND, "look here"))));
        Row row = rows(drawing).get(1);
        Mark bar = bars(drawing).get(0);
        assertThat(warnings(drawing)).hasSize(1);
        List<Double> mark = warnings(drawing).get(0).numbers("d");
        assertThat(mark.get(0)).isEqualTo(row.x(4), WRITTEN);
        assertThat(mark.get(1)).isLessThan(bar.at("y"));
        assertThat(mark.get(1) + mark.get(2)).isGreaterThan(bar.foot());
        Mark words = drawing.text("! look here");
        assertThat(words.at("x")).isBetween(mark.get(0), mark.get(0) + 10);
        double nextFrame = frames(drawing).get(0).at("y") + distance(rows(drawing));
        assertThat(words.at("y")).isBetween(frames(drawing).get(0).foot() + LETTER, nextFrame);
    }

    @Test
    void the_text_of_a_warning_in_the_last_row_leaves_the_margin_free() throws Exception {
        Drawing drawing = drawing(flash(1, 2, 20 * SECOND), reading(List.of(), List.of(warning(SECOND, "look here"))));
        double margin = rows(drawing).get(0).left();
        assertThat(drawing.text("! look here").at("y"))
                .isLessThan(drawing.whole().at("height") - margin);
    }

    @Test
    void the_text_of_a_warning_runs_to_the_side_where_there_is_more_room() throws Exception {
        Drawing drawing = drawing(
                flash(1, 2, 20 * SECOND),
                reading(
                        List.of(),
                        List.of(
                                warning(9 * SECOND, "before"),
                                warning(10 * SECOND, "in the very middle"),
                                warning(11 * SECOND, "after"))));
        assertThat(drawing.text("! before").said("text-anchor")).isEqualTo("start");
        assertThat(drawing.text("! in the very middle").said("text-anchor")).isEqualTo("start");
        assertThat(drawing.text("! after").said("text-anchor")).isEqualTo("end");
    }

    @Test
    void a_recording_that_fills_the_last_row_is_whole_and_a_longer_one_says_that_it_is_cut() throws Exception {
        long most = MOST_ROWS * ROW_SECONDS * SECOND;
        Drawing whole = drawing(flash(1, 2, most), NOTHING);
        Drawing cut = drawing(flash(1, 2, most + 1), NOTHING);
        assertThat(rows(whole)).hasSize(MOST_ROWS);
        assertThat(rows(cut)).hasSize(MOST_ROWS);
        assertThat(whole.texts()).contains("source");
        assertThat(cut.texts()).contains("source (the first part)");
    }

    @Test
    void what_begins_after_the_last_row_is_not_drawn() throws Exception {
        long most = MOST_ROWS * ROW_SECONDS * SECOND;
        PulseTrain train = PulseTrain.of(
                false, most + 100 * SECOND, most - 5 * SECOND, most - 4 * SECOND, most + 4 * SECOND, most + 5 * SECOND);
        Group beyond = code("7", 1, most, most + SECOND);
        Drawing drawing = drawing(train, reading(List.of(beyond), List.of(warning(most, "too late"))));
        assertThat(bars(drawing)).hasSize(1);
        assertThat(frames(drawing)).isEmpty();
        assertThat(warnings(drawing)).isEmpty();
        assertThat(drawing.texts())
                .as("neither a group nor a warning, nor the gap whose middle is the end of the last row")
                .allMatch(text -> text.startsWith("source") || text.endsWith(" s") || text.equals("11995"));
    }

    @Test
    void a_flash_beyond_the_end_of_the_last_row_is_drawn_up_to_there() throws Exception {
        long most = MOST_ROWS * ROW_SECONDS * SECOND;
        Drawing drawing = drawing(
                flash(most - SECOND, most + SECOND, most + 20 * SECOND),
                reading(List.of(code("1", 1, most - SECOND, most + SECOND)), List.of()));
        Row last = rows(drawing).get(MOST_ROWS - 1);
        assertThat(bars(drawing)).hasSize(1);
        assertThat(bars(drawing).get(0).right()).isEqualTo(last.right(), WRITTEN);
        assertThat(drawing.texts())
                .as("the middle is beyond, and the number with it")
                .doesNotContain("1");
    }
}
