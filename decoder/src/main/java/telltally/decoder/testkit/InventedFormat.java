package telltally.decoder.testkit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.Gaps;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.FlashFormat.Repeats;
import telltally.simulator.format.FlashKind;

/**
 * The rules of a format that nobody uses, for decoders that claim to read any: equal flashes with equal gaps, digits 1 to
 * 9, one list. Gaps differ at least by a factor of two, so that nothing runs together.
 *
 * @param digits in a code
 * @param flashMillis how long a flash and the gap after it last
 * @param digitGap how many times as long the gap between digits is
 * @param codeGap how many times as long as that the gap between codes is
 * @param listTimes how often the list is sent
 */
public record InventedFormat(int digits, int flashMillis, int digitGap, int codeGap, int listTimes) {
    private static final InventedFormat SIMPLEST = new InventedFormat(1, 500, 3, 2, 1);
    private static final int MOST_DIGITS = 4;
    private static final int STEP_MILLIS = 50;
    private static final int MOST_DIGIT = 9;
    private static final int MOST_CODES = 20;
    private static final long MILLISECOND = 1_000_000L;

    public InventedFormat {
        if (digits < 1 || flashMillis < 1 || digitGap < 2 || codeGap < 2 || listTimes < 1) {
            throw new IllegalArgumentException("gaps differ at least by a factor of two, and something is sent");
        }
    }

    /** Up to four digits, flashes of 0.2 to 0.8 s, the list up to three times. */
    public static InventedFormat drawn(Chance chance) {
        return new InventedFormat(
                1 + chance.below(MOST_DIGITS),
                STEP_MILLIS * (4 + chance.below(13)),
                3 + chance.below(3),
                2 + chance.below(2),
                1 + chance.below(3));
    }

    public FlashFormat format() {
        FlashKind flash = new FlashKind("flash", flashMillis * MILLISECOND);
        Map<String, Integer> counts = new LinkedHashMap<>();
        IntStream.rangeClosed(1, MOST_DIGIT).forEach(count -> counts.put(Integer.toString(count), count));
        CodeShape.Place place = new CodeShape.Place(flash, counts);
        long digitNanos = flash.onNanos() * digitGap;
        // Where a code has one digit, there is no gap between digits to be told apart.
        return new FlashFormat(
                toString(),
                "An invented format",
                "",
                false,
                new CodeShape.Counted(
                        IntStream.range(0, digits).mapToObj(each -> place).toList()),
                new Gaps(
                        flash.onNanos(),
                        digits == 1 ? flash.onNanos() : digitNanos,
                        digitNanos * codeGap,
                        digitNanos * codeGap),
                new Repeats(1, listTimes, MOST_CODES),
                Optional.empty(),
                Optional.empty(),
                new NothingToReport.Dark(),
                Optional.empty(),
                Optional.empty());
    }

    /** Each number in turn as in the simplest format: one digit, half a second, the shortest gaps, the list once. */
    public Stream<InventedFormat> simpler() {
        return Stream.of(
                        new InventedFormat(SIMPLEST.digits, flashMillis, digitGap, codeGap, listTimes),
                        new InventedFormat(Math.max(1, digits - 1), flashMillis, digitGap, codeGap, listTimes),
                        new InventedFormat(digits, flashMillis, digitGap, codeGap, SIMPLEST.listTimes),
                        new InventedFormat(digits, SIMPLEST.flashMillis, digitGap, codeGap, listTimes),
                        new InventedFormat(digits, flashMillis, SIMPLEST.digitGap, codeGap, listTimes),
                        new InventedFormat(digits, flashMillis, digitGap, SIMPLEST.codeGap, listTimes))
                .distinct()
                .filter(each -> !each.equals(this));
    }

    /** How far from simple; the first difference counts. */
    public long[] size() {
        return new long[] {digits, listTimes, Math.abs(flashMillis - SIMPLEST.flashMillis), digitGap, codeGap};
    }

    /** The id of the format, which says its numbers. */
    @Override
    public String toString() {
        return "invented-" + digits + "-digits-" + flashMillis + "-ms-gaps-" + digitGap + "-" + codeGap + "-list-"
                + listTimes;
    }
}
