package telltally.trainer.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import telltally.trainer.trial.Assumptions.Value;

/** The usual assumptions, and each of them changed by itself. */
public final class Sensitivity {
    private Sensitivity() {}

    /**
     * One set of assumptions.
     *
     * @param name what was changed, by how much
     */
    public record Variation(String name, Assumptions assumed) {}

    /** As usual; each value halved and doubled; and repeats that count as practice. */
    public static List<Variation> variations(double phi) {
        Assumptions usual = Assumptions.usual(phi);
        List<Variation> all = new ArrayList<>();
        all.add(new Variation("as usual", usual));
        all.add(new Variation("repeats count as practice", usual.with(Value.REPEAT_WORTH, 1)));
        for (Value value : Value.values()) {
            if (value.usual() > 0) {
                all.add(new Variation(name(value) + " halved", usual.with(value, value.usual() / 2)));
                all.add(new Variation(name(value) + " doubled", usual.with(value, value.usual() * 2)));
            }
        }
        return List.copyOf(all);
    }

    private static String name(Value value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
