package telltally.simulator.format;

import java.util.List;
import java.util.Optional;

/**
 * The rules by which codes become flashes. Every gap is dark time from the end of the last flash to the start of the
 * next (light, where the lamp rests lit).
 *
 * @param id by which other files name it
 * @param restsLit whether the lamp is lit between flashes, so that eclipses are what is counted
 * @param nothingToReport what is sent for a segment without codes
 * @param sessions the segments and what stands around them; empty for a format that sends one list and nothing else
 */
public record FlashFormat(
        String id,
        String title,
        String notes,
        boolean restsLit,
        CodeShape shape,
        Gaps gaps,
        Repeats repeats,
        Optional<LeadIn> leadIn,
        Optional<String> framingCode,
        NothingToReport nothingToReport,
        Optional<Sessions> sessions,
        Optional<Burst> burst) {

    /**
     * @param withinDigitNanos never sent where no digit has more than one flash; shorter than all that is sent
     * @param betweenDigitsNanos never sent where a code has one place
     * @param betweenCodesNanos before the next code, and before the next sending of the same one
     * @param beforeRepeatNanos before the list begins again
     */
    public record Gaps(
            long withinDigitNanos, long betweenDigitsNanos, long betweenCodesNanos, long beforeRepeatNanos) {}

    /**
     * @param eachCodeTimes how often a code is sent before the next one
     * @param listTimes how often the list is sent; 0 where it loops until the key is off
     * @param mostCodes the longest list that can be sent
     */
    public record Repeats(int eachCodeTimes, int listTimes, int mostCodes) {
        public boolean loops() {
            return listTimes == 0;
        }
    }

    /** A long light that announces each code, and the gap between it and the first digit. */
    public record LeadIn(long litNanos, long darkAfterNanos) {}

    /** What is sent where there is nothing to report. */
    public sealed interface NothingToReport {
        /** A code that says so. */
        record PassCode(String code) implements NothingToReport {}

        /** Even blinking that does not end. */
        record Blinking(long onNanos, long offNanos) implements NothingToReport {}

        /** No flash at all. */
        record Dark() implements NothingToReport {}
    }

    /**
     * A format with segments.
     *
     * @param separatorFlashes how many flashes stand between present and stored codes
     * @param aroundSeparatorNanos the gap on either side of them
     * @param cylinderFlash the flash that opens the running test and that a balance result is counted in
     * @param runningTestNanos the usual gap between cylinder flashes and running codes
     * @param mostBalanceFlashes the greatest balance result
     */
    public record Sessions(
            int separatorFlashes,
            long aroundSeparatorNanos,
            FlashKind cylinderFlash,
            long runningTestNanos,
            int mostBalanceFlashes) {}

    /** The same list, sent faster on the wire before each slow one; the lamp only flickers. */
    public record Burst(int timesFaster) {}

    /** Why this code cannot be sent as a trouble code; empty where it can. */
    public Optional<String> refusal(String code) {
        if (framingCode.filter(code::equals).isPresent()) {
            return Optional.of("is the framing code of this format and no part of a list");
        }
        return shape.refusal(code);
    }

    /** The code that says there is nothing to report, where the format has one. */
    public Optional<String> passCode() {
        return nothingToReport instanceof NothingToReport.PassCode pass ? Optional.of(pass.code()) : Optional.empty();
    }

    /** Every kind of flash that a code may be sent in. */
    public List<FlashKind> flashKinds() {
        return shape.flashKinds();
    }

    /** The segments that a recording in this format may have, in the order sent. */
    public List<Segment> segments() {
        return sessions.isPresent()
                ? List.of(Segment.PRESENT, Segment.STORED, Segment.RUNNING, Segment.BALANCE)
                : List.of(Segment.CODES);
    }
}
