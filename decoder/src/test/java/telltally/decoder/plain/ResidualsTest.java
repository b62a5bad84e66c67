package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class ResidualsTest {
    private static Residuals of(double... off) {
        Residuals residuals = new Residuals();
        DoubleStream.of(off).forEach(residuals::add);
        return residuals;
    }

    /** The logarithm of the density of a normal law around nothing. */
    private static double logDensity(double off, double spread) {
        return -Math.log(spread * Math.sqrt(2 * Math.PI)) - off * off / (2 * spread * spread);
    }

    @Test
    void mean_and_spread_are_those_of_the_lengths() {
        Residuals residuals = of(0.01, 0.03, 0.05);

        assertThat(residuals.count()).isEqualTo(3);
        assertThat(residuals.mean()).isCloseTo(0.03, within(1e-12));
        // The root of (0.02 squared + 0.02 squared) / 3.
        assertThat(residuals.spread()).isCloseTo(Math.sqrt(0.0008 / 3), within(1e-12));
    }

    @Test
    void accidents_and_lengths_that_were_taken_for_none_do_not_count() {
        Residuals residuals = of(0.3, 0.31, -0.31, Double.NaN, -0.3);

        assertThat(residuals.count()).isEqualTo(2);
        assertThat(residuals.mean()).isZero();
    }

    @Test
    void of_one_length_no_spread_is_known_but_the_usual_one() {
        assertThat(of().mean()).isZero();
        assertThat(of().spread()).isEqualTo(Cost.SPREAD);
        assertThat(of(0.05).spread()).isEqualTo(Cost.SPREAD);
        assertThat(of(0.05).gain()).isZero();
        assertThat(of(0.05, 0.05).spread()).isCloseTo(0, within(1e-9));
    }

    /** For n lengths the profile likelihood is that of n - 1: one went into the mean. */
    @Test
    void the_gain_is_how_much_more_probable_the_lengths_are_by_their_own_spread() {
        double[] off = {0.03, -0.03, 0.03, -0.03};
        double own = DoubleStream.of(off).map(each -> logDensity(each, 0.03)).sum();
        double usual =
                DoubleStream.of(off).map(each -> logDensity(each, Cost.SPREAD)).sum();

        assertThat(of(off).gain()).isCloseTo((own - usual) * 3 / 4, within(1e-9));
    }

    @Test
    void a_train_that_strays_more_than_usual_is_more_probable_by_its_own_spread_too() {
        assertThat(of(0.2, -0.2, 0.2, -0.2).gain()).isGreaterThan(5);
        assertThat(of(0.08, -0.08, 0.08, -0.08).gain()).isCloseTo(0, within(1e-9));
    }

    @Test
    void no_train_is_steadier_than_its_bounce() {
        // As if the spread were 2 %: the logarithm of 0.08 / 0.02, twice less for the two lengths that are exact.
        assertThat(of(0, 0, 0).gain()).isCloseTo(2 * Math.log(4), within(1e-9));
    }
}
