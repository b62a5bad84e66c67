package telltally.decoder.card.report;

import java.util.List;
import java.util.Locale;
import telltally.decoder.card.compare.Comparison;
import telltally.decoder.card.compare.Comparison.Row;
import telltally.decoder.card.compare.Comparison.Verdict;
import telltally.decoder.card.statistics.Decimals;

/** A comparison for the terminal. */
public final class ComparisonText {
    private ComparisonText() {}

    /** @param against how the user named the older card */
    public static String text(Comparison comparison, String against) {
        StringBuilder text = new StringBuilder("Against " + against
                + (comparison.beforeDecoder().equals(comparison.nowDecoder())
                        ? ""
                        : ", the card of " + comparison.beforeDecoder())
                + ": ");
        text.append(verdict(comparison)).append('\n');
        TextTable table = new TextTable(2, "", "", "cases", "right before", "now", "gained", "lost", "chance", "");
        for (Row row : comparison.rows()) {
            if (row.gained() + row.lost() > 0) {
                table.row(List.of(
                        row.set(),
                        row.line().key(),
                        Decimals.grouped(row.cases()),
                        Decimals.grouped(row.beforeRight()),
                        Decimals.grouped(row.nowRight()),
                        Decimals.grouped(row.gained()),
                        Decimals.grouped(row.lost()),
                        Decimals.chance(row.corrected()),
                        row.verdict() == Verdict.SAME
                                ? ""
                                : row.verdict().name().toLowerCase(Locale.ROOT)));
            }
        }
        if (!table.empty()) {
            text.append(table.text("  "));
            text.append(
                    "  chance: how often as much would change by chance alone; McNemar's test, exact, corrected after"
                            + " Holm for the number of rows\n");
        }
        comparison
                .leftOut()
                .forEach(each -> text.append("  not compared: ").append(each).append('\n'));
        return text.toString();
    }

    /** In a few words. */
    static String verdict(Comparison comparison) {
        int better = comparison.rows(Verdict.BETTER).size();
        int worse = comparison.rows(Verdict.WORSE).size();
        boolean changed = comparison.rows().stream().anyMatch(row -> row.gained() + row.lost() > 0);
        if (comparison.rows().isEmpty()) {
            return "nothing that could be compared.";
        }
        if (better + worse == 0) {
            return changed ? "no difference beyond chance." : "every case came out as before.";
        }
        return (worse > 0 ? "worse on " + worse + " of " + comparison.rows().size() : "")
                + (worse > 0 && better > 0 ? ", " : "")
                + (better > 0
                        ? "better on " + better + " of " + comparison.rows().size()
                        : "")
                + ", beyond chance.";
    }
}
