package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.chance.Chance;
import telltally.simulator.vehicle.BalanceVerdict.Outcome;
import telltally.simulator.vehicle.Cylinder.Weakness;

class BalancePredictionTest {
    /** Short averages and a rough engine: with the usual ones no error would be seen in a lifetime. */
    private static final BalancePlan HASTY = new BalancePlan(1500, 0, 9, 4, 1, 4, 1);

    private static final EngineMake ROUGH = EngineMake.usual(4).withCycleVariation(0.06);
    private static final int TRIALS = 1000;

    @ParameterizedTest
    @CsvSource({
        "1.0, 0.97, a sound cylinder is called weak",
        "0.9, 0.93, a weak cylinder is called weak",
        "0.93, 0.9, a cylinder above the threshold is called weak"
    })
    void cylinders_are_named_as_often_as_theory_says(double strength, double threshold, String what) {
        Cylinder first = new Cylinder(strength, strength < 1 ? Weakness.FUEL : Weakness.NONE);
        Cylinders cylinders = Cylinders.sound(4).with(1, first);
        BalanceJudge judge = new BalanceJudge(threshold);
        double predicted = BalancePrediction.of(ROUGH, cylinders, HASTY, judge).probabilityNamed(1);
        int named = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            Engine engine = new Engine(ROUGH, cylinders, 1500, 0, Chance.of(100).stream(trial));
            if (new CylinderBalance(engine, HASTY, judge).run().weak().contains(1)) {
                named++;
            }
        }

        assertThat(predicted).as("an error rate that can be counted").isBetween(0.05, 0.95);
        // Binomial error: outside this interval once in a thousand seeds, if the rate is as predicted.
        BinomialDistribution counted = new BinomialDistribution(TRIALS, predicted);
        assertThat(named)
                .as("%s: %s predicted", what, TRIALS * predicted)
                .isBetween(counted.inverseCumulativeProbability(0.0005), counted.inverseCumulativeProbability(0.9995));
    }

    @Test
    void wrong_verdicts_on_a_sound_engine_are_as_rare_as_theory_says() {
        Cylinders sound = Cylinders.sound(4);
        BalanceJudge judge = new BalanceJudge(0.95);
        BalancePrediction prediction = BalancePrediction.of(ROUGH, sound, HASTY, judge);
        double atMost = prediction.wrongVerdictAtMost();
        // Names are given rather one instead of the other than together, so that two at once come less often than by
        // independent chances; this is Bonferroni's lower bound with those.
        double atLeast = atMost - 6 * prediction.probabilityNamed(1) * prediction.probabilityNamed(2);
        int wrong = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            Engine engine = new Engine(ROUGH, sound, 1500, 0, Chance.of(200).stream(trial));
            if (new CylinderBalance(engine, HASTY, judge).run().outcome() == Outcome.WEAK) {
                wrong++;
            }
        }

        assertThat(atMost - atLeast)
                .as("how well the two bounds pin the rate down")
                .isLessThan(0.04);
        assertThat(wrong)
                .as("%s to %s predicted", TRIALS * atLeast, TRIALS * atMost)
                .isBetween(
                        new BinomialDistribution(TRIALS, atLeast).inverseCumulativeProbability(0.0005),
                        new BinomialDistribution(TRIALS, atMost).inverseCumulativeProbability(0.9995));
    }

    @Test
    void the_drops_of_a_quiet_engine_are_as_predicted() {
        EngineMake quiet = EngineMake.usual(6).withCycleVariation(0);
        Cylinders cylinders = Cylinders.sound(6).with(2, new Cylinder(0.5, Weakness.SPARK));
        BalanceJudge judge = BalanceJudge.ofRepeat(0);
        BalancePrediction predicted = BalancePrediction.of(quiet, cylinders, BalancePlan.usual(), judge);
        Engine engine = new Engine(quiet, cylinders, 750, 0, Chance.of(1));
        BalanceVerdict verdict = new CylinderBalance(engine, BalancePlan.usual(), judge).run();

        for (int cylinder = 1; cylinder <= 6; cylinder++) {
            // Eight seconds of recovering leave 0.3 percent of the drop before, and the ripple is taken to first order.
            assertThat(verdict.dropsRpm().get(cylinder - 1))
                    .isCloseTo(predicted.dropRpm(cylinder), within(0.004 * predicted.dropRpm(cylinder)));
        }
        assertThat(predicted.probabilityNamed(2)).isEqualTo(1);
        assertThat(predicted.probabilityNamed(1)).isZero();
    }

    @Test
    void the_usual_test_of_a_sound_engine_practically_never_errs() {
        BalancePrediction predicted = BalancePrediction.of(
                EngineMake.usual(8), Cylinders.sound(8), BalancePlan.usual(), BalanceJudge.ofRepeat(0));

        assertThat(predicted.probabilityNamed(4)).isPositive().isLessThan(1e-12);
        assertThat(predicted.wrongVerdictAtMost()).isLessThan(1e-11);
    }

    @Test
    void averaging_longer_narrows_the_drop() {
        BalanceJudge judge = BalanceJudge.ofRepeat(0);
        double hasty =
                BalancePrediction.of(ROUGH, Cylinders.sound(4), HASTY, judge).deviationRpm(1);
        double usual = BalancePrediction.of(ROUGH, Cylinders.sound(4), BalancePlan.usual(), judge)
                .deviationRpm(1);

        // Nine times the span would give a third, were it not that a second is no longer than the engine's memory.
        assertThat(usual).isBetween(hasty / 3, hasty);
    }
}
