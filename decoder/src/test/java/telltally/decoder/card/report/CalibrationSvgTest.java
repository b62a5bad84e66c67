package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.Calibration.Bin;
import telltally.decoder.timeline.Drawing;
import telltally.decoder.timeline.Drawing.Mark;

class CalibrationSvgTest {
    /** Places are written with one decimal, and published ends of intervals with four. */
    private static final Offset<Double> WRITTEN = within(0.08);

    /** Of 148 codes that claimed 12 %, 15 were right; of 263 that claimed 30 %, 81. */
    private static final Calibration CALIBRATION =
            HandMade.calibration(Map.of(2, new Bin(148, 15, 17_760_000), 6, new Bin(263, 81, 78_900_000)));

    private final Drawing drawing;

    CalibrationSvgTest() throws Exception {
        drawing = Drawing.of(CalibrationSvg.text(CALIBRATION));
    }

    private double x(double claimed) {
        double none = drawing.text("0").at("x");
        return none + claimed * (drawing.text("100").at("x") - none);
    }

    private double y(double right) {
        double none = drawing.text("0 %").at("y");
        return none + right * (drawing.text("100 %").at("y") - none);
    }

    @Test
    void both_axes_run_from_none_to_all_by_quarters() {
        List<Mark> grid = drawing.marks("path", "grid");
        assertThat(grid).hasSize(5);
        for (int i = 0; i < 5; i++) {
            List<Double> line = grid.get(i).numbers("d");
            Mark right = drawing.text(25 * i + " %");
            assertThat(right.at("y")).isEqualTo(line.get(1)).isEqualTo(y(i / 4.0), WRITTEN);
            assertThat(right.at("x")).isBetween(line.get(0) - 10, line.get(0));
            Mark claimed = drawing.text(Integer.toString(25 * i));
            assertThat(claimed.at("x")).isEqualTo(x(i / 4.0), WRITTEN);
            assertThat(claimed.at("y"))
                    .isBetween(y(0), drawing.text("claimed, percent").at("y"));
            assertThat(line.get(0)).isEqualTo(x(0));
            assertThat(line.get(2)).isEqualTo(x(1));
        }
        assertThat(y(1)).isPositive().isLessThan(y(0));
        assertThat(drawing.text("claimed, percent").at("x")).isEqualTo(x(0.5), within(0.5));
    }

    @Test
    void the_diagonal_is_where_probabilities_are_what_they_say() {
        assertThat(drawing.marks("path", "told")).hasSize(1);
        assertThat(drawing.marks("path", "told").get(0).numbers("d")).containsExactly(x(0), y(0), x(1), y(1));
    }

    @Test
    void a_dot_stands_where_claimed_and_right_meet_and_says_how_many_they_are() {
        List<Mark> dots = drawing.marks("circle", "dot");
        assertThat(dots).hasSize(2);
        assertThat(dots.get(0).at("cx")).isEqualTo(x(0.12), WRITTEN);
        assertThat(dots.get(0).at("cy")).isEqualTo(y(15 / 148.0), WRITTEN);
        assertThat(dots.get(0).words()).isEqualTo("15 of 148 right");
        assertThat(dots.get(1).at("cx")).isEqualTo(x(0.3), WRITTEN);
        assertThat(dots.get(1).at("cy")).isEqualTo(y(81 / 263.0), WRITTEN);
    }

    /** Newcombe 1998, Statistics in Medicine 17:857-872, table I; from memory. */
    @Test
    void bars_reach_from_end_to_end_of_the_interval() {
        List<Mark> bars = drawing.marks("path", "between");
        assertThat(bars).hasSize(2);
        double[][] between = {{0.0624, 0.1605}, {0.2553, 0.3662}};
        for (int i = 0; i < 2; i++) {
            List<Double> bar = bars.get(i).numbers("d");
            assertThat(bar.get(0))
                    .isEqualTo(drawing.marks("circle", "dot").get(i).at("cx"));
            assertThat(bar.get(1)).isEqualTo(y(between[i][0]), WRITTEN);
            assertThat(bar.get(2)).isEqualTo(y(between[i][1]), WRITTEN);
        }
    }

    @Test
    void a_dot_grows_with_the_root_of_its_codes_from_one_that_can_be_seen_to_three_times_that() throws Exception {
        Drawing drawn = Drawing.of(CalibrationSvg.text(HandMade.calibration(Map.of(
                0, new Bin(100, 0, 0),
                10, new Bin(400, 200, 200_000_000),
                19, new Bin(9_500, 9_500, 9_500_000_000L)))));
        List<Double> radii =
                drawn.marks("circle", "dot").stream().map(dot -> dot.at("r")).toList();
        // 1 %, 4 % and 95 % of all.
        assertThat(radii.get(0)).isEqualTo(3 + 6 * 0.1, WRITTEN);
        assertThat(radii.get(1)).isEqualTo(3 + 6 * 0.2, WRITTEN);
        assertThat(radii.get(2)).isBetween(3 + 6 * 0.95, 9.0);
    }
}
