package telltally.decoder.card.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.statistics.Decimals;
import telltally.decoder.score.Line;

/** A card by seed set, by format and by impairment, and which formats were taken for which. */
final class BreakdownHtml {
    private static final List<String> FIGURES =
            List.of("sessions", "lists right", "95 % between", "plain", "told", "codes wrong", "lost", "invented");

    private final HtmlText page;
    private final ScoreCard card;

    private BreakdownHtml(HtmlText page, ScoreCard card) {
        this.page = page;
        this.card = card;
    }

    static void write(HtmlText page, ScoreCard card) {
        BreakdownHtml breakdown = new BreakdownHtml(page, card);
        breakdown.sets();
        breakdown.formats();
        breakdown.confusion();
    }

    private void sets() {
        page.element("h2", "By seed set");
        List<String> heads = new ArrayList<>(List.of("seed set", "line", "channel", ""));
        heads.addAll(FIGURES);
        page.tableHead("Whole lists right in percent; plain and told read the same sessions", 4, heads);
        for (SetCard set : card.sets()) {
            for (LineCard line : set.lines()) {
                boolean below = card.part().whole() && !set.shortfalls(line).isEmpty();
                List<String> cells = new ArrayList<>(List.of(
                        set.title().id(), line.line().key(), Shares.channel(set), below ? "below its floor" : ""));
                cells.addAll(Shares.figures(line.decoder().counts(), line.plain(), line.told()));
                page.row(4, cells);
            }
        }
        page.tableEnd();
    }

    private void formats() {
        page.element("h2", "By format");
        grouped(
                "format",
                "Whole lists right in percent; (nothing): sessions in which there was nothing to be read",
                Shares.byFormat(card));
        page.element("h2", "By impairment");
        grouped("impairment", "Whole lists right in percent, in whatever strength", Shares.byChannel(card));
    }

    private void grouped(String head, String caption, Map<String, Map<Line, FormatCard>> groups) {
        List<String> heads = new ArrayList<>(List.of(head, "line"));
        heads.addAll(FIGURES);
        page.tableHead(caption, 2, heads);
        groups.forEach((name, lines) -> lines.forEach((line, sum) -> {
            List<String> cells = new ArrayList<>(List.of(name, line.key()));
            cells.addAll(Shares.figures(sum.decoder().counts(), sum.plain(), sum.told()));
            page.row(2, cells);
        }));
        page.tableEnd();
    }

    private void confusion() {
        page.element("h2", "What was taken for what");
        List<FormatCard> rows = Shares.byFormat(card).values().stream()
                .map(lines -> lines.values().stream().reduce(FormatCard::plus).orElseThrow())
                .toList();
        SortedSet<String> columns = new TreeSet<>();
        rows.forEach(row -> columns.addAll(row.decoder().readAs().keySet()));
        List<String> heads = new ArrayList<>(List.of("sent in"));
        heads.addAll(columns);
        page.tableHead("Sessions by the format they were sent in and the one they were taken for", 1, heads);
        for (FormatCard row : rows) {
            SortedMap<String, Long> readAs = row.decoder().readAs();
            List<String> cells = new ArrayList<>(List.of(row.format()));
            columns.forEach(each -> cells.add(readAs.containsKey(each) ? Decimals.grouped(readAs.get(each)) : ""));
            page.row(1, cells);
        }
        page.tableEnd();
    }
}
