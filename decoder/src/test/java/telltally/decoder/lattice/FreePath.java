package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.GroupKind;

/** One way through a lattice, and its share of all. */
record FreePath(List<Integer> arcs, double share) {
    /** A sign that one path reads, and the first flash of its group. */
    record Sign(GroupKind kind, int groupFrom, int place, String text) {}

    /** What has a share of less than this is not followed. */
    private static final double NEXT_TO_NOTHING = 1e-10;

    static List<FreePath> all(Pass pass) {
        Lattice lattice = pass.lattice();
        Map<Integer, List<Integer>> arcsFrom = new HashMap<>();
        for (int arc = 0; arc < lattice.arcCount(); arc++) {
            arcsFrom.computeIfAbsent(lattice.arcFrom(arc), node -> new ArrayList<>())
                    .add(arc);
        }
        List<FreePath> ended = new ArrayList<>();
        List<FreePath> open = new ArrayList<>(List.of(new FreePath(List.of(), 1)));
        while (!open.isEmpty()) {
            FreePath path = open.remove(open.size() - 1);
            int node = path.arcs.isEmpty() ? lattice.firstNode(0) : lattice.arcTo(path.arcs.get(path.arcs.size() - 1));
            for (int arc : arcsFrom.getOrDefault(node, List.of())) {
                // Of those through a node, the share that goes on over this arc.
                double onward = lattice.arcShare(arc) / lattice.nodeShare(node);
                if (path.share * onward > NEXT_TO_NOTHING) {
                    List<Integer> arcs = new ArrayList<>(path.arcs);
                    arcs.add(arc);
                    FreePath longer = new FreePath(arcs, path.share * onward);
                    (lattice.arcTo(arc) == pass.sink() ? ended : open).add(longer);
                }
            }
        }
        return ended;
    }

    List<Sign> signs(GroupSearch search) {
        FreeGrammar grammar = search.model().grammar;
        List<Sign> signs = new ArrayList<>();
        int groupFrom = -1;
        for (int arc : arcs) {
            int edge = search.pass().lattice().arcTag(arc);
            int flash = search.pass().flashOf(search.pass().lattice().arcTo(arc));
            for (int i = 0; i <= grammar.automaton.edgeMissed[edge]; i++) {
                Step step = grammar.automaton.step(edge, i);
                if (!step.sign().isEmpty()) {
                    signs.add(new Sign(
                            grammar.kindOf[step.from()], groupFrom, grammar.placeOf[step.from()], step.sign()));
                }
                if (step.from() == Automaton.START || step.ends() == Ends.GROUP) {
                    groupFrom = flash;
                }
            }
        }
        return signs;
    }
}
