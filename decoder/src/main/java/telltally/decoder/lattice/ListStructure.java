package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How the groups of one segment belong together: how long the list is, where in it the recording begins, and which
 * groups are sendings of one code. The evidence of all sendings of a code is multiplied, never voted on.
 */
final class ListStructure {
    private static final double UNLIKELY_CUT = StrictMath.log(0.01);
    private static final double WRONG_MARK = -6;
    private static final double SAME_CODE_TWICE = -8;
    private static final double ODD_BLOCK = StrictMath.log(2e-3);
    private static final double PER_CODE = -0.15;
    private static final int MOST_BLOCKS = 160;
    private static final int MOST_LAYOUTS = 12;
    private static final double ROUGH_MARGIN = 25;
    private static final double SURE_MARGIN = 12;
    private static final double MISMATCH = -7;
    private static final int MOST_VARIED = 3;
    private static final int MOST_CHOICES = 3;
    private static final int MOST_BEGUN = 6;
    private static final double LEAST_BEGUN = 1e-6;
    private static final double LEAST_VARIED = 1e-4;

    /** A code of the list, with the groups that sent it, and how sure its digits are. */
    record Column(Block evidence, String code, double probability) {}

    private final FormatModel model;
    private final boolean startsMidway;
    private final boolean stopsEarly;

    final List<Column> columns = new ArrayList<>();
    final List<Found> framing = new ArrayList<>();
    /** Lists worth weighing against each other exactly, the best guess first. */
    final Set<List<String>> lists = new LinkedHashSet<>();
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
        List<List<Block>> passes = passes(blocks(groups));
        solve(passes);
    }

    /** Cuts the groups into blocks of one code each, as long as the format repeats a code. */
    private List<Block> blocks(List<Found> groups) {
        int each = model.format.repeats().eachCodeTimes();
        int count = groups.size();
        if (each == 1) {
            List<Block> single = new ArrayList<>();
            groups.forEach(group -> single.add(new Block(model, List.of(group))));
            return single;
        }
        double[] best = new double[count + 1];
        Block[] last = new Block[count + 1];
        for (int to = 1; to <= count; to++) {
            best[to] = Double.NEGATIVE_INFINITY;
            for (int size = 1; size <= Math.min(each, to); size++) {
                Block block = new Block(model, groups.subList(to - size, to));
                boolean edge = (to == size && startsMidway) || (to == count && stopsEarly);
                double odd = size == each ? 0 : edge ? Math.log(1.0 / each) : ODD_BLOCK;
                double score = best[to - size] + block.logEvidence() + odd;
                if (score > best[to]) {
                    best[to] = score;
                    last[to] = block;
                }
            }
        }
        List<Block> blocks = new ArrayList<>();
        for (int to = count; to > 0; to -= last[to].groups.size()) {
            blocks.add(0, last[to]);
        }
        logEvidence += best[count];
        for (Block block : blocks) {
            logEvidence -= block.logEvidence();
        }
        return blocks;
    }

    /** The blocks between framing codes. */
    private List<List<Block>> passes(List<Block> blocks) {
        List<List<Block>> passes = new ArrayList<>();
        List<Block> pass = new ArrayList<>();
        passes.add(pass);
        for (Block block : blocks) {
            if (model.format.framingCode().filter(block.best()::equals).isPresent()) {
                framing.addAll(block.groups);
                // That a known code comes is worth as much as choosing it among all would have cost.
                for (Guess sign : block.signs) {
                    logEvidence += sign.log(sign.best());
                }
                pass = new ArrayList<>();
                passes.add(pass);
            } else {
                pass.add(block);
            }
        }
        return passes;
    }

    private void solve(List<List<Block>> passes) {
        boolean framed = passes.size() > 1;
        Frame frame = new Frame(
                framed && passes.get(0).isEmpty(),
                framed && passes.get(passes.size() - 1).isEmpty());
        List<List<Block>> filled =
                passes.stream().filter(pass -> !pass.isEmpty()).toList();
        if (filled.isEmpty()) {
            return;
        }
        filled.forEach(pass -> stretches.add(pass.size()));
        framedFirst = frame.first();
        framedLast = frame.last();
        List<Layout> layouts = new ArrayList<>(promising(filled, frame));
        layouts.forEach(layout -> fill(layout, filled));
        double top = layouts.stream().mapToDouble(layout -> layout.score).max().orElse(0);
        double sum = layouts.stream()
                .mapToDouble(layout -> Math.exp(layout.score - top))
                .sum();
        logEvidence += top + Math.log(sum);
        Layout best = layouts.stream()
                .filter(layout -> layout.score == top)
                .findFirst()
                .orElseThrow();
        double share = 0;
        String text = best.text();
        for (Layout layout : layouts) {
            if (layout.score > top - 12 && layout.text().equals(text)) {
                share += Math.exp(layout.score - top) / sum;
            }
        }
        whole = Arrays.stream(best.columns).noneMatch(column -> column == null) && complete(best, filled);
        layouts.sort(java.util.Comparator.comparingDouble((Layout layout) -> -layout.score));
        layouts.forEach(layout -> lists.add(layout.list()));
        windows(filled, best.columns.length);
        layouts.stream().limit(MOST_VARIED).forEach(this::variants);
        for (Block column : best.columns) {
            if (column != null) {
                String code = column.best();
                columns.add(new Column(column, code, Math.min(1, column.probability(code) * share)));
            }
        }
    }

    /** The first group may have been cut by the beginning of the recording, or be whole as it stands. */
    private void beginnings(List<Block> blocks) {
        List<String> rest = blocks.subList(1, blocks.size()).stream()
                .filter(Block::complete)
                .map(Block::best)
                .toList();
        for (String first : blocks.get(0).choices("", LEAST_BEGUN, MOST_BEGUN)) {
            List<String> list = new ArrayList<>(List.of(first));
            list.addAll(rest);
            lists.add(list.stream().distinct().toList());
        }
    }

    /** The list of a layout with one code as its doubtful signs would have it. */
    private void variants(Layout layout) {
        List<String> list = layout.list();
        for (Block column : layout.columns) {
            int at = column == null ? -1 : list.indexOf(column.best());
            if (at >= 0) {
                for (String other : column.choices(column.best(), LEAST_VARIED, MOST_CHOICES)) {
                    List<String> varied = new ArrayList<>(list);
                    varied.set(at, other);
                    lists.add(List.copyOf(varied));
                }
            }
        }
    }

    /** Whether every stretch holds the list a whole number of times. */
    private boolean complete(Layout layout, List<List<Block>> passes) {
        int times = model.format.repeats().listTimes();
        int codes = layout.columns.length;
        return layout.phase == 0
                && passes.stream()
                        .allMatch(pass -> times == 0 ? pass.size() % codes == 0 : pass.size() == codes * times);
    }

    /** Neighbouring blocks as they stand: one of them is the list where a repeat was torn or ran together. */
    private void windows(List<List<Block>> passes, int codes) {
        for (List<Block> pass : passes) {
            for (int length = Math.max(1, codes - 1); length <= codes + 1; length++) {
                for (int from : new int[] {0, pass.size() - length, length}) {
                    if (from >= 0 && from + length <= pass.size()) {
                        if (from == 0 && pass == passes.get(0)) {
                            beginnings(pass.subList(0, length));
                        }
                        lists.add(pass.subList(from, from + length).stream()
                                .filter(Block::complete)
                                .map(Block::best)
                                .distinct()
                                .toList());
                    }
                }
            }
            int half = pass.size() / 2;
            if (model.format.repeats().listTimes() == 2 && half > 0) {
                for (int from : new int[] {0, half, pass.size() - half}) {
                    lists.add(pass.subList(from, from + half).stream()
                            .filter(Block::complete)
                            .map(Block::best)
                            .distinct()
                            .toList());
                }
            }
        }
    }

    /** Whether framing codes stand before the first and after the last block. */
    private record Frame(boolean first, boolean last) {}

    /** The layouts in which the most probable codes agree best; the others cannot come near them. */
    private List<Layout> promising(List<List<Block>> passes, Frame frame) {
        int longest = passes.stream().mapToInt(List::size).max().orElse(0);
        int most =
                Math.min(Math.min(longest, MOST_BLOCKS), model.format.repeats().mostCodes());
        int[][] ids = ids(passes);
        List<Layout> layouts = new ArrayList<>();
        for (int codes = 1; codes <= most; codes++) {
            for (int phase : phases(passes, codes, frame)) {
                double prior = prior(passes, codes, phase, frame);
                if (prior > Double.NEGATIVE_INFINITY) {
                    Layout layout = new Layout(codes, phase, prior);
                    layout.rough = prior + agreement(ids, codes, phase);
                    layouts.add(layout);
                }
            }
        }
        layouts.sort(java.util.Comparator.comparingDouble((Layout layout) -> -layout.rough));
        boolean sure = passes.stream().allMatch(pass -> pass.stream().allMatch(Block::sure));
        double margin = sure ? SURE_MARGIN : ROUGH_MARGIN;
        int keep = 1;
        while (keep < Math.min(MOST_LAYOUTS, layouts.size())
                && layouts.get(keep).rough > layouts.get(0).rough - margin) {
            keep++;
        }
        return layouts.subList(0, keep);
    }

    private static int[][] ids(List<List<Block>> passes) {
        java.util.Map<String, Integer> known = new java.util.HashMap<>();
        return passes.stream()
                .map(pass -> pass.stream()
                        .mapToInt(block -> known.computeIfAbsent(block.best(), text -> known.size()))
                        .toArray())
                .toArray(int[][]::new);
    }

    /** Where in the list the first block may stand. */
    private int[] phases(List<List<Block>> passes, int codes, Frame frame) {
        int times = model.format.repeats().listTimes();
        int slots = times == 0 ? codes : codes * times;
        if (frame.first()) {
            return new int[] {0};
        }
        if (startsMidway && stopsEarly) {
            return java.util.stream.IntStream.range(0, slots).toArray();
        }
        int aligned = Math.floorMod(-passes.get(0).size(), slots);
        return aligned == 0 ? new int[] {0} : new int[] {0, aligned};
    }

    private double prior(List<List<Block>> passes, int codes, int phase, Frame frame) {
        int times = model.format.repeats().listTimes();
        int slots = times == 0 ? codes : codes * times;
        double score = PER_CODE * codes;
        for (int i = 0; i < passes.size(); i++) {
            int to = (i == 0 ? phase : 0) + passes.get(i).size();
            if (times != 0 && to > slots) {
                return Double.NEGATIVE_INFINITY;
            }
            if (times == 0 ? to % codes != 0 : to != slots) {
                boolean open = i == passes.size() - 1 && !frame.last();
                score += open ? (stopsEarly ? 0 : UNLIKELY_CUT) - Math.log(slots) : 2 * UNLIKELY_CUT;
            }
        }
        if (phase > 0 && !startsMidway) {
            score += UNLIKELY_CUT;
        }
        return score - (startsMidway || phase > 0 ? Math.log(slots) : 0);
    }

    /** Each code that is sent again saves choosing it; each that differs costs a mistake. */
    private double agreement(int[][] ids, int codes, int phase) {
        double perMatch = 0;
        for (int place = 0; place < Math.max(1, model.places()); place++) {
            perMatch += Math.log(model.choices(place));
        }
        int[] first = new int[codes];
        Arrays.fill(first, -1);
        double score = 0;
        for (int i = 0; i < ids.length; i++) {
            int at = i == 0 ? phase % codes : 0;
            for (int id : ids[i]) {
                if (first[at] < 0) {
                    first[at] = id;
                } else {
                    score += first[at] == id ? perMatch : MISMATCH;
                }
                at = at + 1 == codes ? 0 : at + 1;
            }
        }
        return score;
    }

    /** One way to lay the blocks out. */
    private static final class Layout {
        private final Block[] columns;
        private final int phase;
        private double score;
        private double rough;

        Layout(int codes, int phase, double prior) {
            this.columns = new Block[codes];
            this.phase = phase;
            this.score = prior;
        }

        List<String> list() {
            return Arrays.stream(columns)
                    .filter(column -> column != null && column.complete() && column.whole)
                    .map(Block::best)
                    .distinct()
                    .toList();
        }

        String text() {
            StringBuilder text = new StringBuilder();
            for (Block column : columns) {
                text.append(column == null ? "-" : column.best()).append(' ');
            }
            return text.toString();
        }
    }

    private void fill(Layout layout, List<List<Block>> passes) {
        int codes = layout.columns.length;
        List<List<Found>> members = new ArrayList<>();
        for (int i = 0; i < codes; i++) {
            members.add(new ArrayList<>());
        }
        boolean marked =
                model.format.gaps().beforeRepeatNanos() != model.format.gaps().betweenCodesNanos()
                        && model.format.repeats().mostCodes() > 1;
        for (int i = 0; i < passes.size(); i++) {
            int at = i == 0 ? layout.phase : 0;
            for (int k = 0; k < passes.get(i).size(); k++, at++) {
                Block block = passes.get(i).get(k);
                members.get(at % codes).addAll(block.groups);
                if (marked && k > 0 && block.repeat != (at % codes == 0)) {
                    layout.score += WRONG_MARK;
                }
            }
        }
        for (int i = 0; i < codes; i++) {
            if (!members.get(i).isEmpty()) {
                layout.columns[i] = new Block(model, members.get(i));
                layout.score += layout.columns[i].logEvidence();
            }
        }
        String[] texts = Arrays.stream(layout.columns)
                .filter(column -> column != null)
                .map(Block::best)
                .toArray(String[]::new);
        layout.score += SAME_CODE_TWICE
                * (texts.length - Arrays.stream(texts).distinct().count());
    }
}
