package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.Marking.Row;

/** One digit as it was sent and as it was written. */
record DigitPair(String sent, String written) {
    boolean right() {
        return sent.equals(written);
    }

    /** Nothing where digits were lost, added or swapped: then nobody knows which was counted as which. */
    static List<DigitPair> of(FlashFormat format, Row row) {
        if (row.sent().isEmpty() || row.written().isEmpty()) {
            return List.of();
        }
        String sent = row.sent().get();
        String written = row.written().get();
        boolean oneCount = row.segment() == Segment.BALANCE
                || (format.shape() instanceof Counted counted
                        && counted.places().size() == 1);
        if (oneCount) {
            return List.of(new DigitPair(sent, written));
        }
        if (sent.length() != written.length() || swapped(sent, written)) {
            return List.of();
        }
        List<DigitPair> pairs = new ArrayList<>();
        for (int place = 0; place < sent.length(); place++) {
            pairs.add(new DigitPair(sent.substring(place, place + 1), written.substring(place, place + 1)));
        }
        return pairs;
    }

    private static boolean swapped(String sent, String written) {
        for (int place = 0; place + 1 < sent.length(); place++) {
            if (sent.charAt(place) != sent.charAt(place + 1)
                    && sent.charAt(place) == written.charAt(place + 1)
                    && sent.charAt(place + 1) == written.charAt(place)) {
                return true;
            }
        }
        return false;
    }
}
