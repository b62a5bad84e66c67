package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.Light;
import telltally.simulator.format.CodeShape.Sign;
import telltally.simulator.format.FlashKind;
import telltally.simulator.format.GroupKind;

/**
 * One list of codes as a format sends it: a row of flashes in which nothing is open but what was seen of it, where the
 * recording begins and where it ends. The density of a recording, given the list, is one exact sum.
 */
final class SentList {
    /** A looping list is entered as often from its end as from anywhere else. */
    private static final Gap AROUND_THE_END = Gap.fixed(3);
    /** The share of recordings that end where a list does. */
    static final double ENDING = 0.15;

    private static final double BEGINNING = 0.6;
    private static final double USUAL_LIGHT_SECONDS = 0.5;

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
    private final Distinct<Light> distinctLights = new Distinct<>();
    private final Distinct<Gap> distinctGaps = new Distinct<>();
    /** The different lengths of the row. */
    final List<Light> lights = distinctLights.all();

    final List<Gap> gaps = distinctGaps.all();
    private int count;
    private int[] lightAt = new int[64];
    private int[] gapBefore = new int[64];
    private int[] slotAt = new int[64];
    private boolean[] mayEndAfter = new boolean[64];
    private double lengthSeconds = 1;
    private final List<Slot> slots = new ArrayList<>();

    SentList(FormatModel model, Plan plan, List<String> codes) {
        this.model = model;
        this.times = model.times;
        this.plan = plan;
        List<List<Sign>> signs = new ArrayList<>();
        codes.forEach(code -> signs.add(model.format.shape().signs(code).orElseThrow()));
        row(codes, signs);
    }

    /** How many flashes the row has. */
    int count() {
        return count;
    }

    /** Which of the lights a flash of the row is. */
    int light(int at) {
        return lightAt[at];
    }

    /** Which of the gaps comes before a flash of the row. */
    int gapBefore(int at) {
        return gapBefore[at];
    }

    int slotOf(int at) {
        return slotAt[at];
    }

    /** Whether nothing more need come after a flash of the row. */
    boolean mayEndAfter(int at) {
        return mayEndAfter[at];
    }

    boolean openStart() {
        return plan.openStart();
    }

    boolean openEnd() {
        return plan.openEnd();
    }

    /** The weight of a recording that begins before the row. */
    double firstWeight() {
        return plan.separatorBefore() ? 1 : BEGINNING;
    }

    /** The weight of a recording that begins in the gap before any one flash of the row. */
    double entering() {
        return FreeGrammar.MIDWAY / lengthSeconds;
    }

    double shortestLight() {
        double shortest = Double.MAX_VALUE;
        for (Light light : lights) {
            shortest = Math.min(shortest, light.seconds());
        }
        return shortest;
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
                listEnds();
            }
        }
        if (plan.framedLast()) {
            framing();
            listEnds();
        }
        if (plan.separatorAfter()) {
            separator(times.aroundSeparator.orElseThrow());
            Arrays.fill(mayEndAfter, false);
            listEnds();
        }
    }

    private void listEnds() {
        if (count > 0) {
            mayEndAfter[count - 1] = true;
        }
    }

    private void flash(Light light, Gap before) {
        if (count == lightAt.length) {
            lightAt = Arrays.copyOf(lightAt, 2 * count);
            gapBefore = Arrays.copyOf(gapBefore, 2 * count);
            slotAt = Arrays.copyOf(slotAt, 2 * count);
            mayEndAfter = Arrays.copyOf(mayEndAfter, 2 * count);
        }
        Gap gap = count == 0 ? AROUND_THE_END : before;
        lightAt[count] = distinctLights.numberOf(light);
        gapBefore[count] = distinctGaps.numberOf(gap);
        slotAt[count] = slots.size() - 1;
        lengthSeconds += count == 0 ? 0 : gap.seconds() + USUAL_LIGHT_SECONDS;
        count++;
    }

    private void separator(Gap before) {
        int flashes = model.format.sessions().orElseThrow().separatorFlashes();
        slots.add(new Slot(GroupKind.SEPARATOR, Integer.toString(flashes), -1));
        for (int i = 0; i < flashes; i++) {
            flash(times.cylinderFlash.orElseThrow(), i == 0 ? before : times.within);
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
            flash(times.leadIn.get(), gap);
            gap = times.afterLeadIn.orElseThrow();
        }
        slots.add(new Slot(kind, code, column));
        for (Sign sign : signs) {
            for (FlashKind each : sign.flashes()) {
                flash(times.light(each), gap);
                gap = times.within;
            }
            gap = times.digits;
        }
    }
}
