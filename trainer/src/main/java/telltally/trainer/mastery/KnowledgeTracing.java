package telltally.trainer.mastery;

/**
 * Bayesian knowledge tracing (Corbett and Anderson 1995, User Modeling and User-Adapted Interaction 4:253-278): a rule is
 * either known or not, becomes known with a chance at every occasion, and is never unlearnt.
 *
 * @param known the chance that it is known
 * @param rates what the model takes for granted
 */
public record KnowledgeTracing(double known, Rates rates) {
    /**
     * @param learn the chance at each occasion that an unknown rule becomes known
     * @param slip the chance of a wrong answer though it is known, below one half
     * @param guess the chance of a right answer though it is not, below one half: with more, right answers could count
     *     against knowing (Baker, Corbett and Aleven 2008)
     */
    public record Rates(double learn, double slip, double guess) {
        public Rates {
            if (!(learn >= 0 && learn <= 1 && slip >= 0 && slip < 0.5 && guess >= 0 && guess < 0.5)) {
                throw new IllegalArgumentException("no rates of learning: " + learn + ", " + slip + ", " + guess);
            }
        }
    }

    public KnowledgeTracing {
        if (!(known >= 0 && known <= 1)) {
            throw new IllegalArgumentException("no chance: " + known);
        }
    }

    public double chanceRight() {
        return known * (1 - rates.slip()) + (1 - known) * rates.guess();
    }

    public KnowledgeTracing after(boolean right) {
        double byKnowing = known * (right ? 1 - rates.slip() : rates.slip());
        double otherwise = (1 - known) * (right ? rates.guess() : 1 - rates.guess());
        double total = byKnowing + otherwise;
        // An answer that the rates call impossible says nothing.
        double seen = total > 0 ? byKnowing / total : known;
        return new KnowledgeTracing(seen + (1 - seen) * rates.learn(), rates);
    }
}
