package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.GroupKind;

/** Reads groups off the best path, and off all other paths what else each sign may have been. */
final class GroupFinder {
    private static final double LEAST_SHARE = 1e-9;
    private static final double DOUBTFUL = 0.9;
    /** How many counts cylinder flashes, balance results and the like may have. */
    private static final int COUNT_CHOICES = 9;

    /** A place on the best path where the gap says something to warn of. */
    record Oddity(int afterFlash, int nextFlash, int missed, int ghosts, boolean withinSign, double share) {}

    private final FormatModel model;
    private final Automaton automaton;
    private final Pass pass;
    private final Lattice lattice;
    final List<Found> groups = new ArrayList<>();
    final List<Oddity> oddities = new ArrayList<>();
    boolean startsMidway;
    boolean stopsEarly;
    int unexplained;

    GroupFinder(FormatModel model, Pass pass) {
        this.model = model;
        this.automaton = model.grammar.automaton;
        this.pass = pass;
        this.lattice = pass.lattice();
    }

    void find() {
        lattice.sweepBack(pass.sink());
        @Nullable Found group = null;
        for (int arc : pass.bestPath()) {
            int edge = lattice.arcTag(arc);
            int flash = pass.flashOf(lattice.arcTo(arc));
            noteOddity(pass.flashOf(lattice.arcFrom(arc)), flash, edge, lattice.arcShare(arc));
            for (int i = 0; i <= automaton.edgeMissed[edge]; i++) {
                Step step = automaton.step(edge, i);
                if (group != null && step.ends() != Ends.NOTHING && !step.sign().isEmpty()) {
                    group.read.add(step.sign());
                    group.places.add(model.grammar.placeOf[step.from()]);
                }
                if (step.from() == Automaton.START || step.ends() == Ends.GROUP || leavesKind(step)) {
                    if (group != null) {
                        group.nextFlash = flash;
                        group.unfinished |= step.ends() != Ends.GROUP;
                    }
                    group = step.to() == Automaton.END ? null : begun(step, flash);
                } else if (step.to() == Automaton.END && group != null) {
                    group.nextFlash = flash;
                    group.unfinished = true;
                }
                stopsEarly |= step.gap().kind() == GapKind.TAIL_CUT;
            }
            if (group != null && automaton.edgeTo[edge] != Automaton.END) {
                group.lastFlash = flash;
                unexplained += group.kind == GroupKind.UNREADABLE ? 1 : 0;
            }
        }
        dropUnseen();
        groups.forEach(this::guess);
    }

    /** A group of which no flash was seen is none; where it was a separator, the next group begins a segment all the same. */
    private void dropUnseen() {
        boolean separated = false;
        for (Found group : List.copyOf(groups)) {
            if (group.nextFlash <= group.firstFlash) {
                separated |= group.kind == GroupKind.SEPARATOR;
                groups.remove(group);
            } else {
                group.afterUnseenSeparator = separated;
                separated = false;
            }
        }
    }

    private void noteOddity(int before, int flash, int edge, double share) {
        int ghosts = flash - before - 1;
        int missed = automaton.edgeMissed[edge];
        if (missed > 0 || ghosts > 0 || (share < DOUBTFUL && before >= 0)) {
            boolean within = missed > 0;
            for (int i = 0; i <= missed; i++) {
                within &= automaton.step(edge, i).ends() == Ends.NOTHING;
            }
            oddities.add(new Oddity(before, flash, missed, ghosts, within, share));
        }
    }

    private boolean leavesKind(Step step) {
        return step.to() != Automaton.END && model.grammar.kindOf[step.from()] != model.grammar.kindOf[step.to()];
    }

    private Found begun(Step step, int flash) {
        boolean midway = step.from() == Automaton.START && step.gap().kind() == GapKind.LEAD_CUT;
        startsMidway |= midway;
        boolean partial = midway && (!model.grammar.begins[step.to()] || (flash == 0 && pass.flashes.cutAtStart));
        Found group = new Found(
                model.grammar.kindOf[step.to()], flash, model.grammar.placeOf[step.to()], partial, step.repeat());
        groups.add(group);
        return group;
    }

    /** What each sign of a group may have been, by all paths that go through it. */
    private void guess(Found group) {
        if (model.places == 0) {
            group.read.forEach(sign -> {
                Guess sure = Guess.ofShares(model.choices(0));
                sure.add(sign, 1);
                group.signs.add(sure);
            });
            return;
        }
        int count = group.read.size();
        Shares[] shares = new Shares[count];
        for (int i = 0; i < count; i++) {
            shares[i] = new Shares(group.places.get(i));
        }
        for (int layer = group.firstFlash + 1; layer <= group.nextFlash + 1; layer++) {
            for (int arc = lattice.firstArc(layer); arc < lattice.lastArc(layer); arc++) {
                collect(group, arc, layer, shares);
            }
        }
        for (Shares each : shares) {
            Guess guess = Guess.ofShares(group.kind == GroupKind.CODE ? model.choices(each.place) : COUNT_CHOICES);
            each.into(guess);
            group.signs.add(guess);
        }
    }

    private void collect(Found group, int arc, int layer, Shares[] shares) {
        double share = lattice.arcShare(arc);
        if (share < LEAST_SHARE) {
            return;
        }
        // What an arc into the first flash leaves behind belongs to the group before until a group ends.
        boolean mine = layer > group.firstFlash + 1;
        int edge = lattice.arcTag(arc);
        for (int i = 0; i <= automaton.edgeMissed[edge]; i++) {
            Step step = automaton.step(edge, i);
            if (mine && !step.sign().isEmpty() && model.grammar.kindOf[step.from()] == group.kind) {
                for (Shares of : shares) {
                    if (of.place == model.grammar.placeOf[step.from()]) {
                        of.add(step.sign(), share);
                    }
                }
            }
            if (step.ends() == Ends.GROUP || step.from() == Automaton.START) {
                if (mine && layer == group.nextFlash + 1) {
                    return;
                }
                mine = true;
            }
        }
    }

    /** Shares by sign, to be made to add up to one. */
    private static final class Shares {
        private final int place;
        private String[] signs = new String[2];
        private double[] shares = new double[2];
        private int count;

        Shares(int place) {
            this.place = place;
        }

        void add(String sign, double share) {
            int at = 0;
            while (at < count && !signs[at].equals(sign)) {
                at++;
            }
            if (at == signs.length) {
                signs = Arrays.copyOf(signs, 2 * count);
                shares = Arrays.copyOf(shares, 2 * count);
            }
            if (at == count) {
                signs[count] = sign;
                shares[count++] = 0;
            }
            shares[at] += share;
        }

        void into(Guess guess) {
            double total = 0;
            for (int i = 0; i < count; i++) {
                total += shares[i];
            }
            for (int i = 0; i < count; i++) {
                guess.add(signs[i], shares[i] / total);
            }
        }
    }
}
