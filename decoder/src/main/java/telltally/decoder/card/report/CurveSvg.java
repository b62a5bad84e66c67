package telltally.decoder.card.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import telltally.decoder.card.Counts;
import telltally.decoder.card.report.Curve.Point;
import telltally.decoder.card.statistics.Decimals;
import telltally.decoder.card.statistics.WilsonInterval;

/**
 * A curve as SVG: the decoder as a full line with dots and its intervals as bars, the plain decoder dashed, the told
 * lattice dotted, so that no colour is needed to tell them apart. Colours come from the page.
 */
final class CurveSvg {
    private static final int WIDTH = 460;
    private static final int HEIGHT = 280;
    private static final int LEFT = 52;
    private static final int RIGHT = 24;
    private static final int TOP = 34;
    private static final int BOTTOM = 46;

    private final Curve curve;
    private final HtmlText svg = new HtmlText();

    private CurveSvg(Curve curve) {
        this.curve = curve;
    }

    static String text(Curve curve) {
        return new CurveSvg(curve).drawn();
    }

    private String drawn() {
        String name = curve.family() + ", " + curve.line().key();
        svg.markup("<svg viewBox=\"0 0 " + WIDTH + " " + HEIGHT + "\" role=\"img\" aria-label=\"")
                .words("Whole lists right against " + name + ": " + inWords())
                .markup("\">\n");
        label(LEFT, 18, "start", "title", name);
        axes();
        line("told", point -> point.told().flatMap(CurveSvg::share));
        line("plain", point -> point.plain().flatMap(CurveSvg::share));
        curve.points().forEach(this::bar);
        line("decoder", point -> share(point.decoder()));
        curve.points().forEach(this::dot);
        return svg.markup("</svg>\n").toString();
    }

    private String inWords() {
        return curve.points().stream()
                .map(point -> Decimals.percent(
                                point.decoder().listsRight(), point.decoder().lists())
                        + " % at " + strength(point))
                .collect(Collectors.joining(", "));
    }

    private void axes() {
        for (int percent = 0; percent <= 100; percent += 25) {
            String y = y(percent / 100.0);
            svg.markup("<path class=\"grid\" d=\"M" + LEFT + " " + y + "H" + (WIDTH - RIGHT) + "\"/>\n");
            svg.markup("<text x=\"" + (LEFT - 6) + "\" y=\"" + y + "\" dy=\"4\" text-anchor=\"end\">" + percent
                    + " %</text>\n");
        }
        for (int i = 0; i < curve.points().size(); i++) {
            svg.markup("<text x=\"" + x(i) + "\" y=\"" + (HEIGHT - BOTTOM + 18) + "\" text-anchor=\"middle\">")
                    .words(strength(curve.points().get(i)))
                    .markup("</text>\n");
        }
        label((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 8, "middle", "unit", curve.unit());
    }

    private void label(int x, int y, String anchor, String kind, String words) {
        svg.markup("<text class=\"" + kind + "\" x=\"" + x + "\" y=\"" + y + "\" text-anchor=\"" + anchor + "\">")
                .words(words)
                .markup("</text>\n");
    }

    /** Points that have no share are passed over. */
    private void line(String kind, Function<Point, Optional<Double>> share) {
        List<Point> points = curve.points();
        String path = IntStream.range(0, points.size())
                .filter(i -> share.apply(points.get(i)).isPresent())
                .mapToObj(i -> x(i) + " " + y(share.apply(points.get(i)).orElseThrow()))
                .collect(Collectors.joining("L"));
        if (!path.isEmpty()) {
            svg.markup("<path class=\"" + kind + "\" d=\"M" + path + "\"/>\n");
        }
    }

    private void bar(Point point) {
        Counts counts = point.decoder();
        WilsonInterval between = WilsonInterval.of(counts.listsRight(), counts.lists());
        String x = x(curve.points().indexOf(point));
        svg.markup("<path class=\"between\" d=\"M" + x + " " + y(between.low()) + "V" + y(between.high()) + "\"/>\n");
    }

    private void dot(Point point) {
        Counts counts = point.decoder();
        svg.markup("<circle class=\"dot\" r=\"4\" cx=\"" + x(curve.points().indexOf(point)) + "\" cy=\""
                        + y(share(counts).orElseThrow()) + "\"><title>")
                .words(strength(point) + ": " + counts.listsRight() + " of " + counts.lists() + " lists right")
                .markup("</title></circle>\n");
    }

    private static Optional<Double> share(Counts counts) {
        return counts.lists() == 0 ? Optional.empty() : Optional.of((double) counts.listsRight() / counts.lists());
    }

    static String strength(Point point) {
        return BigDecimal.valueOf(point.strength()).stripTrailingZeros().toPlainString();
    }

    /** Strengths stand in proportion. */
    private String x(int index) {
        double least = curve.points().get(0).strength();
        double most = curve.points().get(curve.points().size() - 1).strength();
        double share = (curve.points().get(index).strength() - least) / (most - least);
        return Decimals.fixed(LEFT + 12 + share * (WIDTH - LEFT - RIGHT - 24), 1);
    }

    private static String y(double share) {
        return Decimals.fixed(TOP + (1 - share) * (HEIGHT - TOP - BOTTOM), 1);
    }
}
