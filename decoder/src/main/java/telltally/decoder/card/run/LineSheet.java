package telltally.decoder.card.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import telltally.decoder.card.Counts;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.RightCases;
import telltally.decoder.card.WorstCase;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedCase;
import telltally.simulator.recording.Truth;

/** Counts up one line of one block. */
final class LineSheet {
    /** Lists longer than this are cut; a score card is no place for them. */
    private static final int MOST_TEXT = 200;

    private final Line line;
    private final TreeMap<String, FormatSheet> formats = new TreeMap<>();
    private final BitSet right = new BitSet();
    private final List<WorstCase> worst = new ArrayList<>();

    LineSheet(Line line) {
        this.line = line;
    }

    private static final class FormatSheet {
        private final TallySheet decoder = new TallySheet();
        private Optional<Counts> plain = Optional.empty();
        private Optional<Counts> told = Optional.empty();

        FormatCard card(Map.Entry<String, FormatSheet> entry) {
            return new FormatCard(entry.getKey(), decoder.tally(), plain, told);
        }
    }

    /** What the decoders made of one session; those that run beside may be missing. */
    record Marks(Mark decoder, Optional<Mark> plain, Optional<Mark> told) {}

    Line line() {
        return line;
    }

    void add(int index, SeedCase given, Marks marks) {
        String format = formatOf(given.truth());
        FormatSheet sheet = formats.computeIfAbsent(format, id -> new FormatSheet());
        sheet.decoder.add(marks.decoder());
        sheet.plain = sum(sheet.plain, marks.plain());
        sheet.told = sum(sheet.told, marks.told());
        if (marks.decoder().right()) {
            right.set(index);
        } else {
            keep(wrong(index, given, marks.decoder()));
        }
    }

    /** Silence is in no format, whatever the sender would have used. */
    private static String formatOf(Truth truth) {
        return truth.groups().isEmpty() ? FormatCard.NOTHING_SENT : truth.formatId();
    }

    private static Optional<Counts> sum(Optional<Counts> before, Optional<Mark> mark) {
        return mark.isEmpty()
                ? before
                : Optional.of(before.orElse(Counts.NOTHING).plus(mark.get().counts()));
    }

    private void keep(WorstCase found) {
        worst.add(found);
        worst.sort(WorstCase.WORST_FIRST);
        if (worst.size() > LineCard.WORST) {
            worst.remove(LineCard.WORST);
        }
    }

    private static WorstCase wrong(int index, SeedCase given, Mark mark) {
        return new WorstCase(
                index,
                given.seed(),
                given.origin(),
                formatOf(given.truth()),
                mark.errors(),
                cut(Mark.text(given.truth().codes())),
                cut(Mark.text(mark.read())),
                mark.failure());
    }

    private static String cut(String text) {
        return text.length() <= MOST_TEXT ? text : text.substring(0, MOST_TEXT) + "...";
    }

    /** @param cases of the whole set */
    LineCard card(int cases) {
        List<FormatCard> cards = formats.entrySet().stream()
                .map(entry -> entry.getValue().card(entry))
                .toList();
        return new LineCard(line, cards, new RightCases(cases, right), worst);
    }
}
