package telltally.decoder.card.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.Counts;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.Tally;
import telltally.decoder.card.compare.Comparison;
import telltally.decoder.card.compare.Comparison.Row;
import telltally.decoder.card.compare.Comparison.Verdict;
import telltally.decoder.card.run.ReadingTimes;
import telltally.decoder.card.statistics.Decimals;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;

/**
 * A score card as one page of HTML 5 that needs nothing beside it: no script, nothing from elsewhere. Every drawing has its
 * numbers in a table below it; colour is never the only sign.
 */
public final class CardHtml {
    private static final int WORST_SHOWN = 30;
    private static final int WORST_OF_A_SET = 3;
    private static final List<String> FIGURES =
            List.of("sessions", "lists right", "95 % between", "plain", "told", "codes wrong", "lost", "invented");

    private final ScoreCard card;
    private final HtmlText page = new HtmlText();

    private CardHtml(ScoreCard card) {
        this.card = card;
    }

    /**
     * @param times empty where the card was not run just now
     * @param comparison with an older card; empty where there is none
     */
    public static String text(ScoreCard card, Optional<ReadingTimes> times, Optional<Comparison> comparison) {
        CardHtml html = new CardHtml(card);
        html.head();
        html.summary(times);
        html.verdict();
        comparison.ifPresent(html::comparison);
        html.curves();
        html.sets();
        html.formats();
        html.confusion();
        html.failures();
        html.calibration();
        html.worst();
        return html.page.markup("</main>\n</body>\n</html>\n").toString();
    }

    private void head() {
        String title = "Score card of " + card.decoder();
        page.markup("""
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                """);
        page.element("title", title).markup("<style>\n" + style() + "</style>\n</head>\n<body>\n<main>\n");
        page.element("h1", title);
    }

    private static String style() {
        try (InputStream in = CardHtml.class.getResourceAsStream("card.css")) {
            if (in == null) {
                throw new IllegalStateException("the program was built without card.css");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void summary(Optional<ReadingTimes> times) {
        page.markup("<p>")
                .words("Generator version " + card.generator() + ", "
                        + card.sets().size() + " seed sets"
                        + (card.toldFormat() ? ", each session's format told" : "")
                        + (card.part().whole() ? "" : ", " + card.part() + " only") + ".");
        times.filter(each -> each.sessions() > 0)
                .ifPresent(each -> page.words(" A session took " + Durations.text(each.quantileNanos(50))
                        + " in the median, " + Durations.text(each.quantileNanos(99)) + " at the 99th percentile, "
                        + Durations.text(each.longestNanos()) + " at most."));
        page.markup("</p>\n");
        List<String> heads = List.of(
                "line", "sessions", "all right", "95 % between", "lists", "codes", "codes wrong", "lost", "invented");
        page.tableHead("Everything together, shares in percent", 1, heads);
        for (Line line : card.lines()) {
            Counts counts = card.total(line).counts();
            page.row(
                    1,
                    List.of(
                            line.key(),
                            Decimals.grouped(counts.sessions()),
                            Shares.percent(counts.sessionsRight(), counts.sessions()),
                            Shares.interval(counts.sessionsRight(), counts.sessions()),
                            Shares.percent(counts.listsRight(), counts.lists()),
                            Shares.percent(counts.codesRight(), counts.codes()),
                            Decimals.grouped(counts.codesWrong()),
                            Decimals.grouped(counts.codesLost()),
                            Decimals.grouped(counts.codesInvented())));
        }
        page.tableEnd();
    }

    private void verdict() {
        List<String> lines = Verdicts.shortfalls(card);
        if (lines.isEmpty()) {
            page.markup("<p class=\"verdict\">").words(Verdicts.inOneLine(card)).markup("</p>\n");
            return;
        }
        page.markup("<p class=\"verdict short\">").words("Falls short:").markup("</p>\n<ul>\n");
        lines.forEach(line -> page.element("li", line));
        page.markup("</ul>\n");
    }

    private void comparison(Comparison comparison) {
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

    private void curves() {
        List<Curve> curves = Curve.of(card);
        if (curves.isEmpty()) {
            return;
        }
        page.element("h2", "Accuracy against noise");
        page.markup("<p>Whole lists right. <span class=\"key decoder\">full line, dots</span> ")
                .words(card.decoder() + ", bars: 95 % interval; ")
                .markup("<span class=\"key plain\">dashed</span> the plain decoder;"
                        + " <span class=\"key told\">dotted</span> the lattice that was told the format.</p>\n");
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

    private void failures() {
        Tally all = Shares.everything(card);
        if (all.failures().isEmpty()) {
            return;
        }
        page.element("h2", "No answer");
        page.tableHead("Sessions without an answer that could be understood", 1, List.of("kind", "sessions"));
        for (Map.Entry<Failure, Long> each : all.failures().entrySet()) {
            page.row(1, List.of(CardJson.word(each.getKey()).replace('-', ' '), Decimals.grouped(each.getValue())));
        }
        page.tableEnd();
    }

    private void calibration() {
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

    private void worst() {
        List<WorstFound> all = WorstFound.of(card, WORST_OF_A_SET, WORST_SHOWN);
        if (all.isEmpty()) {
            return;
        }
        page.element("h2", "The worst cases");
        page.element("p", "Each command shows one of them again: what was sent beside what was read.");
        page.tableHead("Wrong readings", 5, List.of("seed set", "format", "sent", "answer", "command"));
        for (WorstFound each : all) {
            page.markup("<tr>");
            page.markup("<th scope=\"row\">").words(each.set().title().id()).markup("</th>");
            for (String cell : List.of(each.worst().format(), each.worst().sent(), each.answer())) {
                page.markup("<td>").words(cell).markup("</td>");
            }
            page.markup("<td><code>").words(each.command(card)).markup("</code></td></tr>\n");
        }
        page.tableEnd();
    }
}
