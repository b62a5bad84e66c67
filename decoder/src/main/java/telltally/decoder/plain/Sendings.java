package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import telltally.simulator.format.FlashFormat.Repeats;
import telltally.simulator.format.GroupKind;

/**
 * The codes of one segment in the order seen, repeats and all: which list was sent, and how often the format's rule
 * of repeating was broken. Where sendings differ, the majority counts, then the reading that fits better.
 */
final class Sendings {
    private static final int MOST_BROKEN = 6;

    private final Repeats rule;
    private int broken;
    private final List<Word> list;

    /** @param stretches the codes, unreadable ones as well, apart where a framing code stood between them */
    Sendings(List<List<Word>> stretches, Repeats rule) {
        this.rule = rule;
        List<Word> once = new ArrayList<>();
        stretches.forEach(stretch -> once.addAll(eachOnce(stretch)));
        this.list = once.isEmpty() ? once : listOnce(once);
    }

    /** How often a rule was broken, up to a limit: one missed code can put a whole list out of step. */
    int broken() {
        return Math.min(MOST_BROKEN, broken);
    }

    /** Each code once, in the order sent. */
    List<String> codes() {
        List<String> codes = new ArrayList<>();
        int at = -1;
        for (Word word : list) {
            if (unreadable(word)) {
                continue;
            }
            int known = codes.indexOf(word.digits());
            // A code that an earlier sending lacked belongs behind the one that it followed here.
            at = known >= 0 ? known : Math.min(at + 1, codes.size());
            if (known < 0 && codes.size() < rule.mostCodes()) {
                codes.add(at, word.digits());
            }
        }
        return codes;
    }

    /** A stretch with each code as often as if the format sent it once before the next. */
    private List<Word> eachOnce(List<Word> stretch) {
        int each = rule.eachCodeTimes();
        if (each == 1 || stretch.isEmpty()) {
            return stretch;
        }
        List<List<Word>> windows = windows(stretch, each);
        int differing = (int) windows.stream().filter(window -> !same(window)).count();
        List<List<Word>> rows = rows(stretch);
        int uneven = (int) rows.stream().filter(row -> row.size() % each != 0).count();
        if (stretch.size() % each == 0 && differing <= uneven) {
            broken += differing;
            return windows.stream().map(Sendings::best).toList();
        }
        broken += uneven;
        return rows.stream()
                .flatMap(row -> Collections.nCopies(times(row.size()), best(row)).stream())
                .toList();
    }

    private int times(int rowLength) {
        return rule.loops() ? Math.max(1, Math.round((float) rowLength / rule.eachCodeTimes())) : 1;
    }

    private List<Word> listOnce(List<Word> all) {
        int period = rule.loops() ? period(all) : Math.max(1, all.size() / rule.listTimes());
        int over = all.size() % (rule.loops() ? period : rule.listTimes());
        // Unreadable groups that are one too many at the start belong to no sending: the recording begins midway.
        boolean midway = all.subList(0, over).stream().allMatch(Sendings::unreadable);
        List<Word> codes = midway ? all.subList(over, all.size()) : all;
        if (!rule.loops() && !midway) {
            broken++;
            return codes;
        }
        List<Word> sent = new ArrayList<>();
        for (int i = 0; i < Math.min(period, codes.size()); i++) {
            List<Word> same = new ArrayList<>();
            for (int at = i; at < codes.size(); at += period) {
                same.add(codes.get(at));
            }
            Word best = best(same);
            broken += (int) same.stream().filter(word -> differ(word, best)).count();
            sent.add(best);
        }
        broken += Math.min(MOST_BROKEN, sentAgain(sent));
        return sent;
    }

    /** How many readable codes stand in a list more than once. */
    private static int sentAgain(List<Word> sent) {
        List<String> readable = sent.stream()
                .filter(word -> !unreadable(word))
                .map(Word::digits)
                .toList();
        return readable.size() - (int) readable.stream().distinct().count();
    }

    /** After how many codes the list begins again: the length that, with the odd ones it leaves, says it shortest. */
    private int period(List<Word> codes) {
        int best = 1;
        int least = Integer.MAX_VALUE;
        for (int period = 1; period <= Math.min(rule.mostCodes(), codes.size()); period++) {
            int said = period;
            for (int place = 0; place < period && said <= least; place++) {
                said += oddOnes(codes, place, period);
            }
            if (said <= least) {
                least = said;
                best = period;
            }
        }
        return best;
    }

    /** How many codes at one place of the list are not what most sendings have there. */
    private static int oddOnes(List<Word> codes, int place, int period) {
        Map<String, Integer> counts = new HashMap<>();
        int readable = 0;
        int most = 0;
        for (int at = place; at < codes.size(); at += period) {
            Word word = codes.get(at);
            if (!unreadable(word)) {
                readable++;
                most = Math.max(most, counts.merge(word.digits(), 1, Integer::sum));
            }
        }
        return readable - most;
    }

    private static Word best(List<Word> same) {
        Map<String, List<Word>> votes = same.stream()
                .filter(word -> !unreadable(word))
                .collect(Collectors.groupingBy(Word::digits, LinkedHashMap::new, Collectors.toList()));
        return votes.values().stream()
                .max(Comparator.<List<Word>>comparingInt(List::size)
                        .thenComparing(
                                each -> -each.stream().mapToDouble(Word::cost).sum()))
                .map(each -> each.get(0))
                .orElse(same.get(0));
    }

    private static List<List<Word>> windows(List<Word> stretch, int size) {
        return IntStream.range(0, stretch.size() / size)
                .mapToObj(i -> stretch.subList(i * size, (i + 1) * size))
                .toList();
    }

    /** Neighbours that read the same, together. */
    private static List<List<Word>> rows(List<Word> stretch) {
        List<List<Word>> rows = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= stretch.size(); i++) {
            if (i == stretch.size() || differ(stretch.get(i), stretch.get(i - 1))) {
                rows.add(stretch.subList(from, i));
                from = i;
            }
        }
        return rows;
    }

    private static boolean same(List<Word> words) {
        return words.stream().noneMatch(word -> differ(word, words.get(0)));
    }

    /** Whether two words cannot be the same code; an unreadable one can be any. */
    private static boolean differ(Word one, Word other) {
        return !unreadable(one) && !unreadable(other) && !one.digits().equals(other.digits());
    }

    private static boolean unreadable(Word word) {
        return word.kind() == GroupKind.UNREADABLE;
    }
}
