package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.simulator.format.CodeShape.Sign;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashKind;
import telltally.simulator.format.GroupKind;

/**
 * One list of codes as a format sends it: a row of flashes in which nothing is open but what was seen of it, where the
 * recording begins and where it ends. The density of a recording, given the list, is one exact sum.
 */
final class SentList {
    private static final double SECONDS = 1e-9;

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

    private final FlashFormat format;
    private final Automaton.Builder builder = new Automaton.Builder();
    private final List<Integer> slotOf = new ArrayList<>(List.of(-1, -1));
    private final List<Slot> slots = new ArrayList<>();
    private final Gap within;
    private final Automaton automaton;
    private int last = Automaton.START;

    SentList(FormatModel model, Plan plan, List<String> codes) {
        this.format = model.format;
        this.within = Gap.fixed(format.gaps().withinDigitNanos() * SECONDS);
        List<Integer> listEnds = new ArrayList<>();
        if (plan.separatorBefore()) {
            separator(0);
        }
        boolean first = true;
        int stretches = plan.loops().size();
        for (int stretch = 0; stretch < stretches; stretch++) {
            if (stretch > 0 || plan.framedFirst()) {
                first = framing(first);
            }
            for (int loop = 0; loop < plan.loops().get(stretch); loop++) {
                for (int column = 0; column < codes.size(); column++) {
                    first = repeated(codes.get(column), column, first, loop > 0 && column == 0, plan);
                }
                listEnds.add(last);
            }
        }
        if (plan.framedLast()) {
            framing(first);
            listEnds.add(last);
        }
        if (plan.separatorAfter()) {
            separator(format.sessions().orElseThrow().aroundSeparatorNanos());
            listEnds.add(last);
        }
        ends(plan, listEnds);
        this.automaton = builder.build();
    }

    Automaton automaton() {
        return automaton;
    }

    int slotOf(int node) {
        return slotOf.get(node);
    }

    Slot slot(int index) {
        return slots.get(index);
    }

    private void flash(double lit, Gap gap, boolean begins) {
        int node = builder.node(new Light(lit, 0), true);
        slotOf.add(slots.size() - 1);
        if (last != Automaton.START) {
            builder.step(last, node, gap, 1, begins ? Ends.GROUP : Ends.NOTHING, "", false);
        }
        last = node;
    }

    private void separator(long gapNanos) {
        FlashFormat.Sessions sessions = format.sessions().orElseThrow();
        slots.add(new Slot(GroupKind.SEPARATOR, Integer.toString(sessions.separatorFlashes()), -1));
        for (int i = 0; i < sessions.separatorFlashes(); i++) {
            Gap gap = i == 0 ? Gap.fixed(gapNanos * SECONDS) : within;
            flash(sessions.cylinderFlash().onNanos() * SECONDS, gap, i == 0);
        }
    }

    private boolean framing(boolean first) {
        boolean none = first;
        for (int time = 0; time < format.repeats().eachCodeTimes(); time++) {
            code(
                    GroupKind.SEPARATOR,
                    format.framingCode().orElseThrow(),
                    -1,
                    format.gaps().betweenCodesNanos());
            none = false;
        }
        return none;
    }

    private boolean repeated(String code, int column, boolean first, boolean listBegins, Plan plan) {
        for (int time = 0; time < format.repeats().eachCodeTimes(); time++) {
            long gap = listBegins && time == 0
                    ? format.gaps().beforeRepeatNanos()
                    : format.gaps().betweenCodesNanos();
            if (first && time == 0 && plan.separatorBefore()) {
                gap = format.sessions().orElseThrow().aroundSeparatorNanos();
            }
            code(GroupKind.CODE, code, column, gap);
        }
        return false;
    }

    private void code(GroupKind kind, String code, int column, long gapNanos) {
        Gap gap = Gap.fixed(gapNanos * SECONDS);
        if (format.leadIn().isPresent()) {
            slots.add(new Slot(GroupKind.STEADY, "", -1));
            flash(format.leadIn().get().litNanos() * SECONDS, gap, true);
            gap = Gap.fixed(format.leadIn().get().darkAfterNanos() * SECONDS);
        }
        slots.add(new Slot(kind, code, column));
        boolean begins = true;
        List<Sign> signs = format.shape().signs(code).orElseThrow();
        for (Sign sign : signs) {
            for (int i = 0; i < sign.flashes().size(); i++) {
                FlashKind flash = sign.flashes().get(i);
                flash(flash.onNanos() * SECONDS, i == 0 ? gap : within, begins);
                begins = false;
            }
            gap = Gap.fixed(format.gaps().betweenDigitsNanos() * SECONDS);
        }
    }

    private void ends(Plan plan, List<Integer> listEnds) {
        List<Automaton.Step> row = List.copyOf(builder.steps());
        int first = Automaton.END + 1;
        double lengthSeconds =
                row.stream().mapToDouble(each -> each.gap().seconds() + 0.5).sum() + 1;
        step(Automaton.START, first, new Gap(GapKind.LEAD, 0, 0, 0), plan.separatorBefore() ? 1 : 0.6);
        for (int end : plan.separatorAfter() ? List.of(last) : listEnds) {
            step(end, Automaton.END, new Gap(GapKind.TAIL, 0, 0, 0), 0.15);
        }
        for (Automaton.Step step : row) {
            Gap gap = step.gap();
            if (plan.openStart()) {
                step(
                        Automaton.START,
                        step.to(),
                        new Gap(GapKind.LEAD_CUT, gap.seconds(), gap.squares(), 0),
                        FreeGrammar.MIDWAY / lengthSeconds);
            }
            if (plan.openEnd()) {
                step(
                        step.from(),
                        Automaton.END,
                        new Gap(GapKind.TAIL_CUT, gap.seconds(), gap.squares(), 0),
                        FreeGrammar.EARLY);
            }
        }
        if (plan.openStart()) {
            // A looping list is entered as often from its end as from anywhere else.
            step(Automaton.START, first, new Gap(GapKind.LEAD_CUT, 3, 9, 0), FreeGrammar.MIDWAY / lengthSeconds);
        }
    }

    private void step(int from, int to, Gap gap, double weight) {
        builder.step(from, to, gap, weight, Ends.NOTHING, "", false);
    }
}
