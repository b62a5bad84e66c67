package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;

/** The weight of some groups summed over every layout of them in a list, each a product of probabilities. */
final class AllLayouts {
    /** What a code that comes again is worth: there are 81. */
    static final double AGAIN = 81;

    static final double ONE_CODE = Math.exp(-0.15);
    static final double UNLIKELY_CUT = 0.01;
    static final double SAME_CODE_TWICE = Math.exp(-8);

    private final FormatModel model;
    private final int times;
    private final boolean midway;
    private final boolean early;
    private final List<List<Found>> stretches = new ArrayList<>();
    private final boolean opened;
    private final boolean closed;
    private int frames;

    /** @param groups of 12, which is the frame, and of 3 or 4 before 7 or 8 */
    AllLayouts(FormatModel model, List<Found> groups, boolean midway, boolean early) {
        this.model = model;
        times = model.format.repeats().listTimes();
        this.midway = midway;
        this.early = early;
        List<Found> stretch = new ArrayList<>();
        for (Found group : groups) {
            if (group.digits().equals("12")) {
                frames++;
                stretches.add(stretch);
                stretch = new ArrayList<>();
            } else {
                stretch.add(group);
            }
        }
        stretches.add(stretch);
        stretches.removeIf(List::isEmpty);
        opened = groups.get(0).digits().equals("12");
        closed = groups.get(groups.size() - 1).digits().equals("12");
    }

    double log() {
        double sum = stretches.isEmpty() ? 1 : 0;
        int longest = stretches.stream().mapToInt(List::size).max().orElse(0);
        for (int codes = 1; codes <= longest; codes++) {
            int places = times == 0 ? codes : times * codes;
            for (int begun = 0; begun < places; begun++) {
                boolean fits = (begun + stretches.get(0).size()) % places == 0;
                if (begun == 0 || (!opened && ((midway && early) || fits))) {
                    sum += weight(codes, places, begun);
                }
            }
        }
        return Math.log(sum) + frames * Math.log(AGAIN);
    }

    private double weight(int codes, int places, int begun) {
        double weight = Math.pow(ONE_CODE, codes);
        weight *= begun > 0 && !midway ? UNLIKELY_CUT : 1;
        weight *= begun > 0 || midway ? 1.0 / places : 1;
        List<List<Found>> columns = new ArrayList<>();
        for (int i = 0; i < codes; i++) {
            columns.add(new ArrayList<>());
        }
        for (List<Found> stretch : stretches) {
            int place = stretch == stretches.get(0) ? begun : 0;
            for (Found group : stretch) {
                columns.get(place++ % codes).add(group);
            }
            if (times > 0 && place > places) {
                return 0;
            }
            if (times > 0 ? place < places : place % codes != 0) {
                boolean open = stretch == stretches.get(stretches.size() - 1) && !closed;
                weight *= !open ? UNLIKELY_CUT * UNLIKELY_CUT : (early ? 1 : UNLIKELY_CUT) / places;
            }
        }
        List<String> before = new ArrayList<>();
        for (List<Found> column : columns) {
            if (!column.isEmpty()) {
                weight *= likelihood(column, 0, List.of("3", "4")) * likelihood(column, 1, List.of("7", "8"));
                String best = new Block(model, column).best;
                weight *= before.contains(best) ? SAME_CODE_TWICE : 1;
                before.add(best);
            }
        }
        return weight;
    }

    /** That sendings agree in a sign of two that it may be, against nine each. */
    private static double likelihood(List<Found> column, int place, List<String> signs) {
        double sum = 0;
        for (String sign : signs) {
            double product = 1.0 / 9;
            for (Found group : column) {
                product *= 9 * group.signs.get(place).probability(sign);
            }
            sum += product;
        }
        return sum;
    }
}
