package telltally.trainer.lesson;

import java.util.Locale;
import telltally.simulator.format.Segment;
import telltally.trainer.text.Texts;

/** The words that marking is told in. */
public record Words(Texts texts) {
    /** Counts up to this are told in words, and places up to the other. */
    private static final int COUNTS_IN_WORDS = 10;

    private static final int PLACES_IN_WORDS = 6;

    /** As it stands within a sentence. */
    public String title(Segment segment) {
        return texts.of("words.segment-" + key(segment));
    }

    /** As it stands over a column of the work sheet. */
    public String heading(Segment segment) {
        return texts.of("words.heading-" + key(segment));
    }

    /** As a code of the segment is announced. */
    public String listing(Segment segment) {
        return texts.of("words.listing-" + key(segment));
    }

    /** What the learner wrote under it. */
    String yourList(Segment segment) {
        return texts.of("words.list-" + key(segment));
    }

    /** A count before "too many"; from 1. */
    String number(int number) {
        return number <= COUNTS_IN_WORDS ? texts.of("words.number-" + number) : Integer.toString(number);
    }

    String flashes(int count) {
        return texts.of("words.flashes", count);
    }

    /** @param place counted from 0, or {@link Slip#WHOLE_COUNT} */
    String digit(int place) {
        if (place == Slip.WHOLE_COUNT) {
            return texts.of("words.whole-count");
        }
        return place < PLACES_IN_WORDS
                ? texts.of("words.digit-" + (place + 1))
                : texts.of("words.digit-later", place + 1);
    }

    private static String key(Segment segment) {
        return segment.name().toLowerCase(Locale.ROOT);
    }
}
