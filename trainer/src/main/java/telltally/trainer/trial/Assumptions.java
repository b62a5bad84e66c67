package telltally.trainer.trial;

import java.util.EnumMap;
import java.util.Map;

/**
 * What simulated learners are taken to be like. None of it is a fact about people; each value may be changed by a factor
 * to see which conclusions stand.
 */
public final class Assumptions {
    /** One assumed value; where it has a basis, that is named. */
    public enum Value {
        /** How likely one flash is miscounted at first, by somebody who just began. */
        FIRST_SLIP(0.015),
        /** The same after endless practice. */
        LAST_SLIP(0.001),
        /** After so many digits practised the slip's surplus has shrunk to 1/e (exponential: Heathcote et al. 2000). */
        SLIP_DIGITS(150),
        /** What each skill adds at first to the chance of a slip, until it is practised itself. */
        OWN_SLIP(0.045),
        /** After so many digits of a skill's own practice that surplus has shrunk to 1/e. */
        OWN_DIGITS(40),
        /**
         * How much a digit that is sent again before the answer counts as practice. Practice is counted in digits that were
         * answered and told, so nothing; 1 would make the full level's repeats worth their lamp time.
         */
        REPEAT_WORTH(0),
        /** Glances away a second of flashes, at first. */
        FIRST_GLANCES(0.004),
        /** The same after endless practice. */
        LAST_GLANCES(0.001),
        /** The chance that a glance away costs a flash: lognormal of median 0.8 s, sigma 0.5, over flashes of 0.5 s. */
        GLANCE_HARM(0.4),
        /** Spread of felt gaps at first (pairs of 3 s and 6 s: 0.22; Wackermann et al. 2006). */
        FIRST_GAP_SPREAD(0.15),
        /** The same after endless practice. */
        LAST_GAP_SPREAD(0.08),
        /** Codes held at once (Cowan 2001). */
        CAPACITY(4),
        /** How much counting on disturbs what is held; 1 is counting back in threes. */
        HOLDING_LOAD(0.3),
        /** The chance to know a rule before it was ever met. */
        RULE_KNOWN(0.2),
        /** The chance to learn an unknown rule at each drill. */
        RULE_LEARNT(0.15),
        RULE_SLIP(0.05),
        RULE_GUESS(0.05),
        /** Half of what practice has gained is lost after so many days (Tatel and Ackerman: 6.5 months). */
        HALF_LIFE_DAYS(198),
        /** Sigma of the lognormal factors in which people differ. */
        PEOPLE_SPREAD(0.5),
        /** How many people have three times the first slip. */
        HARD_SHARE(0.1);

        private final double usual;

        Value(double usual) {
            this.usual = usual;
        }

        public double usual() {
            return usual;
        }
    }

    private final Map<Value, Double> values;
    private final double phi;

    private Assumptions(Map<Value, Double> values, double phi) {
        this.values = values;
        this.phi = phi;
    }

    /**
     * The usual values.
     *
     * @param phi what is learnt from a drill of hopeless difficulty as a share of what the best difficulty teaches; at 1
     *     difficulty does not matter
     */
    public static Assumptions usual(double phi) {
        if (!(phi >= 0 && phi <= 1)) {
            throw new IllegalArgumentException("phi is 0 to 1, not " + phi);
        }
        Map<Value, Double> values = new EnumMap<>(Value.class);
        for (Value value : Value.values()) {
            values.put(value, value.usual());
        }
        return new Assumptions(values, phi);
    }

    /** The same with one value changed. */
    public Assumptions with(Value value, double changed) {
        Map<Value, Double> all = new EnumMap<>(values);
        all.put(value, changed);
        return new Assumptions(all, phi);
    }

    public double of(Value value) {
        return values.getOrDefault(value, value.usual());
    }

    public double phi() {
        return phi;
    }
}
