package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Counts;
import telltally.decoder.score.Line;
import telltally.decoder.timeline.Drawing;
import telltally.decoder.timeline.Drawing.Mark;

class CurveSvgTest {
    /** Places are written with one decimal, and published ends of intervals with four. */
    private static final Offset<Double> WRITTEN = within(0.08);

    private static final Counts HALF = HandMade.counts(1, 2);

    /** The intervals of the three counts are published: see {@link #BETWEEN}. */
    private static final Curve CURVE = new Curve(
            "jitter",
            Line.PIN,
            "share of each length",
            List.of(
                    new Curve.Point(
                            0.1, HandMade.counts(81, 263), Optional.of(HALF), Optional.of(HandMade.counts(4, 4))),
                    new Curve.Point(
                            0.2, HandMade.counts(15, 148), Optional.empty(), Optional.of(HandMade.counts(3, 4))),
                    new Curve.Point(
                            0.5,
                            HandMade.counts(0, 20),
                            Optional.of(HandMade.counts(0, 2)),
                            Optional.of(Counts.NOTHING))));

    /** Newcombe 1998, Statistics in Medicine 17:857-872, table I; from memory. */
    private static final double[][] BETWEEN = {{0.2553, 0.3662}, {0.0624, 0.1605}, {0, 0.1611}};

    private static final double[] SHARES = {81 / 263.0, 15 / 148.0, 0};

    private final Drawing drawing;

    CurveSvgTest() throws Exception {
        drawing = Drawing.of(CurveSvg.text(CURVE));
    }

    /** Where a strength stands: what is said at the foot. */
    private double x(String strength) {
        return drawing.text(strength).at("x");
    }

    /** Where a share stands, by the lines of 0 and 100 %. */
    private double y(double share) {
        double none = drawing.text("0 %").at("y");
        return none + share * (drawing.text("100 %").at("y") - none);
    }

    private List<Double> points(String kind) {
        List<Mark> paths = drawing.marks("path", kind);
        assertThat(paths).hasSize(1);
        return paths.get(0).numbers("d");
    }

    @Test
    void every_quarter_has_a_line_and_its_percents_before_it_from_none_at_the_foot_to_all_at_the_top() {
        List<Mark> grid = drawing.marks("path", "grid");
        assertThat(grid).hasSize(5);
        for (int i = 0; i < 5; i++) {
            Mark label = drawing.text(25 * i + " %");
            List<Double> line = grid.get(i).numbers("d");
            assertThat(label.at("y")).isEqualTo(line.get(1)).isEqualTo(y(i / 4.0), WRITTEN);
            assertThat(label.at("x")).isBetween(line.get(0) - 10, line.get(0));
            assertThat(label.said("text-anchor")).isEqualTo("end");
        }
        assertThat(y(1)).isPositive().isLessThan(y(0));
    }

    @Test
    void strengths_stand_in_proportion_below_the_lines_with_the_same_air_on_both_sides() {
        List<Double> foot = drawing.marks("path", "grid").get(0).numbers("d");
        double air = x("0.1") - foot.get(0);
        assertThat(air).isPositive();
        assertThat(x("0.5")).isEqualTo(foot.get(2) - air, WRITTEN);
        assertThat(x("0.2")).isEqualTo(x("0.1") + (x("0.5") - x("0.1")) / 4, WRITTEN);
        assertThat(drawing.text("0.1").at("y")).isGreaterThan(y(0));
        assertThat(drawing.text("0.1").said("text-anchor")).isEqualTo("middle");
    }

    @Test
    void the_name_stands_above_and_the_unit_below_everything_in_the_middle() {
        Mark title = drawing.text("jitter, pin");
        assertThat(title.at("y")).isLessThan(y(1));
        Mark unit = drawing.text("share of each length");
        List<Double> foot = drawing.marks("path", "grid").get(0).numbers("d");
        assertThat(unit.at("x")).isEqualTo((foot.get(0) + foot.get(2)) / 2, within(0.5));
        assertThat(unit.at("y"))
                .isGreaterThan(drawing.text("0.1").at("y"))
                .isLessThan(drawing.whole().numbers("viewBox").get(3));
    }

    @Test
    void the_decoder_is_a_line_through_a_dot_at_each_share_of_lists_right() {
        List<Double> line = points("decoder");
        List<Mark> dots = drawing.marks("circle", "dot");
        assertThat(dots).hasSize(3);
        String[] strengths = {"0.1", "0.2", "0.5"};
        for (int i = 0; i < 3; i++) {
            assertThat(dots.get(i).at("cx")).isEqualTo(x(strengths[i])).isEqualTo(line.get(2 * i));
            assertThat(dots.get(i).at("cy")).isEqualTo(line.get(2 * i + 1)).isEqualTo(y(SHARES[i]), WRITTEN);
        }
        assertThat(dots.get(1).words()).isEqualTo("0.2: 15 of 148 lists right");
    }

    @Test
    void bars_reach_from_end_to_end_of_the_interval() {
        List<Mark> bars = drawing.marks("path", "between");
        assertThat(bars).hasSize(3);
        String[] strengths = {"0.1", "0.2", "0.5"};
        for (int i = 0; i < 3; i++) {
            List<Double> bar = bars.get(i).numbers("d");
            assertThat(bar.get(0)).isEqualTo(x(strengths[i]));
            assertThat(bar.get(1)).isEqualTo(y(BETWEEN[i][0]), WRITTEN);
            assertThat(bar.get(2)).isEqualTo(y(BETWEEN[i][1]), WRITTEN);
        }
    }

    @Test
    void lines_of_the_others_pass_over_what_they_have_no_share_of() {
        assertThat(points("plain")).containsExactly(x("0.1"), y(0.5), x("0.5"), y(0));
        assertThat(points("told")).containsExactly(x("0.1"), y(1), x("0.2"), y(0.75));
    }

    @Test
    void what_did_not_run_beside_has_no_line() throws Exception {
        Curve alone = new Curve(
                "fade",
                Line.LAMP,
                "share",
                List.of(
                        new Curve.Point(1, HALF, Optional.empty(), Optional.empty()),
                        new Curve.Point(2, HALF, Optional.empty(), Optional.empty())));
        Drawing drawn = Drawing.of(CurveSvg.text(alone));
        assertThat(drawn.marks("path", "plain")).isEmpty();
        assertThat(drawn.marks("path", "told")).isEmpty();
        assertThat(drawn.marks("path", "decoder")).hasSize(1);
        assertThat(drawn.texts()).contains("1", "2");
    }

    @Test
    void it_is_told_in_words_for_those_who_cannot_see_it() {
        assertThat(drawing.whole().said("aria-label"))
                .isEqualTo("Whole lists right against jitter, pin: 30.8 % at 0.1, 10.1 % at 0.2, 0.0 % at 0.5");
    }
}
