package telltally.decoder.card.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.SentGroup;

/**
 * The groups that were sent and those that were read, side by side: the alignment with the fewest changes. By content and
 * not by time, since a channel may have stretched all times.
 */
final class GroupAlignment {
    private static final int ALONE = 2;
    private static final int OTHER_DIGITS = 1;
    private static final int OTHER_KIND = 3;

    private GroupAlignment() {}

    /** One of the two may be missing. */
    record Pair(Optional<SentGroup> sent, Optional<Group> read) {
        boolean alike() {
            return sent.isPresent() && read.isPresent() && cost(sent.get(), read.get()) == 0;
        }
    }

    static List<Pair> of(List<SentGroup> sent, List<Group> read) {
        int[][] costs = costs(sent, read);
        List<Pair> pairs = new ArrayList<>();
        int i = sent.size();
        int j = read.size();
        while (i > 0 || j > 0) {
            if (i > 0 && j > 0 && costs[i][j] == costs[i - 1][j - 1] + cost(sent.get(i - 1), read.get(j - 1))) {
                pairs.add(new Pair(Optional.of(sent.get(--i)), Optional.of(read.get(--j))));
            } else if (i > 0 && costs[i][j] == costs[i - 1][j] + ALONE) {
                pairs.add(new Pair(Optional.of(sent.get(--i)), Optional.empty()));
            } else {
                pairs.add(new Pair(Optional.empty(), Optional.of(read.get(--j))));
            }
        }
        Collections.reverse(pairs);
        return pairs;
    }

    /** The least cost of the first so many of each: Needleman &amp; Wunsch 1970, Journal of Molecular Biology 48:443-453. */
    private static int[][] costs(List<SentGroup> sent, List<Group> read) {
        int[][] costs = new int[sent.size() + 1][read.size() + 1];
        for (int i = 0; i <= sent.size(); i++) {
            for (int j = 0; j <= read.size(); j++) {
                if (i == 0 || j == 0) {
                    costs[i][j] = ALONE * (i + j);
                } else {
                    int together = costs[i - 1][j - 1] + cost(sent.get(i - 1), read.get(j - 1));
                    int apart = Math.min(costs[i - 1][j], costs[i][j - 1]) + ALONE;
                    costs[i][j] = Math.min(together, apart);
                }
            }
        }
        return costs;
    }

    private static int cost(SentGroup sent, Group read) {
        if (sent.kind() != read.kind()) {
            return OTHER_KIND;
        }
        boolean same = sent.digits().equals(read.digits()) && sent.segment() == read.segment();
        return same ? 0 : OTHER_DIGITS;
    }
}
