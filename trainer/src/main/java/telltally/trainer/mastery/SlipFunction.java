package telltally.trainer.mastery;

/**
 * The chance of a right answer: guess + (1 - guess - lapse) exp(-e^x), where e^x slips are to be expected. This is the
 * function of QUEST (Watson and Pelli 1983), a Weibull function over a logarithm, seen from its other side: there a
 * stronger signal makes a right answer likelier, here more occasion for slips makes it less likely.
 */
record SlipFunction(double guess, double lapse) {
    /** @param logSlips the natural logarithm of how many slips are to be expected */
    double chanceRight(double logSlips) {
        return guess + (1 - guess - lapse) * StrictMath.exp(-StrictMath.exp(logSlips));
    }
}
