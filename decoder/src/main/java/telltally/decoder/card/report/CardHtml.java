package telltally.decoder.card.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.Counts;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.Tally;
import telltally.decoder.card.compare.Comparison;
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
        comparison.ifPresent(each -> ComparisonHtml.write(html.page, each));
        CurvesHtml.write(html.page, card);
        BreakdownHtml.write(html.page, card);
        html.failures();
        CalibrationHtml.write(html.page, card);
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
                        + card.sets().size() + (card.sets().size() == 1 ? " seed set" : " seed sets")
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
