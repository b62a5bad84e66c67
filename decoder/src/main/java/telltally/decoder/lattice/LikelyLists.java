package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The lists that a few layouts of blocks suggest, and their neighbours, worth weighing against each other exactly. */
final class LikelyLists {
    private static final int MOST_VARIED = 3;
    private static final int MOST_CHOICES = 3;
    private static final int MOST_BEGUN = 6;
    private static final double LEAST_BEGUN = 1e-6;
    private static final double LEAST_VARIED = 1e-4;

    private final int listTimes;
    private final List<List<Block>> passes;
    private final Set<List<String>> lists = new LinkedHashSet<>();

    /**
     * @param listTimes how often the format sends a list; 0 where it loops
     * @param passes the blocks by stretch between framing codes
     * @param layouts the best first
     */
    LikelyLists(int listTimes, List<List<Block>> passes, List<Layout> layouts) {
        this.listTimes = listTimes;
        this.passes = passes;
        for (Layout layout : layouts) {
            lists.add(layout.list());
        }
        if (!layouts.isEmpty()) {
            windows(layouts.get(0).codes);
        }
        for (int i = 0; i < Math.min(MOST_VARIED, layouts.size()); i++) {
            variants(layouts.get(i));
        }
    }

    /** The best guess first. */
    Set<List<String>> lists() {
        return Collections.unmodifiableSet(lists);
    }

    /** Neighbouring blocks as they stand: one of them is the list where a repeat was torn or ran together. */
    private void windows(int codes) {
        for (List<Block> pass : passes) {
            for (int length = Math.max(1, codes - 1); length <= codes + 1; length++) {
                for (int from : new int[] {0, pass.size() - length, length}) {
                    if (from >= 0 && from + length <= pass.size()) {
                        if (from == 0 && pass == passes.get(0)) {
                            beginnings(pass.subList(0, length));
                        }
                        lists.add(distinct(List.of(), pass.subList(from, from + length)));
                    }
                }
            }
            int half = pass.size() / 2;
            if (listTimes == 2 && half > 0) {
                for (int from : new int[] {0, half, pass.size() - half}) {
                    lists.add(distinct(List.of(), pass.subList(from, from + half)));
                }
            }
        }
    }

    /** The first group may have been cut by the beginning of the recording, or be whole as it stands. */
    private void beginnings(List<Block> blocks) {
        for (String first : blocks.get(0).choices("", LEAST_BEGUN, MOST_BEGUN)) {
            lists.add(distinct(List.of(first), blocks.subList(1, blocks.size())));
        }
    }

    private static List<String> distinct(List<String> before, List<Block> blocks) {
        Set<String> codes = new LinkedHashSet<>(before);
        for (Block block : blocks) {
            if (block.complete) {
                codes.add(block.best);
            }
        }
        return List.copyOf(codes);
    }

    /** The list of a layout with one code as its doubtful signs would have it. */
    private void variants(Layout layout) {
        List<String> list = layout.list();
        for (Block column : layout.columns) {
            int at = column == null ? -1 : list.indexOf(column.best);
            if (at >= 0) {
                for (String other : column.choices(column.best, LEAST_VARIED, MOST_CHOICES)) {
                    List<String> varied = new ArrayList<>(list);
                    varied.set(at, other);
                    lists.add(List.copyOf(varied));
                }
            }
        }
    }
}
