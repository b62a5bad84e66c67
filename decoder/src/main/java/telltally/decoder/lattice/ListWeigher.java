package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import telltally.decoder.lattice.ListStructure.Column;
import telltally.decoder.reading.Reading.Alternative;
import telltally.simulator.format.GroupKind;

/** Weighs whole lists of one segment against each other, each by the exact density of all its flashes. */
final class ListWeigher {
    private static final int MOST_LISTS = 48;
    private static final int MOST_CHOICES = 6;
    private static final int MOST_TURNED = 3;
    private static final double LEAST_SHARE = 1e-6;
    private static final double PER_CODE = -0.15;

    /** A list and the logarithm of its weight. */
    private record Weighed(List<String> codes, double log) {}

    /** How a list was found in the flashes. */
    private record Traced(SentList sent, Pass pass) {}

    private final FormatModel model;
    private final Flashes flashes;
    private final Channel channel;
    private final ListStructure structure;
    private final boolean separatorBefore;
    private final boolean separatorAfter;
    private final LatticeStock stock;
    private final List<String> readSomewhere = new ArrayList<>();
    private final List<Seen> groups;
    private final Map<List<String>, Weighed> weighed = new LinkedHashMap<>();
    private @Nullable Weighed best;
    private @Nullable Traced traced;
    private int tried;

    ListWeigher(
            FormatModel model,
            Flashes flashes,
            Channel channel,
            ListStructure structure,
            boolean separatorBefore,
            boolean separatorAfter,
            LatticeStock stock) {
        this.model = model;
        this.flashes = flashes;
        this.channel = channel;
        this.structure = structure;
        this.separatorBefore = separatorBefore;
        this.separatorAfter = separatorAfter;
        this.stock = stock;
        Set<List<String>> lists = structure.lists();
        lists.forEach(this::weigh);
        if (best == null) {
            // None explains every flash, but a neighbour of the best guess may, with any code that was read anywhere.
            readSomewhere.addAll(structure.readCodes());
            lists.stream().limit(1).flatMap(list -> variants(list).stream()).forEach(this::weigh);
        }
        Set<List<String>> done = new HashSet<>();
        while (best != null && done.add(best.codes()) && tried < MOST_LISTS) {
            variants(best.codes()).forEach(this::weigh);
        }
        groups = traced == null ? List.of() : groups(traced.sent(), traced.pass());
        stock.giveBack(traced == null ? null : traced.pass());
    }

    /** Natural logarithm of the weight of each list that was weighed. */
    Map<List<String>, Double> logWeights() {
        Map<List<String>, Double> logs = new LinkedHashMap<>();
        weighed.forEach((codes, one) -> logs.put(codes, one.log()));
        return logs;
    }

    /** Whether any list explains the flashes. */
    boolean explains() {
        return best != null;
    }

    List<String> codes() {
        return found().codes();
    }

    /** The groups of the best list as they were seen, with flashes counted from the first of the slice. */
    List<Seen> groups() {
        return groups;
    }

    private List<Seen> groups(SentList sent, Pass pass) {
        Lattice lattice = pass.lattice();
        List<Seen> seen = new ArrayList<>();
        int slot = -1;
        for (int arc : pass.bestPath()) {
            int flash = pass.flashOf(lattice.arcTo(arc));
            if (flash < flashes.count) {
                int at = sent.slotOf(lattice.tag(lattice.arcTo(arc)));
                int first = at == slot ? seen.remove(seen.size() - 1).first() : flash;
                SentList.Slot what = sent.slot(at);
                seen.add(new Seen(what.kind(), what.digits(), first, flash));
                slot = at;
            }
        }
        return List.copyOf(seen);
    }

    /** A group with its first and last flash. */
    record Seen(GroupKind kind, String digits, int first, int last) {}

    private void weigh(List<String> codes) {
        if (codes.isEmpty() || weighed.containsKey(codes) || tried >= MOST_LISTS || !sendable(codes)) {
            return;
        }
        tried++;
        SentList sent = new SentList(model, plan(codes.size()), codes);
        Pass pass = RowPass.run(sent, flashes, channel, stock.take());
        double log = pass.logSum() + codes.size() * PER_CODE;
        for (String code : codes) {
            for (double choices : model.logChoices) {
                log -= choices * (model.places == 0 ? code.length() : 1);
            }
        }
        Weighed one = new Weighed(codes, log);
        weighed.put(codes, one);
        if (log > Double.NEGATIVE_INFINITY && (best == null || log > best.log())) {
            best = one;
            stock.giveBack(traced == null ? null : traced.pass());
            traced = new Traced(sent, pass);
        } else {
            stock.giveBack(pass);
        }
    }

    private boolean sendable(List<String> codes) {
        return codes.stream().distinct().count() == codes.size()
                && codes.size() <= model.format.repeats().mostCodes()
                && codes.stream().noneMatch(code -> model.format.refusal(code).isPresent());
    }

    private SentList.Plan plan(int codes) {
        int times = model.format.repeats().listTimes();
        List<Integer> loops = structure.stretches.stream()
                .map(blocks -> times == 0 ? (blocks + codes / 2) / codes + (blocks % codes == 0 ? 0 : 1) : times)
                .toList();
        return new SentList.Plan(
                separatorBefore,
                separatorAfter,
                structure.framedFirst,
                structure.framedLast,
                loops,
                !separatorBefore,
                !separatorAfter);
    }

    /** The list begun elsewhere, or with one code, or two neighbours, as doubtful signs would have them. */
    private Set<List<String>> variants(List<String> codes) {
        Set<List<String>> variants = new LinkedHashSet<>();
        if (codes.size() <= MOST_TURNED) {
            for (int first = 1; first < codes.size(); first++) {
                List<String> turned = new ArrayList<>(codes.subList(first, codes.size()));
                turned.addAll(codes.subList(0, first));
                variants.add(turned);
            }
        }
        List<List<String>> choices = new ArrayList<>();
        for (String code : codes) {
            choices.add(choices(code));
        }
        for (int i = 0; i < codes.size(); i++) {
            for (String other : choices.get(i)) {
                List<String> variant = new ArrayList<>(codes);
                variant.set(i, other);
                variants.add(List.copyOf(variant));
            }
        }
        for (int i = 0; i + 1 < codes.size(); i++) {
            for (String one : choices.get(i)) {
                for (String two : choices.get(i + 1)) {
                    List<String> variant = new ArrayList<>(codes);
                    variant.set(i, one);
                    variant.set(i + 1, two);
                    variants.add(List.copyOf(variant));
                }
            }
        }
        return variants;
    }

    /** What else the column of a code could be. */
    private List<String> choices(String code) {
        Set<String> choices = new LinkedHashSet<>();
        for (Column column : structure.columns) {
            if (column.code().equals(code)) {
                choices.addAll(column.evidence().choices(code, LEAST_SHARE, MOST_CHOICES));
            }
        }
        choices.addAll(readSomewhere);
        choices.remove(code);
        return List.copyOf(choices);
    }

    /** Share of all lists weighed that hold this code. */
    double probability(String code) {
        double with = 0;
        double all = 0;
        for (Weighed one : weighed.values()) {
            double weight = StrictMath.exp(one.log() - found().log());
            all += weight;
            with += one.codes().contains(code) ? weight : 0;
        }
        return Math.min(1, with / all);
    }

    /** What else stands in the place of this code in the other lists that were weighed. */
    List<Alternative> alternatives(String code) {
        int column = found().codes().indexOf(code);
        Map<String, Double> shares = new LinkedHashMap<>();
        double all = 0;
        for (Weighed one : weighed.values()) {
            double weight = StrictMath.exp(one.log() - found().log());
            all += weight;
            if (column >= 0 && one.codes().size() == found().codes().size()) {
                shares.merge(one.codes().get(column), weight, Double::sum);
            }
        }
        shares.remove(code);
        double total = all;
        return shares.entrySet().stream()
                .filter(each -> each.getValue() / total > 1e-6)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(MOST_CHOICES)
                .map(each -> new Alternative(each.getKey(), each.getValue() / total))
                .toList();
    }

    private Weighed found() {
        return java.util.Objects.requireNonNull(best);
    }
}
