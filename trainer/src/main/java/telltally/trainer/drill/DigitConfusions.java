package telltally.trainer.drill;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import telltally.simulator.format.FlashFormat;
import telltally.trainer.lesson.Marking;

/**
 * Which digit was written for which, over many answers. Only digits of codes that were written with all their digits.
 *
 * @param written how often, by the digit sent and then by the digit written
 */
public record DigitConfusions(Map<String, Map<String, Integer>> written) {
    public DigitConfusions {
        Map<String, Map<String, Integer>> copy = new TreeMap<>(DigitConfusions::byCount);
        written.forEach((sent, counts) -> {
            Map<String, Integer> inner = new TreeMap<>(DigitConfusions::byCount);
            inner.putAll(counts);
            copy.put(sent, Collections.unmodifiableMap(inner));
        });
        written = Collections.unmodifiableMap(copy);
    }

    public static DigitConfusions none() {
        return new DigitConfusions(Map.of());
    }

    /** With one more answer. */
    public DigitConfusions plus(Drill drill, Marked marked) {
        return marked.marking().map(marking -> plus(drill.format(), marking)).orElse(this);
    }

    private DigitConfusions plus(FlashFormat format, Marking marking) {
        Map<String, Map<String, Integer>> sum = new TreeMap<>(DigitConfusions::byCount);
        written.forEach((sent, counts) -> {
            Map<String, Integer> inner = new TreeMap<>(DigitConfusions::byCount);
            inner.putAll(counts);
            sum.put(sent, inner);
        });
        for (Marking.Row row : marking.rows()) {
            for (DigitPair pair : DigitPair.of(format, row)) {
                sum.computeIfAbsent(pair.sent(), key -> new TreeMap<>(DigitConfusions::byCount))
                        .merge(pair.written(), 1, Integer::sum);
            }
        }
        return new DigitConfusions(sum);
    }

    /** How often a digit was sent. */
    public int sent(String digit) {
        return counts(digit).values().stream().mapToInt(Integer::intValue).sum();
    }

    public int times(String sentDigit, String writtenDigit) {
        return counts(sentDigit).getOrDefault(writtenDigit, 0);
    }

    public int right(String digit) {
        return times(digit, digit);
    }

    /** Every digit that was sent, by size. */
    public List<String> digits() {
        return List.copyOf(written.keySet());
    }

    private Map<String, Integer> counts(String digit) {
        return written.getOrDefault(digit, Map.of());
    }

    private static int byCount(String one, String other) {
        return one.length() == other.length() ? one.compareTo(other) : Integer.compare(one.length(), other.length());
    }
}
