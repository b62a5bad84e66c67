package telltally.decoder.lattice;

import java.util.List;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;

/**
 * What a format may send, one code after the other, without regard to what was sent before: the automaton that finds
 * groups and signs. That a list is sent again is the business of {@link SentList}.
 */
final class FreeGrammar {
    /** Probability that a recording begins within a list, at any instant of it alike. */
    static final double MIDWAY = 0.015;
    /** Probability that a recording ends within a list, for each second of it. */
    static final double EARLY = 1e-4;

    /** The place by which even blinking is told from other steady light. */
    static final int BLINKING = 1;

    final Automaton automaton;
    final GroupKind[] kindOf;
    /** Which place of a code a flash belongs to; 0 where the kind has no places. */
    final int[] placeOf;
    /** Whether a flash may be the first of its group. */
    final boolean[] begins;

    FreeGrammar(Automaton automaton, List<GroupKind> kinds, List<Integer> places) {
        this.automaton = automaton;
        this.kindOf = kinds.toArray(new GroupKind[0]);
        this.placeOf = places.stream().mapToInt(Integer::intValue).toArray();
        this.begins = new boolean[automaton.nodes];
        for (Step step : automaton.steps) {
            begins[step.to()] |= step.ends() == Ends.GROUP || step.gap().kind() == GapKind.LEAD;
        }
    }

    static FreeGrammar of(FlashFormat format, FormatTimes times) {
        return new GrammarMaker(format, times).make();
    }
}
