package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.CodeShape.Sign;
import telltally.simulator.format.FlashKind;
import telltally.simulator.format.GroupKind;

/**
 * One list of codes as a format sends it: a row of flashes in which nothing is open but what was seen of it, where the
 * recording begins and where it ends. The density of a recording, given the list, is one exact sum.
 */
final class SentList {
    private static final Gap AROUND_THE_END = Gap.fixed(3).cut(GapKind.LEAD_CUT);

    /** A group of the row; the column is the index in the list, -1 for what is no code of it. */
    record Slot(GroupKind kind, String digits, int column) {}

    /**
     * What surrounds and repeats a list.
     *
     * @param loops how often the list is sent between framing codes, one number for each such stretch
     * @param openStart whether the recording may begin within it
     * @param openEnd whether the recording may end within it
     */
    record Plan(
            boolean separatorBefore,
            boolean separatorAfter,
            boolean framedFirst,
            boolean framedLast,
            List<Integer> loops,
            boolean openStart,
            boolean openEnd) {
        Plan {
            loops = List.copyOf(loops);
        }
    }

    private final FormatModel model;
    private final FormatTimes times;
    private final Plan plan;
    private final Automaton.Builder builder = new Automaton.Builder();
    private int[] slotOf = new int[64];
    private final List<Slot> slots = new ArrayList<>();
    private final List<Integer> listEnds = new ArrayList<>();
    private final Automaton automaton;
    private int last = Automaton.START;

    SentList(FormatModel model, Plan plan, List<String> codes) {
        this.model = model;
        this.times = model.times;
        this.plan = plan;
        slotOf[Automaton.START] = -1;
        slotOf[Automaton.END] = -1;
        List<List<Sign>> signs = new ArrayList<>();
        codes.forEach(code -> signs.add(model.format.shape().signs(code).orElseThrow()));
        row(codes, signs);
        ends();
        this.automaton = builder.build();
    }

    Automaton automaton() {
        return automaton;
    }

    int slotOf(int node) {
        return slotOf[node];
    }

    Slot slot(int index) {
        return slots.get(index);
    }

    private void row(List<String> codes, List<List<Sign>> signs) {
        if (plan.separatorBefore()) {
            separator(times.within);
        }
        boolean first = true;
        for (int stretch = 0; stretch < plan.loops().size(); stretch++) {
            if (stretch > 0 || plan.framedFirst()) {
                framing();
                first = false;
            }
            for (int loop = 0; loop < plan.loops().get(stretch); loop++) {
                for (int column = 0; column < codes.size(); column++) {
                    Gap before = loop > 0 && column == 0 ? times.repeat : times.codes;
                    if (first && plan.separatorBefore()) {
                        before = times.aroundSeparator.orElseThrow();
                    }
                    sendings(GroupKind.CODE, codes.get(column), signs.get(column), column, before);
                    first = false;
                }
                listEnds.add(last);
            }
        }
        if (plan.framedLast()) {
            framing();
            listEnds.add(last);
        }
        if (plan.separatorAfter()) {
            separator(times.aroundSeparator.orElseThrow());
            listEnds.clear();
            listEnds.add(last);
        }
    }

    private void flash(Light light, Gap before, boolean begins) {
        int node = builder.node(light, true);
        if (node == slotOf.length) {
            slotOf = Arrays.copyOf(slotOf, 2 * node);
        }
        slotOf[node] = slots.size() - 1;
        if (last != Automaton.START) {
            builder.step(last, node, before, 1, begins ? Ends.GROUP : Ends.NOTHING, "", false);
        }
        last = node;
    }

    private void separator(Gap before) {
        int flashes = model.format.sessions().orElseThrow().separatorFlashes();
        slots.add(new Slot(GroupKind.SEPARATOR, Integer.toString(flashes), -1));
        for (int i = 0; i < flashes; i++) {
            flash(times.cylinderFlash.orElseThrow(), i == 0 ? before : times.within, i == 0);
        }
    }

    private void framing() {
        String code = model.format.framingCode().orElseThrow();
        sendings(GroupKind.SEPARATOR, code, model.format.shape().signs(code).orElseThrow(), -1, times.codes);
    }

    private void sendings(GroupKind kind, String code, List<Sign> signs, int column, Gap before) {
        for (int time = 0; time < model.format.repeats().eachCodeTimes(); time++) {
            sending(kind, code, signs, column, time == 0 ? before : times.codes);
        }
    }

    private void sending(GroupKind kind, String code, List<Sign> signs, int column, Gap before) {
        Gap gap = before;
        if (times.leadIn.isPresent()) {
            slots.add(new Slot(GroupKind.STEADY, "", -1));
            flash(times.leadIn.get(), gap, true);
            gap = times.afterLeadIn.orElseThrow();
        }
        slots.add(new Slot(kind, code, column));
        boolean begins = true;
        for (Sign sign : signs) {
            for (FlashKind each : sign.flashes()) {
                flash(times.light(each), gap, begins);
                begins = false;
                gap = times.within;
            }
            gap = times.digits;
        }
    }

    private void ends() {
        List<Step> row = List.copyOf(builder.steps());
        int first = Automaton.END + 1;
        double lengthSeconds = 1;
        for (Step step : row) {
            lengthSeconds += step.gap().seconds() + 0.5;
        }
        double entering = FreeGrammar.MIDWAY / lengthSeconds;
        step(Automaton.START, first, Gap.LEAD, plan.separatorBefore() ? 1 : 0.6);
        for (int end : listEnds) {
            step(end, Automaton.END, Gap.TAIL, 0.15);
        }
        IdentityHashMap<Gap, Gap> begun = new IdentityHashMap<>();
        IdentityHashMap<Gap, Gap> ended = new IdentityHashMap<>();
        for (Step step : row) {
            if (plan.openStart()) {
                Gap rest = begun.computeIfAbsent(step.gap(), gap -> gap.cut(GapKind.LEAD_CUT));
                step(Automaton.START, step.to(), rest, entering);
            }
            if (plan.openEnd()) {
                Gap part = ended.computeIfAbsent(step.gap(), gap -> gap.cut(GapKind.TAIL_CUT));
                step(step.from(), Automaton.END, part, FreeGrammar.EARLY);
            }
        }
        if (plan.openStart()) {
            // A looping list is entered as often from its end as from anywhere else.
            step(Automaton.START, first, AROUND_THE_END, entering);
        }
    }

    private void step(int from, int to, Gap gap, double weight) {
        builder.step(from, to, gap, weight, Ends.NOTHING, "", false);
    }
}
