package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.chance.Chance;

class EngineTest {
    private static final long SECOND = 1_000_000_000L;

    private static Engine quiet(int cylinders, double rpm) {
        EngineMake make = EngineMake.usual(cylinders).withCycleVariation(0);
        return new Engine(make, Cylinders.sound(cylinders), rpm, 0, Chance.of(1));
    }

    private static Engine lively(int cylinders) {
        return new Engine(EngineMake.usual(cylinders), Cylinders.sound(cylinders), 750, 0, Chance.of(7));
    }

    private static double meanRpm(Engine engine, int seconds) {
        double start = engine.crankRadians();
        engine.advanceTo(engine.atNanos() + seconds * SECOND);
        return (engine.crankRadians() - start) / seconds * 30 / Math.PI;
    }

    @Nested
    class Firing {
        /** N rpm / 120: 50, 37.5 and 66.7 firings a second, worked out apart from this program. */
        @ParameterizedTest
        @CsvSource({"4, 1500, 50", "6, 750, 37.5", "8, 1000, 66.6667"})
        void comes_as_often_as_speed_and_cylinders_say(int cylinders, double rpm, double perSecond) {
            Engine engine = quiet(cylinders, rpm);
            engine.holdAir();
            engine.advanceTo(60 * SECOND);

            assertThat(engine.cylinders().firingsPerSecond(rpm)).isCloseTo(perSecond, within(0.0001));
            // A minute starts in the middle of nothing: one firing more or less, and the ripple moves the mean by 0.1
            // %.
            assertThat(engine.firings() / 60.0).isCloseTo(perSecond, within(0.001 * perSecond + 1.0 / 60));
        }

        @Test
        void turns_the_crankshaft_by_one_interval() {
            Engine engine = quiet(8, 750);
            for (int firing = 1; firing <= 16; firing++) {
                engine.advanceFiring();
                // advanceFiring stops within a nanosecond after the firing.
                assertThat(engine.crankRadians()).isCloseTo(firing * Math.PI / 2, within(1e-6));
            }
        }

        /**
         * The reference: dt/da = 1/w and dw/da = -(T + b w)/(J w) over the crank angle a, integrated by hipparchus from
         * firing to firing, each firing adding P * waited joules.
         */
        @Test
        void moves_the_speed_as_a_numerical_integration_has_it() {
            EngineMake make = EngineMake.usual(6).withCycleVariation(0);
            Cylinders cylinders = Cylinders.sound(6).with(3, new Cylinder(0.3, Cylinder.Weakness.FUEL));
            Engine engine = new Engine(make, cylinders, 900, 5, Chance.of(1));
            engine.holdAir();
            double watts = make.wattsToHold(900, 5);
            double speed = 900 * Math.PI / 30;
            double waited = 0;
            double elapsed = 0;
            for (int firing = 0; firing < 120; firing++) {
                double[] end = turn(make, 5, speed);
                waited = end[0];
                elapsed += waited;
                double energy = watts * waited * (cylinders.firingOrder().get(firing % 6) == 3 ? 0.3 : 1);
                speed = StrictMath.sqrt(end[1] * end[1] + 2 * energy / make.inertia());
                engine.advanceFiring();
            }

            // The engine's instants are whole nanoseconds; the speed changes by some 1e-7 rad/s in one.
            assertThat(engine.atNanos() / 1e9).isCloseTo(elapsed, within(2e-9));
            assertThat(engine.speedRpm()).isCloseTo(speed * 30 / Math.PI, within(1e-5));
        }

        private double[] turn(EngineMake make, double load, double speed) {
            OrdinaryDifferentialEquation motion = new OrdinaryDifferentialEquation() {
                @Override
                public int getDimension() {
                    return 2;
                }

                @Override
                public double[] computeDerivatives(double angle, double[] y) {
                    double torque = make.constantFriction() + load + make.linearFriction() * y[1];
                    return new double[] {1 / y[1], -torque / (make.inertia() * y[1])};
                }
            };
            return new DormandPrince853Integrator(1e-6, 1, 1e-14, 1e-14)
                    .integrate(motion, new ODEState(0, new double[] {0, speed}), 4 * Math.PI / 6)
                    .getPrimaryState();
        }

        /**
         * With full charges each firing gives the same energy, which is a steady mean torque: the speed then follows
         * the textbook's w(t) = T/b + (w0 - T/b) exp(-bt/J), here with J 0.2, b 0.1 and T 10.
         */
        @ParameterizedTest
        @ValueSource(ints = {2, 4, 6, 10})
        void with_full_charges_is_a_steady_torque(int seconds) {
            double joules = 10 * Math.PI;
            EngineMake make = new EngineMake(0.2, 0, 0.1, joules, 1e6, 0, 750, 1e6, 0);
            Engine engine = new Engine(make, Cylinders.sound(4), 600, 0, Chance.of(1));
            engine.throttle(1);
            engine.advanceTo(seconds * SECOND);
            SpeedTrace trace = engine.trace();
            int last = trace.size() - 1;
            double middle = (trace.atNanos(last) + trace.atNanos(last - 1)) / 2e9;
            double expected = 100 + (20 * Math.PI - 100) * StrictMath.exp(-middle / 2);

            // Each firing gives at the end of its interval what a steady torque gives throughout: half an interval
            // late, at first 0.025 s of a rise of 19 rad/s in each second.
            assertThat(trace.rpm(last) * Math.PI / 30).isCloseTo(expected, within(0.01 * expected));
        }
    }

    @Nested
    class Power {
        /** P = 2 pi n T: 1256.6 W at 600 rpm and 20 N m, 4712.4 at 1500 and 30, 31 415.9 at 3000 and 100; textbook. */
        @ParameterizedTest
        @CsvSource({"600, 20, 1256.6", "1500, 30, 4712.4", "3000, 100, 31415.9"})
        void is_torque_times_speed(double rpm, double newtonMetres, double watts) {
            EngineMake make = EngineMake.usual(4);

            double load = make.wattsToHold(rpm, newtonMetres) - make.wattsToHold(rpm, 0);

            assertThat(load).isCloseTo(watts, within(0.06));
        }

        @ParameterizedTest
        @ValueSource(doubles = {300, 750, 1500, 4000})
        void and_speed_are_each_others_inverse(double rpm) {
            EngineMake make = EngineMake.usual(6);

            assertThat(make.rpmHeldBy(make.wattsToHold(rpm, 7), 7)).isCloseTo(rpm, within(1e-9));
            double slope = (make.rpmHeldBy(make.wattsToHold(rpm, 7) + 1, 7) - rpm);
            // One watt in some thousands bends the curve by no more than that share.
            assertThat(make.rpmPerWatt(rpm, 7)).isCloseTo(slope, within(0.003 * slope));
        }

        /**
         * The Morse test on this engine: with one cylinder cut and the load eased until the speed is what it was, the
         * brake power lost is what that cylinder indicated.
         */
        @Test
        void that_a_cut_cylinder_gave_is_missing_at_the_brake() {
            EngineMake make = EngineMake.usual(4).withCycleVariation(0);
            double load = 40;
            double watts = make.wattsToHold(1500, load);
            double radiansPerSecond = 1500 * Math.PI / 30;
            Engine engine = new Engine(make, Cylinders.sound(4), 1500, load, Chance.of(1));
            engine.holdAir();
            engine.cut(2);
            engine.load(load - watts / 4 / radiansPerSecond);
            engine.advanceTo(20 * SECOND);

            // The silent turn comes when the crankshaft is fastest, so it wastes a little less air than a fourth.
            assertThat(meanRpm(engine, 20)).isCloseTo(1500, within(0.015 * 1500));
        }
    }

    @Nested
    class The_idle_control {
        @ParameterizedTest
        @ValueSource(ints = {2, 3, 4, 6, 8, 12})
        void holds_the_idle_speed(int cylinders) {
            Engine engine = lively(cylinders);
            engine.advanceTo(20 * SECOND);

            assertThat(meanRpm(engine, 40)).isCloseTo(750, within(2.0));
        }

        @Test
        void brings_the_engine_to_another_speed_and_holds_it_there() {
            Engine engine = lively(8);
            engine.holdSpeed(1500);
            engine.advanceTo(12 * SECOND);

            assertThat(meanRpm(engine, 20)).isCloseTo(1500, within(3.0));
        }

        @Test
        void makes_up_for_a_load_and_for_a_dead_cylinder() {
            Engine engine = lively(6);
            engine.load(12);
            engine.cut(4);
            engine.advanceTo(20 * SECOND);

            assertThat(meanRpm(engine, 20)).isCloseTo(750, within(3.0));
        }

        @Test
        void leaves_the_speed_to_fall_when_the_air_is_held() {
            Engine engine = quiet(8, 1500);
            engine.holdAir();
            engine.cut(5);
            engine.advanceTo(20 * SECOND);
            EngineMake make = engine.make();
            double expected = make.rpmHeldBy(make.wattsToHold(1500, 0) * 7 / 8, 0);

            assertThat(meanRpm(engine, 10)).isCloseTo(expected, within(2.0));
        }
    }

    @Test
    void a_restored_cylinder_brings_the_speed_back() {
        Engine engine = quiet(4, 1500);
        engine.holdAir();
        engine.cut(1);
        engine.advanceTo(10 * SECOND);
        assertThat(engine.speedRpm()).isLessThan(1300);
        engine.restore(1);
        engine.advanceTo(25 * SECOND);

        assertThat(meanRpm(engine, 5)).isCloseTo(1500, within(2.0));
    }

    @Test
    void an_open_throttle_races_to_the_limit_and_no_further() {
        Engine engine = lively(8);
        engine.throttle(0.5);
        engine.advanceTo(20 * SECOND);

        assertThat(meanRpm(engine, 5)).isBetween(5800.0, 6100.0);
    }

    @Test
    void an_engine_with_every_cylinder_cut_stalls_and_stands() {
        Engine engine = lively(4);
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            engine.cut(cylinder);
        }
        engine.advanceTo(30 * SECOND);

        assertThat(engine.stalled()).isTrue();
        assertThat(engine.speedRpm()).isCloseTo(0, within(1e-9));
        double standing = engine.crankRadians();
        engine.advanceFiring();
        engine.advanceTo(31 * SECOND);
        assertThat(engine.crankRadians()).isEqualTo(standing);
    }

    @Test
    void how_often_one_looks_changes_nothing() {
        Engine once = lively(6);
        Engine often = lively(6);
        once.advanceTo(5 * SECOND);
        for (long nanos = 0; nanos <= 5 * SECOND; nanos += 1_234_567) {
            often.advanceTo(nanos);
        }
        often.advanceTo(5 * SECOND);

        assertThat(often.speedRpm()).isEqualTo(once.speedRpm());
        assertThat(often.crankRadians()).isEqualTo(once.crankRadians());
        assertThat(often.trace().size()).isEqualTo(once.trace().size());
    }

    @Test
    void the_same_seed_gives_the_same_engine_and_another_seed_another() {
        Engine one = lively(4);
        Engine same = lively(4);
        Engine other = new Engine(EngineMake.usual(4), Cylinders.sound(4), 750, 0, Chance.of(8));
        for (Engine engine : new Engine[] {one, same, other}) {
            engine.advanceTo(3 * SECOND);
        }

        assertThat(same.speedRpm()).isEqualTo(one.speedRpm());
        assertThat(other.speedRpm()).isNotEqualTo(one.speedRpm());
    }

    @Test
    void the_trace_has_the_mean_speed_of_every_cycle() {
        Engine engine = lively(8);
        engine.advanceTo(10 * SECOND);
        SpeedTrace trace = engine.trace();

        assertThat(trace.size()).isEqualTo((int) (engine.firings() / 8));
        for (int cycle = 1; cycle < trace.size(); cycle++) {
            double seconds = (trace.atNanos(cycle) - trace.atNanos(cycle - 1)) / 1e9;
            // Two revolutions; the instants are rounded to a nanosecond of some 0.16 s.
            assertThat(trace.rpm(cycle)).isCloseTo(120 / seconds, within(1e-4));
        }
        assertThatThrownBy(() -> trace.rpm(trace.size())).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void what_cannot_be_is_refused() {
        Engine engine = lively(4);
        engine.advanceTo(SECOND);

        assertThatThrownBy(() -> engine.advanceTo(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> engine.throttle(1.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> engine.load(-1)).isInstanceOf(IllegalArgumentException.class);
    }
}
