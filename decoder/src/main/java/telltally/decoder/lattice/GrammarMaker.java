package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.FlashKind;
import telltally.simulator.format.GroupKind;

/** Lays out what a format may send, flash by flash: signs, codes, segments, even blinking, and what belongs to nothing. */
final class GrammarMaker {
    private static final double USUAL_STEP_SECONDS = 1.5;
    private static final double SECONDS = 1e-9;
    /** Fewer even blinks than these are not taken for a message. */
    private static final int LEAST_BLINKS = 8;

    private static final int MOST_CYLINDER_FLASHES = 8;
    private static final double UNEXPLAINED = 1e-7;
    private static final double ANY_LEAST = 1e-3;
    private static final double ANY_MOST = 1e6;

    /** One flash within the signs of a place, and what may follow it within the sign. */
    private static final class Stem {
        private final int node;
        private final Map<FlashKind, Stem> next = new LinkedHashMap<>();
        private String sign = "";
        private int signs;

        Stem(int node) {
            this.node = node;
        }
    }

    private final FlashFormat format;
    private final FormatTimes times;
    private final Automaton.Builder builder = new Automaton.Builder();
    private final List<GroupKind> kinds = new ArrayList<>(List.of(GroupKind.UNREADABLE, GroupKind.UNREADABLE));
    private final List<Integer> places = new ArrayList<>(List.of(0, 0));

    /** Where a code may begin: its nodes and their shares. */
    private final Map<Integer, Double> heads = new LinkedHashMap<>();
    /** Last flashes of whole codes, with the sign they end and the share of ending there. */
    private record Last(int node, String sign, double weight) {}

    private final List<Last> lasts = new ArrayList<>();

    GrammarMaker(FlashFormat format, FormatTimes times) {
        this.format = format;
        this.times = times;
    }

    FreeGrammar make() {
        signs();
        leadIn();
        Map<Integer, Double> starts = new LinkedHashMap<>();
        heads.forEach((node, share) -> starts.put(node, 0.6 * share));
        between();
        format.sessions().ifPresent(sessions -> sessions(sessions, starts));
        if (format.nothingToReport() instanceof NothingToReport.Blinking blinking) {
            blinking(blinking, starts);
        }
        midway();
        starts.forEach((node, share) -> builder.step(Automaton.START, node, Gap.LEAD, share, Ends.NOTHING, "", false));
        bulbCheck(starts);
        unexplained();
        return new FreeGrammar(builder.build(), kinds, places);
    }

    private int node(Light light, boolean missable, GroupKind kind, int place) {
        kinds.add(kind);
        places.add(place);
        return builder.node(light, missable);
    }

    private void signs() {
        if (format.shape() instanceof CodeShape.Counted counted) {
            List<Stem> roots = new ArrayList<>();
            for (int place = 0; place < counted.places().size(); place++) {
                CodeShape.Place each = counted.places().get(place);
                Stem root = new Stem(-1);
                for (Map.Entry<String, Integer> count : each.counts().entrySet()) {
                    grow(root, java.util.Collections.nCopies(count.getValue(), each.flash()), count.getKey(), place);
                }
                roots.add(root);
            }
            for (int place = 0; place < roots.size(); place++) {
                boolean last = place == roots.size() - 1;
                stems(roots.get(place), last ? List.of() : List.of(roots.get(place + 1)), last ? 1 : 0);
            }
            begin(roots.get(0));
        } else if (format.shape() instanceof CodeShape.Spelled table) {
            Stem root = new Stem(-1);
            table.table().forEach((sign, flashes) -> {
                if (!flashes.isEmpty()) {
                    grow(root, flashes, sign, 0);
                }
            });
            stems(root, List.of(root), table.longest() == 1 ? 1 : 1.0 / Math.min(table.longest(), 4));
            begin(root);
        }
    }

    private void grow(Stem root, List<FlashKind> flashes, String sign, int place) {
        Stem at = root;
        at.signs++;
        for (FlashKind flash : flashes) {
            at = at.next.computeIfAbsent(flash, kind -> new Stem(node(times.light(kind), true, GroupKind.CODE, place)));
            at.signs++;
        }
        at.sign = sign;
    }

    /** @param ending the share of signs in this place after which the code ends */
    private void stems(Stem at, List<Stem> after, double ending) {
        for (Stem next : at.next.values()) {
            if (at.node >= 0) {
                step(at.node, next.node, times.within, (double) next.signs / at.signs);
            }
            stems(next, after, ending);
        }
        if (at.node >= 0 && !at.sign.isEmpty()) {
            double here = 1.0 / at.signs;
            for (Stem root : after) {
                for (Stem first : root.next.values()) {
                    double share = here * (1 - ending) * first.signs / root.signs;
                    builder.step(at.node, first.node, times.digits, share, Ends.SIGN, at.sign, false);
                }
            }
            if (ending > 0) {
                lasts.add(new Last(at.node, at.sign, here * ending));
            }
        }
    }

    private void step(int from, int to, Gap gap, double weight) {
        builder.step(from, to, gap, weight, Ends.NOTHING, "", false);
    }

    private void begin(Stem root) {
        for (Stem first : root.next.values()) {
            heads.merge(first.node, (double) first.signs / root.signs, Double::sum);
        }
    }

    private void leadIn() {
        format.leadIn().ifPresent(leadIn -> {
            int light = node(times.leadIn.orElseThrow(), true, GroupKind.STEADY, 0);
            Gap dark = times.afterLeadIn.orElseThrow();
            heads.forEach((node, share) -> builder.step(light, node, dark, share, Ends.GROUP, "", false));
            heads.clear();
            heads.put(light, 1.0);
        });
    }

    /** From the end of a code to the next one, or to the end of all. */
    private void between() {
        boolean single = format.repeats().mostCodes() == 1 && format.repeats().eachCodeTimes() == 1;
        boolean marked = !single && times.repeat.seconds() != times.codes.seconds();
        for (Last last : lasts) {
            heads.forEach((node, share) -> {
                double next = 0.7 * share * last.weight();
                builder.step(
                        last.node(),
                        node,
                        single ? times.repeat : times.codes,
                        next * (marked ? 0.7 : 1),
                        Ends.GROUP,
                        last.sign(),
                        single);
                if (marked) {
                    builder.step(last.node(), node, times.repeat, next * 0.3, Ends.GROUP, last.sign(), true);
                }
            });
            tail(last.node(), last.sign(), 0.15 * last.weight());
        }
    }

    private void tail(int node, String sign, double weight) {
        builder.step(node, Automaton.END, Gap.TAIL, weight, Ends.GROUP, sign, false);
    }

    private void sessions(Sessions sessions, Map<Integer, Double> starts) {
        Light light = times.cylinderFlash.orElseThrow();
        Gap around = times.aroundSeparator.orElseThrow();
        int[] separator = row(light, sessions.separatorFlashes(), GroupKind.SEPARATOR);
        for (int i = 1; i < separator.length; i++) {
            step(separator[i - 1], separator[i], times.within, 1);
        }
        String count = Integer.toString(separator.length);
        heads.forEach((node, share) ->
                builder.step(separator[separator.length - 1], node, around, share, Ends.GROUP, count, false));
        for (Last last : lasts) {
            builder.step(last.node(), separator[0], around, 0.15 * last.weight(), Ends.GROUP, last.sign(), false);
        }
        double test = sessions.runningTestNanos() * SECONDS;
        Gap dark = Gap.broad(test / 12, test * 5);
        int[] prompt = row(light, 1, GroupKind.PROMPT);
        heads.forEach((node, share) -> builder.step(prompt[0], node, dark, share, Ends.GROUP, "1", false));
        int[] cylinders = row(light, MOST_CYLINDER_FLASHES, GroupKind.CYLINDERS);
        counted(cylinders, (node, sign, share) -> {
            heads.forEach((head, each) -> builder.step(node, head, dark, 0.7 * share * each, Ends.GROUP, sign, false));
            builder.step(node, prompt[0], dark, 0.3 * share, Ends.GROUP, sign, false);
        });
        int[] balance = row(light, sessions.mostBalanceFlashes(), GroupKind.BALANCE);
        counted(balance, (node, sign, share) -> tail(node, sign, share));
        starts.put(cylinders[0], 0.15);
        starts.put(balance[0], 0.08);
    }

    private int[] row(Light light, int length, GroupKind kind) {
        int[] row = new int[length];
        for (int i = 0; i < length; i++) {
            row[i] = node(light, true, kind, 0);
        }
        return row;
    }

    private interface End {
        void at(int node, String sign, double share);
    }

    /** A row in which any number of flashes, evenly likely, is a group. */
    private void counted(int[] row, End end) {
        for (int i = 0; i < row.length; i++) {
            double share = 1.0 / (row.length - i);
            if (i + 1 < row.length) {
                step(row[i], row[i + 1], times.within, 1 - share);
            }
            end.at(row[i], Integer.toString(i + 1), share);
        }
    }

    private void blinking(NothingToReport.Blinking blinking, Map<Integer, Double> starts) {
        Gap dark = FormatTimes.gap(blinking.offNanos());
        int[] blinks = new int[LEAST_BLINKS];
        for (int i = 0; i < blinks.length; i++) {
            blinks[i] = node(FormatTimes.light(blinking.onNanos()), true, GroupKind.STEADY, FreeGrammar.BLINKING);
            if (i > 0) {
                step(blinks[i - 1], blinks[i], dark, 1);
            }
        }
        int last = blinks[LEAST_BLINKS - 1];
        step(last, last, dark, 0.9);
        tail(last, "", 0.1);
        starts.put(blinks[0], 0.06);
    }

    /** The recording may begin, and end, in any gap. */
    private void midway() {
        List<Step> known = List.copyOf(builder.steps());
        Set<List<Object>> begun = new LinkedHashSet<>();
        for (Step step : known) {
            if (step.gap().kind() == GapKind.FIXED) {
                Gap gap = step.gap();
                Gap rest = gap.cut(GapKind.LEAD_CUT);
                if (begun.add(List.of(step.to(), gap.seconds()))) {
                    builder.step(
                            Automaton.START,
                            step.to(),
                            rest,
                            FreeGrammar.MIDWAY / (builder.nodes() * USUAL_STEP_SECONDS),
                            Ends.NOTHING,
                            "",
                            false);
                }
                Gap part = gap.cut(GapKind.TAIL_CUT);
                builder.step(
                        step.from(),
                        Automaton.END,
                        part,
                        FreeGrammar.EARLY * step.weight(),
                        step.ends(),
                        step.sign(),
                        false);
            }
        }
    }

    private void bulbCheck(Map<Integer, Double> starts) {
        int bulb = node(new Light(1.2, 8), false, GroupKind.STEADY, 2);
        builder.step(Automaton.START, bulb, Gap.LEAD, 0.1, Ends.NOTHING, "", false);
        Gap dark = Gap.broad(0.05, 600);
        starts.forEach((node, share) -> builder.step(bulb, node, dark, share, Ends.GROUP, "", false));
    }

    /** Whatever the rules do not explain is read as such, at a price. */
    private void unexplained() {
        int junk = node(new Light(ANY_LEAST, ANY_MOST), false, GroupKind.UNREADABLE, 0);
        Gap any = Gap.broad(ANY_LEAST, ANY_MOST);
        for (int node = Automaton.END + 1; node < junk; node++) {
            builder.step(node, junk, any, UNEXPLAINED, Ends.NOTHING, "", false);
        }
        builder.step(junk, junk, any, 0.5, Ends.NOTHING, "", false);
        heads.forEach((node, share) -> builder.step(junk, node, any, 0.1 * share, Ends.GROUP, "", false));
        builder.step(Automaton.START, junk, Gap.LEAD, UNEXPLAINED, Ends.NOTHING, "", false);
        builder.step(junk, Automaton.END, Gap.TAIL, 0.1, Ends.GROUP, "", false);
    }
}
