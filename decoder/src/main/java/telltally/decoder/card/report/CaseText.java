package telltally.decoder.card.report;

import java.util.List;
import java.util.stream.Collectors;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.run.Mark;
import telltally.decoder.card.statistics.Decimals;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.SeedCase;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.Seconds;

/** One case for the terminal: what was sent beside what was read, and the flashes. */
public final class CaseText {
    private static final long TENTH_NANOS = 100_000_000;
    private static final double MENTIONED = 0.001;

    private CaseText() {}

    /** @param set the id of its seed set */
    public static String text(String set, SeedCase given, Line line, String decoder, Outcome outcome) {
        StringBuilder text = new StringBuilder(set + ", seed " + given.seed() + ", " + given.origin() + ", on the "
                + line.key() + ", read by " + decoder + "\n");
        text.append("  sent  ")
                .append(
                        given.truth().groups().isEmpty()
                                ? ""
                                : "in " + given.truth().formatId() + ": ")
                .append(Mark.text(given.truth().codes()))
                .append('\n');
        if (outcome instanceof Outcome.Read read) {
            read(text, given, read.reading());
        } else {
            Outcome.Failed failed = (Outcome.Failed) outcome;
            text.append("  no answer, ")
                    .append(CardJson.word(failed.failure()).replace('-', ' '))
                    .append(": ")
                    .append(failed.detail())
                    .append("\n\n");
        }
        return text.append(FlashLines.text(line.train(given))).toString();
    }

    private static void read(StringBuilder text, SeedCase given, Reading reading) {
        text.append("  read  ")
                .append(reading.format().map(CaseText::format).orElse("in no format: "))
                .append(Mark.text(reading.codes()))
                .append('\n')
                .append("  ")
                .append(verdict(Mark.of(given.truth(), new Outcome.Read(reading), true)))
                .append("\n\n");
        TextTable table = new TextTable(6, "", "sent", "from s", "read", "from s", "sure");
        for (GroupAlignment.Pair pair : GroupAlignment.of(given.truth().groups(), reading.groups())) {
            table.row(List.of(
                    pair.alike() ? " " : "!",
                    pair.sent().map(CaseText::name).orElse("-"),
                    pair.sent().map(each -> seconds(each.startNanos())).orElse(""),
                    pair.read().map(CaseText::name).orElse("-"),
                    pair.read().map(each -> seconds(each.startNanos())).orElse(""),
                    pair.read()
                            .map(each -> Decimals.fixed(each.probability(), 3) + alternatives(each))
                            .orElse("")));
        }
        if (!table.empty()) {
            text.append(table.text("  ")).append('\n');
        }
        for (Warning warning : reading.warnings()) {
            text.append("  ")
                    .append(seconds(warning.atNanos()))
                    .append(" s: ")
                    .append(warning.text())
                    .append('\n');
        }
        text.append(reading.warnings().isEmpty() ? "" : "\n");
    }

    private static String verdict(Mark mark) {
        return mark.right()
                ? "all right"
                : "codes: " + mark.counts().codesRight() + " right, "
                        + mark.counts().codesWrong() + " wrong, "
                        + mark.counts().codesLost() + " lost, "
                        + mark.counts().codesInvented() + " invented; lists: "
                        + mark.counts().listsRight() + " of " + mark.counts().lists() + " right";
    }

    private static String format(FormatEstimate format) {
        return "in " + format.id() + " (" + Decimals.fixed(format.probability(), 4) + ", clock "
                + Decimals.fixed(format.clockScale(), 3) + "): ";
    }

    private static String name(SentGroup group) {
        return (group.kind().key() + " " + group.digits()).strip() + ", "
                + group.segment().key();
    }

    private static String name(Group group) {
        return (group.kind().key() + " " + group.digits()).strip() + ", "
                + group.segment().key();
    }

    private static String alternatives(Group group) {
        String others = group.alternatives().stream()
                .filter(each -> each.probability() >= MENTIONED)
                .map(each -> each.digits() + " " + Decimals.fixed(each.probability(), 3))
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "" : "; or " + others;
    }

    private static String seconds(long nanos) {
        return Seconds.text(nanos / TENTH_NANOS * TENTH_NANOS);
    }
}
