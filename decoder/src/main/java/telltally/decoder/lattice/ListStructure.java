package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How the groups of one segment belong together: how long the list is, where in it the recording begins, and which
 * groups are sendings of one code. The evidence of all sendings of a code is multiplied, never voted on.
 */
final class ListStructure {
    private static final double UNLIKELY_CUT = StrictMath.log(0.01);
    private static final double PER_CODE = -0.15;
    /** Cut at its beginning or at its end is often as likely, to the last bit; then the list begins where it was seen. */
    private static final double HARDLY_BETTER = 1e-6;

    private static final int MOST_BLOCKS = 160;
    private static final int MOST_LAYOUTS = 12;
    private static final double ROUGH_MARGIN = 25;
    private static final double SURE_MARGIN = 12;

    /** A code of the list, with the groups that sent it, and how sure its digits are. */
    record Column(Block evidence, String code, double probability) {}

    private final FormatModel model;
    private final boolean startsMidway;
    private final boolean stopsEarly;
    private final List<List<Block>> passes = new ArrayList<>();
    private List<Layout> layouts = List.of();

    final List<Column> columns = new ArrayList<>();
    final List<Found> framing = new ArrayList<>();
    /** By stretch between framing codes, how many blocks it has. */
    final List<Integer> stretches = new ArrayList<>();

    boolean framedFirst;
    boolean framedLast;
    boolean whole;
    double logEvidence;

    ListStructure(FormatModel model, List<Found> groups, boolean startsMidway, boolean stopsEarly) {
        this.model = model;
        this.startsMidway = startsMidway;
        this.stopsEarly = stopsEarly;
        BlockCutter cutter = new BlockCutter(model, groups, startsMidway, stopsEarly);
        logEvidence += cutter.logEvidence;
        cutAtFrames(cutter.blocks);
        if (!passes.isEmpty()) {
            solve();
        }
    }

    /** The blocks between framing codes, as far as there are any. */
    private void cutAtFrames(List<Block> blocks) {
        List<Block> pass = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            if (model.framingCode.equals(block.best)) {
                framing.addAll(block.groups);
                framedFirst |= i == 0;
                framedLast |= i == blocks.size() - 1;
                // That a known code comes is worth as much as choosing it among all would have cost.
                for (Guess sign : block.signs) {
                    logEvidence += sign.log(sign.best());
                }
                close(pass);
                pass = new ArrayList<>();
            } else {
                pass.add(block);
            }
        }
        close(pass);
    }

    private void close(List<Block> pass) {
        if (!pass.isEmpty()) {
            passes.add(pass);
            stretches.add(pass.size());
        }
    }

    private void solve() {
        layouts = promising();
        double top = Double.NEGATIVE_INFINITY;
        for (Layout layout : layouts) {
            layout.fill(model, passes);
            top = Math.max(top, layout.score);
        }
        double sum = 0;
        for (Layout layout : layouts) {
            sum += StrictMath.exp(layout.score - top);
        }
        logEvidence += top + StrictMath.log(sum);
        layouts.sort(Comparator.comparingDouble(layout -> (layout.phase > 0 ? HARDLY_BETTER : 0) - layout.score));
        Layout best = layouts.get(0);
        double share = 0;
        for (Layout layout : layouts) {
            if (layout.score > top - SURE_MARGIN && layout.readsAs(best)) {
                share += StrictMath.exp(layout.score - top) / sum;
            }
        }
        whole = best.full() && complete(best);
        for (Block column : best.columns) {
            if (column != null) {
                columns.add(new Column(column, column.best, Math.min(1, column.probability(column.best) * share)));
            }
        }
    }

    /** Lists worth weighing against each other exactly, the best guess first. */
    Set<List<String>> lists() {
        return new LikelyLists(model.format.repeats().listTimes(), passes, layouts).lists();
    }

    /** What the groups of {@link #framing} send, whatever was seen of each. */
    String framingCode() {
        return model.framingCode;
    }

    /** The codes that the blocks read, each by itself. */
    Set<String> readCodes() {
        Set<String> codes = new LinkedHashSet<>();
        for (List<Block> pass : passes) {
            for (Block block : pass) {
                if (block.complete) {
                    codes.add(block.best);
                }
            }
        }
        return codes;
    }

    /** Whether every stretch holds the list a whole number of times. */
    private boolean complete(Layout layout) {
        int times = model.format.repeats().listTimes();
        boolean complete = layout.phase == 0;
        for (List<Block> pass : passes) {
            complete &= times == 0 ? pass.size() % layout.codes == 0 : pass.size() == layout.codes * times;
        }
        return complete;
    }

    /** The layouts in which the most probable codes agree best; the others cannot come near them. */
    private List<Layout> promising() {
        int longest = 0;
        for (List<Block> pass : passes) {
            longest = Math.max(longest, pass.size());
        }
        int most =
                Math.min(Math.min(longest, MOST_BLOCKS), model.format.repeats().mostCodes());
        List<Layout> all = layouts(most, Double.NEGATIVE_INFINITY);
        if (all.isEmpty()) {
            // More groups than the format sends in any list: it was sent more often than it should have been.
            all = layouts(most, 2 * UNLIKELY_CUT);
        }
        all.sort(Comparator.comparingDouble(layout -> -layout.rough));
        double margin = sure() ? SURE_MARGIN : ROUGH_MARGIN;
        int keep = 1;
        while (keep < Math.min(MOST_LAYOUTS, all.size()) && all.get(keep).rough > all.get(0).rough - margin) {
            keep++;
        }
        return new ArrayList<>(all.subList(0, keep));
    }

    /** @param overfull what a stretch costs that holds more than its lists can, as a logarithm */
    private List<Layout> layouts(int most, double overfull) {
        int[][] ids = ids();
        List<Layout> all = new ArrayList<>();
        for (int codes = 1; codes <= most; codes++) {
            for (int phase : phases(codes)) {
                double prior = prior(codes, phase, overfull);
                if (prior > Double.NEGATIVE_INFINITY) {
                    all.add(new Layout(model, codes, phase, prior, ids));
                }
            }
        }
        return all;
    }

    private boolean sure() {
        for (List<Block> pass : passes) {
            for (Block block : pass) {
                if (!block.sure()) {
                    return false;
                }
            }
        }
        return true;
    }

    private int[][] ids() {
        Map<String, Integer> known = new HashMap<>();
        int[][] ids = new int[passes.size()][];
        for (int i = 0; i < ids.length; i++) {
            List<Block> pass = passes.get(i);
            ids[i] = new int[pass.size()];
            for (int k = 0; k < ids[i].length; k++) {
                Integer id = known.putIfAbsent(pass.get(k).best, known.size());
                ids[i][k] = id == null ? known.size() - 1 : id;
            }
        }
        return ids;
    }

    private int slots(int codes) {
        int times = model.format.repeats().listTimes();
        return times == 0 ? codes : codes * times;
    }

    /** Where in the list the first block may stand. */
    private int[] phases(int codes) {
        int slots = slots(codes);
        if (framedFirst) {
            return new int[] {0};
        }
        if (startsMidway && stopsEarly) {
            int[] phases = new int[slots];
            for (int i = 0; i < slots; i++) {
                phases[i] = i;
            }
            return phases;
        }
        int aligned = Math.floorMod(-passes.get(0).size(), slots);
        return aligned == 0 ? new int[] {0} : new int[] {0, aligned};
    }

    private double prior(int codes, int phase, double overfull) {
        boolean once = model.format.repeats().listTimes() != 0;
        int slots = slots(codes);
        double anywhere = -StrictMath.log(slots);
        double score = PER_CODE * codes;
        for (int i = 0; i < passes.size(); i++) {
            int to = (i == 0 ? phase : 0) + passes.get(i).size();
            if (once && to > slots) {
                score += overfull;
            } else if (once ? to != slots : to % codes != 0) {
                boolean open = i == passes.size() - 1 && !framedLast;
                score += open ? (stopsEarly ? 0 : UNLIKELY_CUT) + anywhere : 2 * UNLIKELY_CUT;
            }
        }
        if (phase > 0 && !startsMidway) {
            score += UNLIKELY_CUT;
        }
        return score + (startsMidway || phase > 0 ? anywhere : 0);
    }
}
