package telltally.trainer.lesson;

import telltally.simulator.format.Segment;

/** One error in what a learner wrote, with its name and a sentence that explains it. */
public sealed interface Slip {
    /** What the error is called, in a few words. */
    String title();

    /** What was sent and what was made of it, in plain words. */
    String sentence();

    /**
     * Flashes counted wrong.
     *
     * @param where the digit in words that follow "the", such as {@code second digit} or {@code count}
     */
    record MiscountedDigit(String code, String where, int flashes, int counted) implements Slip {
        @Override
        public String title() {
            return "miscounted digit";
        }

        /** How many too many; negative for too few. */
        public int off() {
            return counted - flashes;
        }

        @Override
        public String sentence() {
            return code + ": the " + where + " was " + Words.flashes(flashes) + "; you wrote " + counted + ", "
                    + Words.number(Math.abs(off())) + (off() > 0 ? " too many." : " too few.");
        }
    }

    /** A sign that is no count, taken for another. */
    record MisreadSign(String code, String where, String sent, String written) implements Slip {
        @Override
        public String title() {
            return "misread sign";
        }

        @Override
        public String sentence() {
            return code + ": the " + where + " was " + sent + "; you wrote " + written + ".";
        }
    }

    record MissingDigit(String code, String where, String digit) implements Slip {
        @Override
        public String title() {
            return "missing digit";
        }

        @Override
        public String sentence() {
            return code + ": the " + where + ", " + digit + ", is missing from what you wrote.";
        }
    }

    record DigitTooMany(String code, String written, String digit) implements Slip {
        @Override
        public String title() {
            return "digit too many";
        }

        @Override
        public String sentence() {
            return code + ": you wrote " + written + "; no " + digit + " was sent there.";
        }
    }

    record SwappedDigits(String code, String written) implements Slip {
        @Override
        public String title() {
            return "swapped digits";
        }

        @Override
        public String sentence() {
            return code + ": you wrote " + written + ", with two digits the wrong way round.";
        }
    }

    record LostCode(Segment segment, String code) implements Slip {
        @Override
        public String title() {
            return "lost code";
        }

        @Override
        public String sentence() {
            return code + " was sent and is missing from " + Words.yourList(segment) + ".";
        }
    }

    record ExtraCode(Segment segment, String code) implements Slip {
        @Override
        public String title() {
            return "extra code";
        }

        @Override
        public String sentence() {
            return code + " was never sent, but stands in " + Words.yourList(segment) + ".";
        }
    }

    /** The list is sent more than once so that it can be checked. */
    record WrittenTwice(String code) implements Slip {
        @Override
        public String title() {
            return "written twice";
        }

        @Override
        public String sentence() {
            return code + " is one code, however often it is sent; the repeat is there to check the first count.";
        }
    }

    /** Right code, wrong place in its list. */
    record OutOfOrder(Segment segment, String code) implements Slip {
        @Override
        public String title() {
            return "out of order";
        }

        @Override
        public String sentence() {
            return code + " was sent, but at another place of " + Words.yourList(segment) + ".";
        }
    }

    /** Something that only marks a place in the signal, written down as a trouble code. */
    record MarkerTakenForCode(Marker marker, String written) implements Slip {
        @Override
        public String title() {
            return marker.title() + " taken for a code";
        }

        @Override
        public String sentence() {
            return written + " is no code: it is " + marker.meaning() + ".";
        }
    }

    /** Filed under another segment than the one it was sent in. */
    record WrongSegment(String code, Segment sent, Segment filed) implements Slip {
        /** What there is to say where the code is missing; the whole sentence stands where it was written. */
        public String hint() {
            return "You filed it as " + Words.title(filed) + ".";
        }

        @Override
        public String title() {
            return Words.title(sent) + " filed as " + Words.title(filed);
        }

        @Override
        public String sentence() {
            return code + " was sent among the " + Words.title(sent) + " codes; you filed it as " + Words.title(filed)
                    + ". "
                    + (filed == Segment.PRESENT
                            ? "A part that is not faulty now might be replaced."
                            : "A fault that is there now might be left.");
        }
    }
}
