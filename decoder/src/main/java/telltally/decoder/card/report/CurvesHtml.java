package telltally.decoder.card.report;

import java.util.List;
import telltally.decoder.card.Counts;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.statistics.Decimals;

/** Accuracy against noise, drawn and in numbers. */
final class CurvesHtml {
    private CurvesHtml() {}

    static void write(HtmlText page, ScoreCard card) {
        List<Curve> curves = Curve.of(card);
        if (curves.isEmpty()) {
            return;
        }
        page.element("h2", "Accuracy against noise");
        page.markup("<p>Whole lists right. <span class=\"key decoder\">full line, dots</span> ")
                .words(card.decoder() + ", bars: 95 % interval; ")
                .markup("<span class=\"key plain\">dashed</span> the plain decoder;"
                        + " <span class=\"key told\">dotted</span> the lattice that was told format and noise.</p>\n");
        page.markup("<div class=\"curves\">\n");
        for (Curve curve : curves) {
            page.markup("<figure>\n" + CurveSvg.text(curve) + "<details><summary>The numbers</summary>\n");
            List<String> heads = List.of(curve.unit(), "lists", "right", "95 % between", "plain", "told");
            page.tableHead(curve.family() + ", " + curve.line().key(), 1, heads);
            for (Curve.Point point : curve.points()) {
                Counts counts = point.decoder();
                page.row(
                        1,
                        List.of(
                                CurveSvg.strength(point),
                                Decimals.grouped(counts.lists()),
                                Shares.percent(counts.listsRight(), counts.lists()),
                                Shares.interval(counts.listsRight(), counts.lists()),
                                Shares.lists(point.plain()),
                                Shares.lists(point.told())));
            }
            page.tableEnd().markup("</details>\n</figure>\n");
        }
        page.markup("</div>\n");
    }
}
