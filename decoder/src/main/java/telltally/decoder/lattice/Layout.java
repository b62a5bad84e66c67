package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One way to lay blocks out in the columns of a list: how many codes it has, and in which the recording begins. */
final class Layout {
    private static final double WRONG_MARK = -6;
    private static final double SAME_CODE_TWICE = -8;
    private static final double MISMATCH = -7;

    final int codes;
    final int phase;
    /** How probable the layout is and how well the most probable codes agree in it, as a logarithm. */
    final double rough;

    private final double prior;
    /** By column; none where it was not seen. */
    final List<@Nullable Block> columns = new ArrayList<>();
    /** The logarithm of its weight, once it was filled. */
    double score;

    /** @param ids a number for the most probable code of each block, by stretch */
    Layout(FormatModel model, int codes, int phase, double prior, int[][] ids) {
        this.codes = codes;
        this.phase = phase;
        this.prior = prior;
        this.rough = prior + agreement(ids, model.logChoicesOfACode);
    }

    /** Each code that is sent again saves choosing it; each that differs costs a mistake. */
    private double agreement(int[][] ids, double perMatch) {
        int[] first = new int[codes];
        Arrays.fill(first, -1);
        double sum = 0;
        for (int i = 0; i < ids.length; i++) {
            int at = i == 0 ? phase % codes : 0;
            for (int id : ids[i]) {
                if (first[at] < 0) {
                    first[at] = id;
                } else {
                    sum += first[at] == id ? perMatch : MISMATCH;
                }
                at = at + 1 == codes ? 0 : at + 1;
            }
        }
        return sum;
    }

    /** Takes the evidence of all sendings of each column together. */
    void fill(FormatModel model, List<List<Block>> passes) {
        List<List<Found>> members = new ArrayList<>();
        for (int i = 0; i < codes; i++) {
            members.add(new ArrayList<>());
        }
        score = prior;
        for (int i = 0; i < passes.size(); i++) {
            int at = i == 0 ? phase : 0;
            for (int k = 0; k < passes.get(i).size(); k++, at++) {
                Block block = passes.get(i).get(k);
                members.get(at % codes).addAll(block.groups);
                if (model.marksRepeats && k > 0 && block.repeat != (at % codes == 0)) {
                    score += WRONG_MARK;
                }
            }
        }
        for (List<Found> sendings : members) {
            Block column = sendings.isEmpty() ? null : new Block(model, sendings);
            columns.add(column);
            score += column == null ? 0 : column.logEvidence();
        }
        score += SAME_CODE_TWICE * twice();
    }

    /** How many columns hold a code that another before them holds. */
    private int twice() {
        int twice = 0;
        for (int i = 0; i < codes; i++) {
            Block column = columns.get(i);
            boolean known = false;
            for (int k = 0; k < i && column != null && !known; k++) {
                Block before = columns.get(k);
                known = before != null && before.best.equals(column.best);
            }
            twice += known ? 1 : 0;
        }
        return twice;
    }

    /** Whether something was seen of every column. */
    boolean full() {
        return !columns.contains(null);
    }

    /** Whether both read alike, whatever their phases. */
    boolean readsAs(Layout other) {
        boolean alike = codes == other.codes;
        for (int i = 0; i < codes && alike; i++) {
            Block one = columns.get(i);
            Block two = other.columns.get(i);
            alike = (one == null || two == null) ? one == two : one.best.equals(two.best);
        }
        return alike;
    }

    /** The codes that can be told, each once. */
    List<String> list() {
        List<String> list = new ArrayList<>();
        for (Block column : columns) {
            if (column != null && column.complete && column.whole && !list.contains(column.best)) {
                list.add(column.best);
            }
        }
        return List.copyOf(list);
    }
}
