package telltally.decoder.card.report;

import telltally.decoder.card.Calibration;
import telltally.decoder.card.statistics.Decimals;
import telltally.decoder.card.statistics.WilsonInterval;

/** Claimed against right as SVG: on the diagonal, probabilities are what they say. The larger a dot, the more codes. */
final class CalibrationSvg {
    private static final int SIZE = 320;
    private static final int LEFT = 52;
    private static final int TOP = 16;
    private static final int BOTTOM = 44;
    private static final int RIGHT = 16;

    private CalibrationSvg() {}

    static String text(Calibration calibration) {
        HtmlText svg = new HtmlText();
        svg.markup("<svg viewBox=\"0 0 " + SIZE + " " + SIZE + "\" role=\"img\""
                + " aria-label=\"Share right against probability claimed; the numbers are in the table below\">\n");
        for (int percent = 0; percent <= 100; percent += 25) {
            double share = percent / 100.0;
            svg.markup("<path class=\"grid\" d=\"M" + LEFT + " " + y(share) + "H" + (SIZE - RIGHT) + "\"/>\n");
            svg.markup("<text x=\"" + (LEFT - 6) + "\" y=\"" + y(share) + "\" dy=\"4\" text-anchor=\"end\">" + percent
                    + " %</text>\n");
            svg.markup("<text x=\"" + x(share) + "\" y=\"" + (SIZE - BOTTOM + 18) + "\" text-anchor=\"middle\">"
                    + percent + "</text>\n");
        }
        svg.markup("<text class=\"unit\" x=\"" + (LEFT + SIZE - RIGHT) / 2 + "\" y=\"" + (SIZE - 8)
                + "\" text-anchor=\"middle\">claimed, percent</text>\n");
        svg.markup("<path class=\"told\" d=\"M" + x(0) + " " + y(0) + "L" + x(1) + " " + y(1) + "\"/>\n");
        for (Calibration.Bin bin : calibration.bins()) {
            if (bin.codes() > 0) {
                dot(svg, bin, calibration.codes());
            }
        }
        return svg.markup("</svg>\n").toString();
    }

    private static void dot(HtmlText svg, Calibration.Bin bin, long all) {
        double claimed = (double) bin.millionths() / (bin.codes() * Calibration.MILLION);
        double right = (double) bin.right() / bin.codes();
        WilsonInterval between = WilsonInterval.of(bin.right(), bin.codes());
        svg.markup("<path class=\"between\" d=\"M" + x(claimed) + " " + y(between.low()) + "V" + y(between.high())
                + "\"/>\n");
        String radius = Decimals.fixed(3 + 6 * Math.sqrt((double) bin.codes() / all), 1);
        svg.markup("<circle class=\"dot\" r=\"" + radius + "\" cx=\"" + x(claimed) + "\" cy=\"" + y(right)
                        + "\"><title>")
                .words(bin.right() + " of " + bin.codes() + " right")
                .markup("</title></circle>\n");
    }

    private static String x(double share) {
        return Decimals.fixed(LEFT + share * (SIZE - LEFT - RIGHT), 1);
    }

    private static String y(double share) {
        return Decimals.fixed(TOP + (1 - share) * (SIZE - TOP - BOTTOM), 1);
    }
}
