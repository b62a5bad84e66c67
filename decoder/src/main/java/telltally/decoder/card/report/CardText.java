package telltally.decoder.card.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.Counts;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.Tally;
import telltally.decoder.card.run.ReadingTimes;
import telltally.decoder.card.statistics.Decimals;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;

/** A score card for the terminal: the verdict first, then where it comes from, then where to look. */
public final class CardText {
    /** So many sets are shown whatever came of them. */
    private static final int FEW_SETS = 12;

    private static final int MOST_ROWS = 20;
    private static final int WORST_SHOWN = 8;
    private static final int WORST_OF_A_SET = 2;

    private final ScoreCard card;
    private final StringBuilder text = new StringBuilder();

    private CardText(ScoreCard card) {
        this.card = card;
    }

    /** @param times empty where the card was not run just now */
    public static String text(ScoreCard card, Optional<ReadingTimes> times) {
        CardText page = new CardText(card);
        page.head(times);
        page.verdict();
        page.sets();
        page.formats();
        page.calibration();
        page.confusion();
        page.failures();
        page.worst();
        return page.text.toString();
    }

    private void line(String words) {
        text.append(words).append('\n');
    }

    private void head(Optional<ReadingTimes> times) {
        line("Score card of " + card.decoder() + (card.toldFormat() ? ", told each session's format" : "")
                + (card.part().whole() ? "" : ", " + card.part()));
        long sessions = card.lines().stream()
                .mapToLong(each -> card.total(each).counts().sessions())
                .sum();
        String timed = times.filter(each -> each.sessions() > 0)
                .map(each -> ", " + Durations.text(each.quantileNanos(50)) + " each in the median, "
                        + Durations.text(each.quantileNanos(99)) + " at the 99th percentile")
                .orElse("");
        line(Decimals.grouped(sessions) + " sessions of " + card.sets().size()
                + (card.sets().size() == 1 ? " seed set" : " seed sets") + timed);
        line("");
        TextTable table =
                new TextTable(1, "", "all right", "95 % between", "lists", "codes", "wrong", "lost", "invented");
        for (Line each : card.lines()) {
            Counts counts = card.total(each).counts();
            table.row(List.of(
                    each.key(),
                    Shares.percent(counts.sessionsRight(), counts.sessions()),
                    Shares.interval(counts.sessionsRight(), counts.sessions()),
                    Shares.percent(counts.listsRight(), counts.lists()),
                    Shares.percent(counts.codesRight(), counts.codes()),
                    Decimals.grouped(counts.codesWrong()),
                    Decimals.grouped(counts.codesLost()),
                    Decimals.grouped(counts.codesInvented())));
        }
        text.append(table.text("  ")).append('\n');
    }

    private void verdict() {
        List<String> shortfalls = Verdicts.shortfalls(card);
        line(shortfalls.isEmpty() ? Verdicts.inOneLine(card) : "Falls short:");
        shortfalls.forEach(why -> line("  " + why));
        line("");
    }

    /** Rows that are all right say nothing that the total does not; with many sets they would hide the others. */
    private void sets() {
        TextTable table = table();
        int right = 0;
        List<Row> rows = new ArrayList<>();
        for (SetCard set : card.sets()) {
            for (LineCard each : set.lines()) {
                Counts counts = each.decoder().counts();
                if (counts.sessionsRight() == counts.sessions() && card.sets().size() > FEW_SETS) {
                    right++;
                } else {
                    rows.add(new Row(set, each));
                }
            }
        }
        rows.sort(Comparator.comparingDouble(Row::listsRight));
        line(
                "By seed set: whole lists right, beside the plain decoder and the lattice that was told format and noise.");
        for (Row row : rows.subList(0, Math.min(MOST_ROWS, rows.size()))) {
            table.row(row.cells(card.part().whole()));
        }
        text.append(table.empty() ? "" : table.text("  "));
        if (rows.size() > MOST_ROWS) {
            line("  and " + (rows.size() - MOST_ROWS) + " more that are not all right");
        }
        if (right > 0) {
            line("  and " + right + " more with every session right");
        }
        line("");
    }

    /** A seed set on a line. */
    private record Row(SetCard set, LineCard line) {
        double listsRight() {
            Counts counts = line.decoder().counts();
            return counts.lists() == 0 ? 1 : (double) counts.listsRight() / counts.lists();
        }

        List<String> cells(boolean judged) {
            List<String> cells =
                    new ArrayList<>(List.of(set.title().id(), line.line().key()));
            cells.addAll(Shares.figures(line.decoder().counts(), line.plain(), line.told()));
            if (judged && !set.shortfalls(line).isEmpty()) {
                cells.add("below its floor");
            }
            return cells;
        }
    }

    private void formats() {
        line("By format:");
        grouped(Shares.byFormat(card));
        line("By impairment, in whatever strength:");
        grouped(Shares.byChannel(card));
    }

    private void grouped(Map<String, Map<Line, FormatCard>> groups) {
        TextTable table = table();
        groups.forEach((name, lines) -> lines.forEach((line, sum) -> {
            List<String> cells = new ArrayList<>(List.of(name, line.key()));
            cells.addAll(Shares.figures(sum.decoder().counts(), sum.plain(), sum.told()));
            table.row(cells);
        }));
        text.append(table.text("  ")).append('\n');
    }

    private static TextTable table() {
        return new TextTable(
                2, "", "", "sessions", "lists", "95 % between", "plain", "told", "wrong", "lost", "invented");
    }

    private void calibration() {
        Calibration all = Shares.everything(card).calibration();
        if (all.codes() == 0) {
            return;
        }
        line("Probabilities: of the codes that were given about this one, how many were right.");
        TextTable table = new TextTable(0, "claimed", "right", "95 % between", "codes");
        for (Calibration.Bin bin : all.bins()) {
            if (bin.codes() > 0) {
                table.row(List.of(
                        Shares.percent(bin.millionths(), bin.codes() * Calibration.MILLION),
                        Shares.percent(bin.right(), bin.codes()),
                        Shares.interval(bin.right(), bin.codes()),
                        Decimals.grouped(bin.codes())));
            }
        }
        text.append(table.text("  "));
        line("  expected calibration error " + all.expectedError().orElseThrow().toPlainString() + "\n");
    }

    private void confusion() {
        TextTable table = new TextTable(2, "sent in", "taken for", "sessions");
        Shares.byFormat(card).values().forEach(lines -> {
            FormatCard both = lines.values().stream().reduce(FormatCard::plus).orElseThrow();
            both.decoder().readAs().forEach((as, count) -> {
                if (!both.rightly(as)) {
                    table.row(List.of(both.format(), as, Decimals.grouped(count)));
                }
            });
        });
        if (!table.empty()) {
            line("Formats taken for another:");
            text.append(table.text("  ")).append('\n');
        }
    }

    private void failures() {
        TextTable table = new TextTable(1, "", "sessions");
        Tally all = Shares.everything(card);
        for (Map.Entry<Failure, Long> each : all.failures().entrySet()) {
            table.row(List.of(CardJson.word(each.getKey()).replace('-', ' '), Decimals.grouped(each.getValue())));
        }
        if (!table.empty()) {
            line("No answer, or none that could be understood:");
            text.append(table.text("  ")).append('\n');
        }
    }

    private void worst() {
        List<WorstFound> all = WorstFound.of(card, WORST_OF_A_SET, WORST_SHOWN);
        if (all.isEmpty()) {
            return;
        }
        line("The worst of them, and how to see each again:");
        for (WorstFound each : all) {
            line("  " + each.worst().format() + ", sent " + each.worst().sent());
            line("    " + each.answer());
            line("    " + each.command(card));
        }
    }
}
