package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Cuts the groups of a segment into blocks of one code each, as often as the format sends a code in a row. */
final class BlockCutter {
    private static final double ODD_BLOCK = StrictMath.log(2e-3);

    final List<Block> blocks = new ArrayList<>();
    /** How well the cuts fit, as a logarithm, without the evidence of the blocks themselves. */
    double logEvidence;

    BlockCutter(FormatModel model, List<Found> groups, boolean startsMidway, boolean stopsEarly) {
        int each = model.format.repeats().eachCodeTimes();
        if (each == 1) {
            for (Found group : groups) {
                blocks.add(new Block(model, List.of(group)));
            }
        } else {
            cut(model, groups, each, startsMidway, stopsEarly);
        }
    }

    private void cut(FormatModel model, List<Found> groups, int each, boolean startsMidway, boolean stopsEarly) {
        int count = groups.size();
        double cutBlock = StrictMath.log(1.0 / each);
        double[] best = new double[count + 1];
        Block[] last = new Block[count + 1];
        for (int to = 1; to <= count; to++) {
            best[to] = Double.NEGATIVE_INFINITY;
            for (int size = 1; size <= Math.min(each, to); size++) {
                Block block = new Block(model, groups.subList(to - size, to));
                boolean edge = (to == size && startsMidway) || (to == count && stopsEarly);
                double odd = size == each ? 0 : edge ? cutBlock : ODD_BLOCK;
                double score = best[to - size] + block.logEvidence() + odd;
                if (score > best[to]) {
                    best[to] = score;
                    last[to] = block;
                }
            }
        }
        for (int to = count; to > 0; to -= last[to].groups.size()) {
            blocks.add(last[to]);
        }
        Collections.reverse(blocks);
        logEvidence += best[count];
        for (Block block : blocks) {
            logEvidence -= block.logEvidence();
        }
    }
}
