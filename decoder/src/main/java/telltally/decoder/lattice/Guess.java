package telltally.decoder.lattice;

import java.util.Arrays;

/**
 * What is known of one sign: for some texts the logarithm of how many times more probable they are than an even choice
 * among all, and one such number for every text not named.
 */
final class Guess {
    private static final double FLOOR = StrictMath.log(1e-8);
    /** What lies so far behind, as a logarithm, adds nothing. */
    private static final double NOTHING = -18;

    private static final double[] LOG_CHOICES = new double[64];

    static {
        for (int i = 1; i < LOG_CHOICES.length; i++) {
            LOG_CHOICES[i] = StrictMath.log(i);
        }
    }

    private final int choices;
    private final double others;
    private String[] texts = new String[2];
    private double[] logs = new double[2];
    private int count;
    /** Known once it was asked for, until more is added. */
    private double evidence = Double.NaN;

    private Guess(int choices, double others) {
        this.choices = choices;
        this.others = others;
    }

    /** Nothing known. */
    static Guess even(int choices) {
        return new Guess(choices, 0);
    }

    /** Known from one sending, to be filled by {@link #add} with shares that add up to one. */
    static Guess ofShares(int choices) {
        return new Guess(choices, FLOOR);
    }

    void add(String text, double share) {
        int at = place(text);
        if (at >= 0) {
            logs[at] = StrictMath.log(StrictMath.exp(logs[at]) + choices * share);
            evidence = Double.NaN;
        } else {
            put(text, StrictMath.log(choices * share));
        }
    }

    private void put(String text, double log) {
        if (count == texts.length) {
            texts = Arrays.copyOf(texts, 2 * count);
            logs = Arrays.copyOf(logs, 2 * count);
        }
        texts[count] = text;
        logs[count++] = Math.max(log, others);
        evidence = Double.NaN;
    }

    /** Both pieces of evidence together, for one sign that was sent twice. */
    Guess and(Guess other) {
        Guess both = new Guess(choices, others + other.others);
        for (int i = 0; i < count; i++) {
            both.put(texts[i], logs[i] + other.log(texts[i]));
        }
        for (int i = 0; i < other.count; i++) {
            if (place(other.texts[i]) < 0) {
                both.put(other.texts[i], others + other.logs[i]);
            }
        }
        return both;
    }

    private int place(String text) {
        for (int i = 0; i < count; i++) {
            if (texts[i].equals(text)) {
                return i;
            }
        }
        return -1;
    }

    double log(String text) {
        int at = place(text);
        return at < 0 ? others : logs[at];
    }

    /** Logarithm of the evidence that all that went in was one sign, against independent signs. */
    double logEvidence() {
        if (Double.isNaN(evidence)) {
            evidence = summed();
        }
        return evidence;
    }

    private double summed() {
        double most = others;
        for (int i = 0; i < count; i++) {
            most = Math.max(most, logs[i]);
        }
        double sum = others - most < NOTHING ? 0 : Math.max(0, choices - count) * StrictMath.exp(others - most);
        for (int i = 0; i < count; i++) {
            double behind = logs[i] - most;
            sum += behind == 0 ? 1 : behind < NOTHING ? 0 : StrictMath.exp(behind);
        }
        return most
                + (sum == 1 ? 0 : StrictMath.log(sum))
                - (choices < LOG_CHOICES.length ? LOG_CHOICES[choices] : StrictMath.log(choices));
    }

    double probability(String text) {
        return Math.min(1, StrictMath.exp(log(text) - logEvidence()) / choices);
    }

    boolean knowsNothing() {
        return count == 0;
    }

    /** The most probable text; empty where nothing is known. */
    String best() {
        int at = -1;
        for (int i = 0; i < count; i++) {
            at = at < 0 || logs[i] > logs[at] ? i : at;
        }
        return at < 0 ? "" : texts[at];
    }

    /** The named texts, most probable first. */
    String[] ranked() {
        String[] ranked = Arrays.copyOf(texts, count);
        double[] order = Arrays.copyOf(logs, count);
        for (int i = 1; i < count; i++) {
            for (int at = i; at > 0 && order[at] > order[at - 1]; at--) {
                double log = order[at];
                String text = ranked[at];
                order[at] = order[at - 1];
                ranked[at] = ranked[at - 1];
                order[at - 1] = log;
                ranked[at - 1] = text;
            }
        }
        return ranked;
    }
}
