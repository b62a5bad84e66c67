package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

/** The engine's variation against distributions, and tests of them, from hipparchus-stat. */
class SpeedVariationTest {
    /** One wrong alarm in a thousand seeds; the seed is fixed. */
    private static final double SIGNIFICANCE = 0.001;

    private final EngineMake make = EngineMake.usual(6);
    private final Engine engine = new Engine(make, Cylinders.sound(6), 750, 0, Chance.of(20));

    @Test
    void firings_give_energies_that_are_normal_with_the_stated_share() {
        engine.holdAir();
        double watts = make.wattsToHold(750, 0);
        double[] shares = new double[3000];
        engine.advanceFiring();
        for (int i = 0; i < shares.length; i++) {
            double after = engine.speedRpm() * Math.PI / 30;
            Coast coast = new Coast(after, make.inertia(), make.constantFriction(), make.linearFriction());
            double waited = coast.secondsToTurn(4 * Math.PI / 6);
            double before = coast.speedAfter(waited);
            engine.advanceFiring();
            double next = engine.speedRpm() * Math.PI / 30;
            shares[i] = make.inertia() * (next * next - before * before) / 2 / (watts * waited);
        }

        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(1, 0.03), shares);
        assertThat(p).isGreaterThan(SIGNIFICANCE);
    }

    /**
     * With the air held the speed is a first-order process: its variance is (P K k)^2 / (2 s r) with K the rpm per
     * watt, k the variation, s the settling time and r the firings a second; a cycle's mean has a little less of it.
     */
    @Test
    void the_speed_varies_normally_as_theory_says() {
        engine.holdAir();
        double settling = make.settlingSeconds(750, 0);
        double cycle = 120.0 / 750;
        double whole = make.wattsToHold(750, 0) * make.rpmPerWatt(750, 0) * 0.03;
        double ratio = cycle / settling;
        double averaging = 2 / ratio * (1 - (1 - StrictMath.exp(-ratio)) / ratio);
        double variance = whole * whole / (2 * settling * 37.5) * averaging;
        double[] rpm = new double[1500];
        for (int i = 0; i < rpm.length; i++) {
            // Eight settling times apart the readings know nothing of each other.
            engine.advanceTo(engine.atNanos() + Math.round(8 * settling * 1e9));
            rpm[i] = engine.trace().rpm(engine.trace().size() - 1);
        }

        double p = new KolmogorovSmirnovTest()
                .kolmogorovSmirnovTest(new NormalDistribution(750, StrictMath.sqrt(variance)), rpm);
        assertThat(p).as("Kolmogorov and Smirnov").isGreaterThan(SIGNIFICANCE);
        double chiSquare = (rpm.length - 1) * StatUtils.variance(rpm) / variance;
        double below = new ChiSquaredDistribution(rpm.length - 1).cumulativeProbability(chiSquare);
        assertThat(below).as("chi-square of the variance").isBetween(SIGNIFICANCE / 2, 1 - SIGNIFICANCE / 2);
    }
}
