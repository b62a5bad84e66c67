package telltally.trainer.lesson;

import java.util.Locale;
import telltally.simulator.format.Segment;
import telltally.trainer.text.Texts;

/** One error in what a learner wrote, with its name and a sentence that explains it. */
public sealed interface Slip {
    /** In place of the place of a digit: the code is a single count. */
    int WHOLE_COUNT = -1;

    /** What the error is called, in a few words. */
    String title(Texts texts);

    /** What was sent and what was made of it, in plain words. */
    String sentence(Texts texts);

    /**
     * Flashes counted wrong.
     *
     * @param place which digit, from 0; or {@link #WHOLE_COUNT}
     */
    record MiscountedDigit(String code, int place, int flashes, int counted) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.miscounted-digit");
        }

        /** How many too many; negative for too few. */
        public int off() {
            return counted - flashes;
        }

        @Override
        public String sentence(Texts texts) {
            Words words = new Words(texts);
            return texts.of(
                    off() > 0 ? "slip.miscounted-digit-many" : "slip.miscounted-digit-few",
                    code,
                    words.digit(place),
                    words.flashes(flashes),
                    counted,
                    words.number(Math.abs(off())));
        }
    }

    /** A sign that is no count, taken for another. */
    record MisreadSign(String code, int place, String sent, String written) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.misread-sign");
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.misread-sign-told", code, new Words(texts).digit(place), sent, written);
        }
    }

    record MissingDigit(String code, int place, String digit) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.missing-digit");
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.missing-digit-told", code, new Words(texts).digit(place), digit);
        }
    }

    record DigitTooMany(String code, String written, String digit) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.digit-too-many");
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.digit-too-many-told", code, written, digit);
        }
    }

    record SwappedDigits(String code, String written) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.swapped-digits");
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.swapped-digits-told", code, written);
        }
    }

    record LostCode(Segment segment, String code) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.lost-code");
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.lost-code-told", code, new Words(texts).yourList(segment));
        }
    }

    record ExtraCode(Segment segment, String code) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.extra-code");
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.extra-code-told", code, new Words(texts).yourList(segment));
        }
    }

    /** The list is sent more than once so that it can be checked. */
    record WrittenTwice(String code) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.written-twice");
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.written-twice-told", code);
        }
    }

    /** Right code, wrong place in its list. */
    record OutOfOrder(Segment segment, String code) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.out-of-order");
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.out-of-order-told", code, new Words(texts).yourList(segment));
        }
    }

    /** Something that only marks a place in the signal, written down as a trouble code. */
    record MarkerTakenForCode(Marker marker, String written) implements Slip {
        @Override
        public String title(Texts texts) {
            return texts.of("slip.marker-" + marker.name().toLowerCase(Locale.ROOT));
        }

        @Override
        public String sentence(Texts texts) {
            return texts.of("slip.marker-told", written, marker.meaning(texts));
        }
    }

    /** Filed under another segment than the one it was sent in. */
    record WrongSegment(String code, Segment sent, Segment filed) implements Slip {
        /** What there is to say where the code is missing; the whole sentence stands where it was written. */
        public String hint(Texts texts) {
            return texts.of("slip.wrong-segment-hint", new Words(texts).title(filed));
        }

        @Override
        public String title(Texts texts) {
            Words words = new Words(texts);
            return texts.of("slip.wrong-segment", words.title(sent), words.title(filed));
        }

        @Override
        public String sentence(Texts texts) {
            Words words = new Words(texts);
            return texts.of("slip.wrong-segment-told", code, words.title(sent), words.title(filed))
                    + " "
                    + texts.of(
                            filed == Segment.PRESENT
                                    ? "slip.wrong-segment-as-present"
                                    : "slip.wrong-segment-from-present");
        }
    }
}
