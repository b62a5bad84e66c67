package telltally.decoder.card.report;

import java.util.List;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.compare.Comparison;
import telltally.decoder.card.compare.Comparison.Row;
import telltally.decoder.card.compare.Comparison.Verdict;
import telltally.decoder.card.statistics.Decimals;

/** What got better or worse since an older card. */
final class ComparisonHtml {
    private ComparisonHtml() {}

    static void write(HtmlText page, Comparison comparison) {
        page.element("h2", "Against the older card of " + comparison.beforeDecoder());
        page.element("p", "In short: " + ComparisonText.verdict(comparison));
        List<String> heads =
                List.of("seed set", "line", "", "cases", "right before", "now", "gained", "lost", "chance");
        page.tableHead(
                "Only rows with a change; chance by McNemar's exact test, corrected after Holm for the rows", 3, heads);
        for (Row row : comparison.rows()) {
            if (row.gained() + row.lost() > 0) {
                page.row(
                        3,
                        List.of(
                                row.set(),
                                row.line().key(),
                                row.verdict() == Verdict.SAME ? "" : CardJson.word(row.verdict()),
                                Decimals.grouped(row.cases()),
                                Decimals.grouped(row.beforeRight()),
                                Decimals.grouped(row.nowRight()),
                                Decimals.grouped(row.gained()),
                                Decimals.grouped(row.lost()),
                                Decimals.chance(row.corrected())));
            }
        }
        page.tableEnd();
        comparison.leftOut().forEach(each -> page.element("p", "Not compared: " + each));
    }
}
