package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashKind;
import telltally.simulator.format.GroupKind;

/**
 * The flashes of codes: signs that begin alike share their first flashes, as the counts one, two and three share one
 * row. Every sign of a place is evenly likely.
 */
final class CodeStems {
    /** Codes of signs end as if at most so many were usual. */
    private static final int USUAL_SIGNS = 4;

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

    /** The last flash of whole codes, with the sign it ends and the share of ending there. */
    record Last(int node, String sign, double weight) {}

    private final FormatTimes times;
    private final GrammarBuilder builder;
    /** Where a code may begin: its nodes and their shares. */
    final Map<Integer, Double> heads = new LinkedHashMap<>();

    final List<Last> lasts = new ArrayList<>();

    CodeStems(CodeShape shape, FormatTimes times, GrammarBuilder builder) {
        this.times = times;
        this.builder = builder;
        if (shape instanceof CodeShape.Counted counted) {
            counted(counted.places());
        } else if (shape instanceof CodeShape.Spelled spelled) {
            spelled(spelled);
        }
    }

    private void counted(List<CodeShape.Place> places) {
        List<Stem> roots = new ArrayList<>();
        for (int place = 0; place < places.size(); place++) {
            FlashKind flash = places.get(place).flash();
            Stem root = new Stem(-1);
            for (Map.Entry<String, Integer> count : places.get(place).counts().entrySet()) {
                grow(root, Collections.nCopies(count.getValue(), flash), count.getKey(), place);
            }
            roots.add(root);
        }
        for (int place = 0; place < roots.size(); place++) {
            boolean last = place == roots.size() - 1;
            stems(roots.get(place), last ? List.of() : List.of(roots.get(place + 1)), last ? 1 : 0);
        }
        begin(roots.get(0));
    }

    private void spelled(CodeShape.Spelled shape) {
        Stem root = new Stem(-1);
        shape.table().forEach((sign, flashes) -> {
            if (!flashes.isEmpty()) {
                grow(root, flashes, sign, 0);
            }
        });
        stems(root, List.of(root), shape.longest() == 1 ? 1 : 1.0 / Math.min(shape.longest(), USUAL_SIGNS));
        begin(root);
    }

    private void grow(Stem root, List<FlashKind> flashes, String sign, int place) {
        Stem at = root;
        at.signs++;
        for (FlashKind flash : flashes) {
            at = at.next.computeIfAbsent(
                    flash, kind -> new Stem(builder.node(times.light(kind), true, GroupKind.CODE, place)));
            at.signs++;
        }
        at.sign = sign;
    }

    /** @param ending the share of signs in this place after which the code ends */
    private void stems(Stem at, List<Stem> after, double ending) {
        for (Stem next : at.next.values()) {
            if (at.node >= 0) {
                builder.step(at.node, next.node, times.within, (double) next.signs / at.signs);
            }
            stems(next, after, ending);
        }
        if (at.node >= 0 && !at.sign.isEmpty()) {
            double here = 1.0 / at.signs;
            for (Stem root : after) {
                for (Stem first : root.next.values()) {
                    double share = here * (1 - ending) * first.signs / root.signs;
                    builder.sign(at.node, first.node, times.digits, share, at.sign);
                }
            }
            if (ending > 0) {
                lasts.add(new Last(at.node, at.sign, here * ending));
            }
        }
    }

    private void begin(Stem root) {
        for (Stem first : root.next.values()) {
            heads.merge(first.node, (double) first.signs / root.signs, Double::sum);
        }
    }
}
