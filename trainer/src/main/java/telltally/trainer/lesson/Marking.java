package telltally.trainer.lesson;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;

/**
 * What a learner wrote under what was sent, with every error named.
 *
 * @param rows by segment, in the order sent; what was written and never sent stands where it was written
 */
public record Marking(List<Row> rows) {
    public Marking {
        rows = List.copyOf(rows);
    }

    /**
     * One code.
     *
     * @param sent empty where nothing was sent
     * @param written empty where nothing was written
     * @param slips what is wrong with it; none where it is right
     */
    public record Row(Segment segment, Optional<String> sent, Optional<String> written, List<Slip> slips) {
        public Row {
            slips = List.copyOf(slips);
        }

        public boolean right() {
            return slips.isEmpty();
        }

        /** Another half of an error that a row of the sent list already tells. */
        boolean toldElsewhere() {
            return sent.isEmpty()
                    && slips.stream()
                            .anyMatch(slip -> slip instanceof Slip.WrongSegment || slip instanceof Slip.OutOfOrder);
        }
    }

    public static Marking of(FlashFormat format, Truth truth, AnswerSheet sheet) {
        return new Marking(new RedPencil(format, truth, sheet).rows());
    }

    public List<Row> rows(Segment segment) {
        return rows.stream().filter(row -> row.segment() == segment).toList();
    }

    /** Every error, each once. */
    public List<Slip> slips() {
        return rows.stream().flatMap(row -> row.slips().stream()).distinct().toList();
    }

    public int codesSent() {
        return (int) rows.stream().filter(row -> row.sent().isPresent()).count();
    }

    public int codesRight() {
        return (int) rows.stream().filter(Row::right).count();
    }

    public boolean allRight() {
        return slips().isEmpty();
    }

    /** Right codes among those sent and those written though never sent; 1 where there was nothing to write. */
    public double shareRight() {
        long counted = rows.stream().filter(row -> !row.toldElsewhere()).count();
        return counted == 0 ? 1 : (double) codesRight() / counted;
    }
}
