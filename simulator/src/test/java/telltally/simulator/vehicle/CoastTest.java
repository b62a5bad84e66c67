package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoastTest {
    /** Textbook: J dw/dt = T - b w from rest gives (T/b)(1 - exp(-bt/J)); values for J 0.2, b 0.1, T 10. */
    @ParameterizedTest
    @CsvSource({"2, 63.212", "4, 86.466", "6, 95.021", "10, 99.326"})
    void a_steady_torque_gives_the_textbook_rise(double seconds, double speed) {
        assertThat(new Coast(0, 0.2, -10, 0.1).speedAfter(seconds)).isCloseTo(speed, within(0.0005));
    }

    /** The reference: the two equations of motion through hipparchus' eighth-order integrator. */
    @Property(tries = 50)
    void speed_and_angle_are_those_of_a_numerical_integration(
            @ForAll @DoubleRange(min = 20, max = 600) double startSpeed,
            @ForAll @DoubleRange(min = 0, max = 60) double torque,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double friction) {
        double inertia = 0.3;
        OrdinaryDifferentialEquation motion = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                return new double[] {y[1], -(torque + friction * y[1]) / inertia};
            }
        };
        double[] end = new DormandPrince853Integrator(1e-9, 0.1, 1e-12, 1e-12)
                .integrate(motion, new ODEState(0, new double[] {0, startSpeed}), 0.05)
                .getPrimaryState();

        Coast coast = new Coast(startSpeed, inertia, torque, friction);

        // The integrator was asked for 1e-12 of the values in each step.
        assertThat(coast.radiansAfter(0.05)).isCloseTo(end[0], within(1e-9));
        assertThat(coast.speedAfter(0.05)).isCloseTo(end[1], within(1e-9));
    }

    @Property
    void the_time_to_turn_is_the_inverse_of_the_angle(
            @ForAll @DoubleRange(min = 1, max = 600) double startSpeed,
            @ForAll @DoubleRange(min = 0, max = 200) double torque,
            @ForAll @DoubleRange(min = 0.01, max = 2) double friction,
            @ForAll @DoubleRange(min = 0.1, max = 6.3) double radians) {
        Coast coast = new Coast(startSpeed, 0.2, torque, friction);
        double seconds = coast.secondsToTurn(radians);

        if (Double.isInfinite(seconds)) {
            double farthest = torque > 0 ? coast.radiansAfter(coast.secondsToStand()) : startSpeed * 0.2 / friction;
            assertThat(farthest).isLessThanOrEqualTo(radians);
        } else {
            assertThat(coast.radiansAfter(seconds)).isCloseTo(radians, within(1e-11));
            assertThat(coast.speedAfter(seconds)).isGreaterThanOrEqualTo(-1e-6);
        }
    }

    @Test
    void a_shaft_that_stands_too_soon_never_arrives() {
        // 0.2 kg m^2 at 5 rad/s hold 2.5 J; 10 N m over a radian take 10.
        assertThat(new Coast(5, 0.2, 10, 0.1).secondsToTurn(1)).isInfinite();
        assertThat(new Coast(5, 0.2, 0, 2).secondsToTurn(1)).isInfinite();
        assertThat(new Coast(0, 0.2, 10, 0.1).secondsToTurn(1)).isInfinite();
    }
}
