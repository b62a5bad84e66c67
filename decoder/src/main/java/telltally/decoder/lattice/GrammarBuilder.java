package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.Light;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.GroupKind;

/** An automaton in the making, with the kind and the place of each of its flashes. */
final class GrammarBuilder {
    private final Automaton.Builder automaton = new Automaton.Builder();
    /** Start and end are of no kind. */
    private final List<GroupKind> kinds = new ArrayList<>(List.of(GroupKind.UNREADABLE, GroupKind.UNREADABLE));

    private final List<Integer> places = new ArrayList<>(List.of(0, 0));

    int node(Light light, boolean missable, GroupKind kind, int place) {
        kinds.add(kind);
        places.add(place);
        return automaton.node(light, missable);
    }

    int[] row(Light light, int length, GroupKind kind, int place) {
        int[] row = new int[length];
        for (int i = 0; i < length; i++) {
            row[i] = node(light, true, kind, place);
        }
        return row;
    }

    int nodes() {
        return automaton.nodes();
    }

    /** Those so far. */
    List<Step> steps() {
        return List.copyOf(automaton.steps());
    }

    /** Within a sign. */
    void step(int from, int to, Gap gap, double weight) {
        automaton.step(from, to, gap, weight, Ends.NOTHING, "", false);
    }

    /** From the end of a sign to the next one of the code. */
    void sign(int from, int to, Gap gap, double weight, String sign) {
        automaton.step(from, to, gap, weight, Ends.SIGN, sign, false);
    }

    /** From the end of a group, with its last sign. */
    void group(int from, int to, Gap gap, double weight, String sign) {
        automaton.step(from, to, gap, weight, Ends.GROUP, sign, false);
    }

    /** The same over a gap that says that the list begins again. */
    void repeat(int from, int to, Gap gap, double weight, String sign) {
        automaton.step(from, to, gap, weight, Ends.GROUP, sign, true);
    }

    /** From the end of a group to that of all. */
    void tail(int node, double weight, String sign) {
        group(node, Automaton.END, Gap.TAIL, weight, sign);
    }

    /** The recording ends within the gap of a step. */
    void breakOff(Step step, Gap part, double weight) {
        automaton.step(step.from(), Automaton.END, part, weight, step.ends(), step.sign(), false);
    }

    FreeGrammar build() {
        return new FreeGrammar(automaton.build(), kinds, places);
    }
}
