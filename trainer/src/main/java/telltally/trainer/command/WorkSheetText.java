package telltally.trainer.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Seconds;

/** A reading as a person would write it on a work sheet. */
final class WorkSheetText {
    private static final Map<Segment, String> TITLES = Map.of(
            Segment.PRESENT, "present, engine off",
            Segment.STORED, "stored",
            Segment.RUNNING, "running",
            Segment.BALANCE, "cylinder balance",
            Segment.CODES, "codes");

    private final Optional<CodeList> meanings;

    WorkSheetText(Optional<CodeList> meanings) {
        this.meanings = meanings;
    }

    String text(Reading reading, String source) {
        StringBuilder text = new StringBuilder(source).append('\n');
        if (reading.format().isPresent()) {
            FormatEstimate format = reading.format().get();
            text.append("  format ")
                    .append(format.id())
                    .append(", ")
                    .append(sure(format.probability()))
                    .append("; clock ")
                    .append(decimal(format.clockScale(), 2))
                    .append(" of nominal\n");
        } else {
            text.append("  nothing was decoded\n");
        }
        reading.codes().forEach((segment, codes) -> segment(text, reading, segment, codes));
        for (Warning warning : reading.warnings()) {
            text.append("  look again at ")
                    .append(Seconds.text(warning.atNanos() / 100_000_000L * 100_000_000L))
                    .append(" s: ")
                    .append(warning.text())
                    .append('\n');
        }
        return text.toString();
    }

    private void segment(StringBuilder text, Reading reading, Segment segment, List<String> codes) {
        text.append("  ").append(TITLES.getOrDefault(segment, segment.key())).append(":");
        text.append(codes.isEmpty() ? " nothing to report\n" : "\n");
        for (String code : codes) {
            double probability = reading.groups().stream()
                    .filter(group -> isCode(group)
                            && group.segment() == segment
                            && group.digits().equals(code))
                    .mapToDouble(Group::probability)
                    .max()
                    .orElse(0);
            text.append("    ").append(code);
            meanings.flatMap(list -> list.meaning(code))
                    .ifPresent(meaning -> text.append("  ").append(meaning));
            text.append("  (").append(sure(probability)).append(")\n");
        }
    }

    private static boolean isCode(Group group) {
        return group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE;
    }

    /** In words and as a number; the words' borders are ours. */
    private static String sure(double probability) {
        String words;
        if (probability >= 0.99) {
            words = "sure";
        } else if (probability >= 0.9) {
            words = "fairly sure";
        } else if (probability >= 0.6) {
            words = "doubtful";
        } else {
            words = "a guess";
        }
        return words + ", " + decimal(probability, 3);
    }

    private static String decimal(double value, int places) {
        // Rounded down, so that nothing that is not certain reads as 1.
        RoundingMode mode = value < 1 ? RoundingMode.DOWN : RoundingMode.HALF_EVEN;
        return BigDecimal.valueOf(value).setScale(places, mode).toPlainString();
    }
}
