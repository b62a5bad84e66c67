package telltally.decoder.plain;

import telltally.simulator.format.Segment;

/**
 * What a run of flashes can be in a format.
 *
 * @param place which digit of a code, from 0; 0 where the role is no digit
 */
record Role(Sort sort, Segment segment, int place) {
    enum Sort {
        /** Before everything; no run has this role. */
        START,
        /** Light that is no flash: a bulb check. */
        STEADY,
        /** The long light before a code. */
        LEAD_IN,
        /** A digit at one of the places of a code. */
        DIGIT,
        /** A sign of a code that has as many signs as it likes: the first, or a later one. */
        FIRST_SIGN,
        LATER_SIGN,
        SEPARATOR,
        CYLINDERS,
        PROMPT,
        BALANCE,
        /** Part of no code: the reader has lost its place. */
        LOST
    }

    boolean continuesCode() {
        return sort == Sort.LATER_SIGN || (sort == Sort.DIGIT && place > 0);
    }
}
