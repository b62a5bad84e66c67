package telltally.trainer.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What was written laid under what was sent, at the least cost. The rule is optimal string alignment: replace, lose, add,
 * or exchange two neighbours, no item being touched twice.
 *
 * @param steps in the order sent
 */
public record Alignment<T>(int cost, List<Step<T>> steps) {
    /** More than any real alignment costs; a step at this price is not taken unless nothing else is left. */
    public static final int FORBIDDEN = 1_000_000;

    public Alignment {
        steps = List.copyOf(steps);
    }

    /** One piece of an alignment. */
    public sealed interface Step<T> {
        /** Equal or not. */
        record Pair<T>(T sent, T written) implements Step<T> {}

        record Lost<T>(T sent) implements Step<T> {}

        record Extra<T>(T written) implements Step<T> {}

        /** Sent first and then second, written the other way round. */
        record Swapped<T>(T first, T second) implements Step<T> {}
    }

    /** What each step costs, never negative. */
    public interface Costs<T> {
        int pair(T sent, T written);

        int lost(T sent);

        int extra(T written);

        int swap(T first, T second);
    }

    /** One for every step but equal pairs, as the published distances count. */
    public static <T> Costs<T> unitCosts() {
        return new Costs<>() {
            @Override
            public int pair(T sent, T written) {
                return sent.equals(written) ? 0 : 1;
            }

            @Override
            public int lost(T sent) {
                return 1;
            }

            @Override
            public int extra(T written) {
                return 1;
            }

            @Override
            public int swap(T first, T second) {
                return 1;
            }
        };
    }

    public static <T> Alignment<T> of(List<T> sent, List<T> written, Costs<T> costs) {
        return new Table<>(sent, written, costs).alignment();
    }

    /** The least cost of every pair of beginnings. */
    private static final class Table<T> {
        private final List<T> sent;
        private final List<T> written;
        private final Costs<T> costs;
        private final int[][] least;

        Table(List<T> sent, List<T> written, Costs<T> costs) {
            this.sent = sent;
            this.written = written;
            this.costs = costs;
            this.least = new int[sent.size() + 1][written.size() + 1];
            for (int i = 0; i <= sent.size(); i++) {
                for (int j = 0; j <= written.size(); j++) {
                    least[i][j] = i + j == 0
                            ? 0
                            : Math.min(Math.min(pair(i, j), swap(i, j)), Math.min(lost(i, j), extra(i, j)));
                }
            }
        }

        private int pair(int i, int j) {
            return i == 0 || j == 0
                    ? Integer.MAX_VALUE
                    : least[i - 1][j - 1] + costs.pair(sent.get(i - 1), written.get(j - 1));
        }

        private int swap(int i, int j) {
            boolean swapped = i > 1
                    && j > 1
                    && sent.get(i - 1).equals(written.get(j - 2))
                    && sent.get(i - 2).equals(written.get(j - 1));
            return swapped ? least[i - 2][j - 2] + costs.swap(sent.get(i - 2), sent.get(i - 1)) : Integer.MAX_VALUE;
        }

        private int lost(int i, int j) {
            return i == 0 ? Integer.MAX_VALUE : least[i - 1][j] + costs.lost(sent.get(i - 1));
        }

        private int extra(int i, int j) {
            return j == 0 ? Integer.MAX_VALUE : least[i][j - 1] + costs.extra(written.get(j - 1));
        }

        /** Followed from the end; among equally cheap ways pairs come first, so that a miscount stays a miscount. */
        Alignment<T> alignment() {
            List<Step<T>> steps = new ArrayList<>();
            int i = sent.size();
            int j = written.size();
            while (i + j > 0) {
                if (least[i][j] == pair(i, j)) {
                    steps.add(new Step.Pair<>(sent.get(--i), written.get(--j)));
                } else if (least[i][j] == swap(i, j)) {
                    steps.add(new Step.Swapped<>(sent.get(i - 2), sent.get(i - 1)));
                    i -= 2;
                    j -= 2;
                } else if (least[i][j] == lost(i, j)) {
                    steps.add(new Step.Lost<>(sent.get(--i)));
                } else {
                    steps.add(new Step.Extra<>(written.get(--j)));
                }
            }
            Collections.reverse(steps);
            return new Alignment<>(least[sent.size()][written.size()], steps);
        }
    }
}
