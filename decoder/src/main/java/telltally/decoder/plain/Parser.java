package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import telltally.decoder.plain.Parse.Part;
import telltally.decoder.plain.Role.Sort;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.LeadIn;
import telltally.simulator.format.FlashFormat.Sessions;

/**
 * Finds the cheapest roles for all runs of a train (Viterbi, IEEE Transactions on Information Theory 13(2), 1967). A
 * digit may be made of a few runs, where flashes in between were not seen.
 */
final class Parser {
    /** Two unseen flashes in one digit at most. */
    private static final int MOST_RUNS_A_DIGIT = 3;

    /** A gap this far (as a logarithm) from one that hides a flash hides none. */
    private static final double UNSEEN_REACH = 0.35;

    private static final int MOST_CYLINDER_FLASHES = 12;

    /** A light of any length, but not much longer than a flash: instead of what it costs as a flash. */
    private static final double PERHAPS_STEADY = Cost.CHANCE + 2;

    /** What is this much dearer than the cheapest does not become the cheapest any more. */
    private static final double HOPELESS = 60;

    private static final double IMPOSSIBLE = Double.POSITIVE_INFINITY;

    private final Lengths lengths;
    private final Grammar grammar;
    private final SignTable signs;
    private final double leadInLit;
    private final int cylinderKind;
    private final int separatorFlashes;
    private final int mostBalanceFlashes;

    Parser(FlashFormat format, Lengths lengths, SignTable signs) {
        this.lengths = lengths;
        this.grammar = new Grammar(format, lengths);
        this.signs = signs;
        this.leadInLit = format.leadIn().map(LeadIn::litNanos).map(Lengths::log).orElse(IMPOSSIBLE);
        this.cylinderKind = format.sessions()
                .map(Sessions::cylinderFlash)
                .map(lengths::kind)
                .orElse(-1);
        this.separatorFlashes =
                format.sessions().map(Sessions::separatorFlashes).orElse(0);
        this.mostBalanceFlashes =
                format.sessions().map(Sessions::mostBalanceFlashes).orElse(0);
    }

    /** @param runs at least one */
    Parse parse(Runs runs) {
        int roles = grammar.size();
        // Costs of the last few columns only, and for every run and role the way that led there.
        double[][] costs = new double[MOST_RUNS_A_DIGIT + 1][roles];
        short[] ways = new short[(runs.size() + 1) * roles];
        Arrays.fill(costs[0], IMPOSSIBLE);
        costs[0][0] = 0;
        for (int read = 1; read <= runs.size(); read++) {
            double[] column = costs[read % costs.length];
            Arrays.fill(column, IMPOSSIBLE);
            for (int first = read - 1; first >= 0 && read - first <= MOST_RUNS_A_DIGIT; first--) {
                double unseen = unseenCost(runs, first, read - 1);
                if (unseen == IMPOSSIBLE) {
                    break;
                }
                double[] before = costs[first % costs.length];
                for (int role = 1; role < roles; role++) {
                    double cost = unseen + cost(grammar.role(role), runs, first, read - 1);
                    if (cost < IMPOSSIBLE) {
                        extend(runs, first, read, role, cost, before, column, ways);
                    }
                }
            }
            forgetHopeless(column);
        }
        return cheapest(runs, costs[runs.size() % costs.length], ways);
    }

    private static void forgetHopeless(double[] column) {
        double least = IMPOSSIBLE;
        for (double cost : column) {
            least = Math.min(least, cost);
        }
        for (int role = 0; role < column.length; role++) {
            if (column[role] > least + HOPELESS) {
                column[role] = IMPOSSIBLE;
            }
        }
    }

    private void extend(
            Runs runs, int first, int read, int role, double cost, double[] before, double[] column, short[] ways) {
        double gap = first == 0 ? 0 : runs.gapBefore(runs.first(first));
        Grammar.Step[] steps = grammar.stepsTo(role);
        for (int i = 0; i < steps.length; i++) {
            Grammar.Step step = steps[i];
            double sum = before[step.from()] + step.toll() + cost;
            if (sum < column[role]) {
                sum += first == 0 ? 0 : step.gap().cost(gap);
                if (sum < column[role]) {
                    column[role] = sum;
                    ways[read * grammar.size() + role] = (short) (i * MOST_RUNS_A_DIGIT + (read - first - 1));
                }
            }
        }
    }

    private Parse cheapest(Runs runs, double[] costs, short[] ways) {
        int role = 0;
        double least = IMPOSSIBLE;
        for (int i = 1; i < costs.length; i++) {
            if (costs[i] + grammar.ending(i) < least) {
                least = costs[i] + grammar.ending(i);
                role = i;
            }
        }
        boolean stopsEarly = grammar.ending(role) > 0;
        List<Part> parts = new ArrayList<>();
        int read = runs.size();
        while (read > 0) {
            int way = ways[read * grammar.size() + role];
            int first = read - 1 - way % MOST_RUNS_A_DIGIT;
            Grammar.Step step = grammar.stepsTo(role)[way / MOST_RUNS_A_DIGIT];
            parts.add(new Part(grammar.role(role), first, read - 1, step.gap()));
            read = first;
            role = step.from();
        }
        Collections.reverse(parts);
        return new Parse(runs, parts, least + runs.cost(), stopsEarly, lengths);
    }

    /** What it costs that flashes between these runs were not seen; nothing for a single run. */
    private double unseenCost(Runs runs, int first, int last) {
        double cost = 0;
        for (int run = first + 1; run <= last; run++) {
            if (runs.steady(run) || runs.steady(run - 1) || runs.kind(run) != runs.kind(run - 1)) {
                return IMPOSSIBLE;
            }
            double gap = runs.gapBefore(runs.first(run));
            double hiding = lengths.unseen(runs.kind(run));
            if (Math.abs(gap - hiding) > UNSEEN_REACH) {
                return IMPOSSIBLE;
            }
            cost += Cost.MISSED + Cost.of(gap, hiding);
        }
        return cost;
    }

    /** What it costs to take these runs for that role. */
    private double cost(Role role, Runs runs, int first, int last) {
        if (role.sort() == Sort.DIGIT) {
            return runs.steady(first) || digit(role, runs, first, last).isEmpty() ? IMPOSSIBLE : 0;
        }
        if (first < last) {
            return IMPOSSIBLE;
        }
        if (role.sort() == Sort.LOST) {
            return Cost.UNREADABLE;
        }
        if (runs.steady(first)) {
            return light(role, runs, first);
        }
        return switch (role.sort()) {
            case FIRST_SIGN, LATER_SIGN -> sign(runs, first).isEmpty() ? IMPOSSIBLE : 0;
            case SEPARATOR -> lone(runs, first, separatorFlashes, separatorFlashes);
            case CYLINDERS -> lone(runs, first, 1, MOST_CYLINDER_FLASHES);
            case PROMPT -> lone(runs, first, 1, 1);
            case BALANCE -> lone(runs, first, 1, mostBalanceFlashes);
            case STEADY -> runs.perhapsSteady(first) ? PERHAPS_STEADY - runs.cost(first) : IMPOSSIBLE;
            default -> IMPOSSIBLE;
        };
    }

    private double light(Role role, Runs runs, int run) {
        if (role.sort() == Sort.STEADY) {
            return Cost.CHANCE;
        }
        return role.sort() == Sort.LEAD_IN
                ? Math.min(Cost.ACCIDENT, Cost.of(runs.lit(runs.first(run)), leadInLit))
                : IMPOSSIBLE;
    }

    private double lone(Runs runs, int run, int fewest, int most) {
        int count = runs.count(run);
        return runs.kind(run) == cylinderKind && count >= fewest && count <= most ? 0 : IMPOSSIBLE;
    }

    /** The digit that these runs are at a place, unseen flashes included. */
    String digit(Role role, Runs runs, int first, int last) {
        return digit(role, runs, first, last, last - first);
    }

    /** The digit that these runs are at a place without any unseen flashes. */
    String digitSeen(Role role, Runs runs, int first, int last) {
        return digit(role, runs, first, last, 0);
    }

    private String digit(Role role, Runs runs, int first, int last, int unseen) {
        int flashes = runs.last(last) - runs.first(first) + 1 + unseen;
        return signs.digit(role.place(), runs.kind(first), flashes);
    }

    String sign(Runs runs, int run) {
        return runs.count(run) > signs.longestSign() ? "" : signs.sign(runs.kinds(run));
    }
}
