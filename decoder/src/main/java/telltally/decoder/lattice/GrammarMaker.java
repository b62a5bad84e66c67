package telltally.decoder.lattice;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.GroupKind;

/** Lays out what a format may send, flash by flash: signs, codes, segments, even blinking, and what belongs to nothing. */
final class GrammarMaker {
    private static final double USUAL_STEP_SECONDS = 1.5;
    private static final double SECONDS = 1e-9;
    /** Fewer even blinks than these are not taken for a message. */
    private static final int LEAST_BLINKS = 8;

    private static final int MOST_CYLINDER_FLASHES = 8;
    private static final double UNEXPLAINED = 1e-7;
    /** So dear that it counts only where a recording can end in no other way: long after half a sign. */
    private static final double BROKEN_OFF = 1e-14;

    private static final double ANY_LEAST = 1e-3;
    private static final double ANY_MOST = 1e6;

    private final FlashFormat format;
    private final FormatTimes times;
    private final GrammarBuilder builder = new GrammarBuilder();
    /** Where a code, or what announces it, may begin: its nodes and their shares. */
    private final Map<Integer, Double> heads;

    private final List<CodeStems.Last> lasts;

    GrammarMaker(FlashFormat format, FormatTimes times) {
        this.format = format;
        this.times = times;
        CodeStems stems = new CodeStems(format.shape(), times, builder);
        lasts = stems.lasts;
        heads = format.leadIn().isPresent() ? announced(stems.heads) : stems.heads;
    }

    FreeGrammar make() {
        Map<Integer, Double> starts = new LinkedHashMap<>();
        heads.forEach((node, share) -> starts.put(node, 0.6 * share));
        between();
        format.sessions().ifPresent(sessions -> sessions(sessions, starts));
        if (format.nothingToReport() instanceof NothingToReport.Blinking blinking) {
            blinking(blinking, starts);
        }
        midway();
        starts.forEach((node, share) -> builder.step(Automaton.START, node, Gap.LEAD, share));
        bulbCheck(starts);
        unexplained();
        return builder.build();
    }

    private Map<Integer, Double> announced(Map<Integer, Double> codes) {
        int light = builder.node(times.leadIn.orElseThrow(), true, GroupKind.STEADY, 0);
        Gap dark = times.afterLeadIn.orElseThrow();
        codes.forEach((node, share) -> builder.group(light, node, dark, share, ""));
        return Map.of(light, 1.0);
    }

    /** From the end of a code to the next one, or to the end of all. */
    private void between() {
        boolean single = format.repeats().mostCodes() == 1 && format.repeats().eachCodeTimes() == 1;
        boolean marked = !single && times.repeat.seconds() != times.codes.seconds();
        for (CodeStems.Last last : lasts) {
            heads.forEach((node, share) -> {
                double next = 0.7 * share * last.weight();
                if (single) {
                    builder.repeat(last.node(), node, times.repeat, next, last.sign());
                } else {
                    builder.group(last.node(), node, times.codes, next * (marked ? 0.7 : 1), last.sign());
                }
                if (marked) {
                    builder.repeat(last.node(), node, times.repeat, next * 0.3, last.sign());
                }
            });
            builder.tail(last.node(), 0.15 * last.weight(), last.sign());
        }
    }

    private void sessions(Sessions sessions, Map<Integer, Double> starts) {
        Light light = times.cylinderFlash.orElseThrow();
        Gap around = times.aroundSeparator.orElseThrow();
        int[] separator = builder.row(light, sessions.separatorFlashes(), GroupKind.SEPARATOR, 0);
        for (int i = 1; i < separator.length; i++) {
            builder.step(separator[i - 1], separator[i], times.within, 1);
        }
        String count = Integer.toString(separator.length);
        heads.forEach((node, share) -> builder.group(separator[separator.length - 1], node, around, share, count));
        for (CodeStems.Last last : lasts) {
            builder.group(last.node(), separator[0], around, 0.15 * last.weight(), last.sign());
        }
        double test = sessions.runningTestNanos() * SECONDS;
        Gap dark = Gap.broad(test / 12, test * 5);
        int prompt = builder.node(light, true, GroupKind.PROMPT, 0);
        heads.forEach((node, share) -> builder.group(prompt, node, dark, share, "1"));
        int[] cylinders = builder.row(light, MOST_CYLINDER_FLASHES, GroupKind.CYLINDERS, 0);
        counted(cylinders, (node, sign, share) -> {
            heads.forEach((head, each) -> builder.group(node, head, dark, 0.7 * share * each, sign));
            builder.group(node, prompt, dark, 0.3 * share, sign);
        });
        int[] balance = builder.row(light, sessions.mostBalanceFlashes(), GroupKind.BALANCE, 0);
        counted(balance, (node, sign, share) -> builder.tail(node, share, sign));
        starts.put(cylinders[0], 0.15);
        starts.put(balance[0], 0.08);
    }

    private interface End {
        void at(int node, String sign, double share);
    }

    /** A row in which any number of flashes, evenly likely, is a group. */
    private void counted(int[] row, End end) {
        for (int i = 0; i < row.length; i++) {
            double share = 1.0 / (row.length - i);
            if (i + 1 < row.length) {
                builder.step(row[i], row[i + 1], times.within, 1 - share);
            }
            end.at(row[i], Integer.toString(i + 1), share);
        }
    }

    private void blinking(NothingToReport.Blinking blinking, Map<Integer, Double> starts) {
        Gap dark = FormatTimes.gap(blinking.offNanos());
        Light light = FormatTimes.light(blinking.onNanos());
        int[] blinks = builder.row(light, LEAST_BLINKS, GroupKind.STEADY, FreeGrammar.BLINKING);
        for (int i = 1; i < blinks.length; i++) {
            builder.step(blinks[i - 1], blinks[i], dark, 1);
        }
        int last = blinks[LEAST_BLINKS - 1];
        builder.step(last, last, dark, 0.9);
        builder.tail(last, 0.1, "");
        starts.put(blinks[0], 0.06);
    }

    /** The recording may begin, and end, in any gap. */
    private void midway() {
        double entering = FreeGrammar.MIDWAY / (builder.nodes() * USUAL_STEP_SECONDS);
        Set<List<Object>> begun = new LinkedHashSet<>();
        for (Step step : builder.steps()) {
            Gap gap = step.gap();
            if (gap.kind() == GapKind.FIXED) {
                if (begun.add(List.of(step.to(), gap.seconds()))) {
                    builder.step(Automaton.START, step.to(), gap.cut(GapKind.LEAD_CUT), entering);
                }
                builder.breakOff(step, gap.cut(GapKind.TAIL_CUT), FreeGrammar.EARLY * step.weight());
            }
        }
    }

    private void bulbCheck(Map<Integer, Double> starts) {
        int bulb = builder.node(new Light(1.2, 8), false, GroupKind.STEADY, 2);
        builder.step(Automaton.START, bulb, Gap.LEAD, 0.1);
        Gap dark = Gap.broad(0.05, 600);
        starts.forEach((node, share) -> builder.group(bulb, node, dark, share, ""));
    }

    /** Whatever the rules do not explain is read as such, at a price. */
    private void unexplained() {
        int junk = builder.node(new Light(ANY_LEAST, ANY_MOST), false, GroupKind.UNREADABLE, 0);
        Gap any = Gap.broad(ANY_LEAST, ANY_MOST);
        Set<Integer> ending = builder.steps().stream()
                .filter(step -> step.gap().kind() == GapKind.TAIL)
                .map(Step::from)
                .collect(Collectors.toSet());
        for (int node = Automaton.END + 1; node < junk; node++) {
            builder.step(node, junk, any, UNEXPLAINED);
            if (!ending.contains(node)) {
                builder.step(node, Automaton.END, Gap.TAIL, BROKEN_OFF);
            }
        }
        builder.step(junk, junk, any, 0.5);
        heads.forEach((node, share) -> builder.group(junk, node, any, 0.1 * share, ""));
        builder.step(Automaton.START, junk, Gap.LEAD, UNEXPLAINED);
        builder.tail(junk, 0.1, "");
    }
}
