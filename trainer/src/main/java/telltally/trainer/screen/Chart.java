package telltally.trainer.screen;

import java.util.List;

/**
 * Values over days, ready to be drawn or to be read out.
 *
 * @param title what it shows
 * @param points from left to right
 * @param marks heights that deserve a line, with what stands beside it
 */
public record Chart(String title, List<Point> points, List<Mark> marks) {
    public Chart {
        points = List.copyOf(points);
        marks = List.copyOf(marks);
    }

    /**
     * One value.
     *
     * @param across from 0 at the left to 1 at the right
     * @param up from 0 at the foot to 1 at the top
     * @param day as it is written below
     * @param value as it is written in the table
     */
    public record Point(double across, double up, String day, String value) {}

    /** A line at a height from 0 to 1. */
    public record Mark(double up, String label) {}

    /** For somebody who hears it: the title and every value. */
    public String spoken() {
        StringBuilder text = new StringBuilder(title).append('.');
        points.forEach(point -> text.append(' ')
                .append(point.day())
                .append(": ")
                .append(point.value())
                .append('.'));
        return text.toString();
    }
}
