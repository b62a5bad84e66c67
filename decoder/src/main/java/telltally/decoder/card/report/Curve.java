package telltally.decoder.card.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import telltally.decoder.card.Counts;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.score.CurvePoint;
import telltally.decoder.score.Line;

/**
 * Accuracy against noise on one line.
 *
 * @param family what the noise is
 * @param unit what its strength is counted in
 * @param points by strength
 */
record Curve(String family, Line line, String unit, List<Point> points) {
    /** One seed set; the counts of plain decoder and told lattice may be missing. */
    record Point(double strength, Counts decoder, Optional<Counts> plain, Optional<Counts> told) {}

    /** Every curve of at least two points, by name, the lamp first. */
    static List<Curve> of(ScoreCard card) {
        SortedMap<String, List<SetCard>> families = new TreeMap<>();
        for (SetCard set : card.sets()) {
            set.title()
                    .curve()
                    .ifPresent(place -> families.computeIfAbsent(place.family(), name -> new ArrayList<>())
                            .add(set));
        }
        List<Curve> curves = new ArrayList<>();
        for (List<SetCard> sets : families.values()) {
            for (Line line : Line.values()) {
                Curve curve = of(sets, line);
                if (curve.points().size() > 1) {
                    curves.add(curve);
                }
            }
        }
        return curves;
    }

    private static Curve of(List<SetCard> sets, Line line) {
        List<Point> points = new ArrayList<>();
        for (SetCard set : sets) {
            double strength = place(set).strength();
            for (LineCard each : set.lines()) {
                Counts counts = each.decoder().counts();
                if (each.line() == line && counts.lists() > 0) {
                    points.add(new Point(strength, counts, each.plain(), each.told()));
                }
            }
        }
        points.sort(Comparator.comparingDouble(Point::strength));
        CurvePoint first = place(sets.get(0));
        return new Curve(first.family(), line, first.unit(), points);
    }

    private static CurvePoint place(SetCard set) {
        return set.title().curve().orElseThrow();
    }
}
