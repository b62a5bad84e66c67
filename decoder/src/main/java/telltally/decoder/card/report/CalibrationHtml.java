package telltally.decoder.card.report;

import java.util.List;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.statistics.Decimals;

/** Probabilities that were claimed beside what came true of them. */
final class CalibrationHtml {
    private CalibrationHtml() {}

    static void write(HtmlText page, ScoreCard card) {
        Calibration all = Shares.everything(card).calibration();
        if (all.codes() == 0) {
            return;
        }
        page.element("h2", "Can its probabilities be trusted?");
        page.element(
                "p",
                "Of the codes that were given about this probability, how many were right. Expected calibration error "
                        + all.expectedError().orElseThrow().toPlainString() + ".");
        page.markup("<figure class=\"square\">\n" + CalibrationSvg.text(all) + "</figure>\n");
        page.tableHead("In percent", 0, List.of("claimed", "right", "95 % between", "codes"));
        for (Calibration.Bin bin : all.bins()) {
            if (bin.codes() > 0) {
                page.row(
                        0,
                        List.of(
                                Shares.percent(bin.millionths(), bin.codes() * Calibration.MILLION),
                                Shares.percent(bin.right(), bin.codes()),
                                Shares.interval(bin.right(), bin.codes()),
                                Decimals.grouped(bin.codes())));
            }
        }
        page.tableEnd();
    }
}
