package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.lattice.Sendings.sign;
import static telltally.decoder.lattice.Sendings.whole;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

/** Cuts in a format that sends each code three times, and against every cut there is. */
class BlockCutterTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final FormatModel THRICE = Sendings.shipped("pair-thrice");
    /** What a block costs that is too short within a recording, and at its brink. */
    private static final double TOO_SHORT = Math.log(0.002);

    private static final double CUT_BY_THE_BRINK = Math.log(1.0 / 3);

    private static List<Found> sendings(String... codes) {
        List<Found> found = new ArrayList<>();
        for (String code : codes) {
            found.add(whole(code));
        }
        return found;
    }

    private static List<String> cut(BlockCutter cutter) {
        return cutter.blocks.stream()
                .map(block -> block.groups.size() + " of " + block.best)
                .toList();
    }

    @Test
    void a_code_sent_once_is_a_block_by_itself() {
        BlockCutter cutter = new BlockCutter(Sendings.shipped("pair-even"), sendings("34", "34", "21"), false, false);
        assertThat(cut(cutter)).containsExactly("1 of 34", "1 of 34", "1 of 21");
        assertThat(cutter.logEvidence).isZero();
    }

    @Test
    void three_sendings_each_are_cut_for_nothing() {
        BlockCutter cutter = new BlockCutter(THRICE, sendings("34", "34", "34", "21", "21", "21"), false, false);
        assertThat(cut(cutter)).containsExactly("3 of 34", "3 of 21");
        assertThat(cutter.logEvidence).isCloseTo(0, EXACT);
    }

    @Test
    void six_sendings_of_one_code_are_two_blocks() {
        BlockCutter cutter = new BlockCutter(THRICE, sendings("34", "34", "34", "34", "34", "34"), false, false);
        assertThat(cut(cutter)).containsExactly("3 of 34", "3 of 34");
    }

    @Test
    void a_short_block_costs_little_where_the_recording_begins_midway() {
        List<Found> groups = sendings("34", "34", "21", "21", "21");
        assertThat(new BlockCutter(THRICE, groups, true, false).logEvidence).isCloseTo(CUT_BY_THE_BRINK, EXACT);
        assertThat(new BlockCutter(THRICE, groups, false, false).logEvidence).isCloseTo(TOO_SHORT, EXACT);
        assertThat(new BlockCutter(THRICE, groups, false, true).logEvidence).isCloseTo(TOO_SHORT, EXACT);
        assertThat(cut(new BlockCutter(THRICE, groups, true, false))).containsExactly("2 of 34", "3 of 21");
    }

    @Test
    void a_short_block_costs_little_where_the_recording_stops_early() {
        List<Found> groups = sendings("34", "34", "34", "21");
        assertThat(new BlockCutter(THRICE, groups, false, true).logEvidence).isCloseTo(CUT_BY_THE_BRINK, EXACT);
        assertThat(new BlockCutter(THRICE, groups, false, false).logEvidence).isCloseTo(TOO_SHORT, EXACT);
        assertThat(new BlockCutter(THRICE, groups, true, false).logEvidence).isCloseTo(TOO_SHORT, EXACT);
        assertThat(cut(new BlockCutter(THRICE, groups, false, true))).containsExactly("3 of 34", "1 of 21");
    }

    @Test
    void a_short_block_amid_others_is_odd_whatever_the_brink() {
        List<Found> groups = sendings("34", "34", "34", "21", "21", "56", "56", "56");
        BlockCutter cutter = new BlockCutter(THRICE, groups, true, true);
        assertThat(cut(cutter)).containsExactly("3 of 34", "2 of 21", "3 of 56");
        assertThat(cutter.logEvidence).isCloseTo(TOO_SHORT, EXACT);
    }

    @Test
    void of_cuts_that_fit_alike_the_one_with_the_odd_block_last_is_taken() {
        BlockCutter cutter = new BlockCutter(THRICE, sendings("34", "34", "34", "34"), false, false);
        assertThat(cut(cutter)).containsExactly("3 of 34", "1 of 34");
    }

    @Test
    void a_doubtful_sending_goes_with_those_it_may_be_one_with() {
        List<Found> groups = sendings("34", "34");
        groups.add(whole(sign("3", 0.4, "2", 0.6), sign("4", 0.4, "1", 0.6)));
        groups.addAll(sendings("21", "21", "21"));
        BlockCutter cutter = new BlockCutter(THRICE, groups, false, false);
        assertThat(cut(cutter)).containsExactly("3 of 34", "3 of 21");
        assertThat(cutter.blocks.get(0).groups).containsExactlyElementsOf(groups.subList(0, 3));
    }

    @Property(tries = 200)
    void no_other_cut_fits_better(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 7) int count,
            @ForAll boolean startsMidway,
            @ForAll boolean stopsEarly) {
        Chance chance = Chance.of(seed);
        List<Found> groups = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double first = chance.between(0.01, 0.99);
            double second = chance.between(0.01, 0.99);
            groups.add(whole(sign("1", first, "2", 1 - first), sign("5", second, "6", 1 - second)));
        }
        BlockCutter cutter = new BlockCutter(THRICE, groups, startsMidway, stopsEarly);
        double found = cutter.logEvidence;
        for (Block block : cutter.blocks) {
            found += block.logEvidence();
        }
        assertThat(found).isCloseTo(bestCut(groups, 0, startsMidway, stopsEarly), EXACT);
        assertThat(cutter.blocks.stream().flatMap(block -> block.groups.stream()))
                .containsExactlyElementsOf(groups);
    }

    /** The best of all ways to cut what is left from one group on. */
    private static double bestCut(List<Found> groups, int from, boolean startsMidway, boolean stopsEarly) {
        if (from == groups.size()) {
            return 0;
        }
        double best = Double.NEGATIVE_INFINITY;
        for (int to = from + 1; to <= Math.min(from + 3, groups.size()); to++) {
            boolean brink = (startsMidway && from == 0) || (stopsEarly && to == groups.size());
            double cost = to - from == 3 ? 0 : brink ? CUT_BY_THE_BRINK : TOO_SHORT;
            double here = new Block(THRICE, groups.subList(from, to)).logEvidence() + cost;
            best = Math.max(best, here + bestCut(groups, to, startsMidway, stopsEarly));
        }
        return best;
    }
}
