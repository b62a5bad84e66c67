package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.chance.Chance;
import telltally.simulator.vehicle.BalanceVerdict.Outcome;
import telltally.simulator.vehicle.Cylinder.Weakness;

class CylinderBalanceTest {
    private static final long SECOND = 1_000_000_000L;

    private static Engine engine(Cylinders cylinders) {
        return new Engine(EngineMake.usual(cylinders.count()), cylinders, 750, 0, Chance.of(3));
    }

    private static CylinderBalance balance(Engine engine, int repeat) {
        return new CylinderBalance(engine, BalancePlan.usual(), BalanceJudge.ofRepeat(repeat));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 8})
    void nine_flashes_when_every_cylinder_contributes(int count) {
        assertThat(balance(engine(Cylinders.sound(count)), 0).run().flashes()).hasValue(9);
    }

    @ParameterizedTest
    @CsvSource({"4, 1", "6, 5", "8, 3", "8, 8"})
    void the_weak_cylinder_is_named(int count, int weak) {
        Cylinders cylinders = Cylinders.sound(count).with(weak, new Cylinder(0.6, Weakness.COMPRESSION));

        assertThat(balance(engine(cylinders), 0).run().flashes()).hasValue(weak);
        assertThat(balance(engine(cylinders), 1).run().flashes()).hasValue(9);
    }

    @Test
    void a_dead_cylinder_is_named_by_the_most_lenient_repeat_too() {
        Cylinders cylinders = Cylinders.sound(8).with(6, new Cylinder(0, Weakness.SPARK));

        assertThat(balance(engine(cylinders), 2).run().flashes()).hasValue(6);
    }

    /** About five minutes for eight cylinders: common practice, no source. */
    @Test
    void eight_cylinders_take_five_minutes_at_1500_rpm() {
        Engine engine = engine(Cylinders.sound(8));
        CylinderBalance balance = balance(engine, 0);
        balance.advanceTo(30 * SECOND);
        assertThat(engine.speedRpm()).isCloseTo(1500, within(30.0));
        balance.run();

        assertThat(engine.atNanos()).isEqualTo(300 * SECOND);
        balance.advanceTo(320 * SECOND);
        assertThat(engine.speedRpm()).isCloseTo(750, within(20.0));
    }

    @Test
    void one_cylinder_after_the_other_is_cut() {
        CylinderBalance balance = balance(engine(Cylinders.sound(4)), 0);
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            balance.advanceTo(Math.round((12 + 36 * cylinder - 20) * 1e9));
            assertThat(balance.cutCylinder()).isEmpty();
            balance.advanceTo(Math.round((12 + 36 * cylinder - 1) * 1e9));
            assertThat(balance.cutCylinder()).hasValue(cylinder);
        }
        balance.run();
        assertThat(balance.cutCylinder()).isEmpty();
    }

    @Test
    void a_touch_of_the_throttle_spoils_the_test() {
        Engine engine = engine(Cylinders.sound(8));
        CylinderBalance balance = balance(engine, 0);
        balance.advanceTo(100 * SECOND);
        engine.throttle(0.1);
        balance.advanceTo(101 * SECOND);
        engine.throttle(0);

        assertThat(balance.run().outcome()).isEqualTo(Outcome.SPOILED);
    }

    @Test
    void a_touch_after_the_test_spoils_nothing() {
        Engine engine = engine(Cylinders.sound(4));
        CylinderBalance balance = balance(engine, 0);
        balance.run();
        engine.throttle(0.5);
        balance.advanceTo(engine.atNanos() + SECOND);

        assertThat(balance.verdict().orElseThrow().outcome()).isEqualTo(Outcome.ALL_CONTRIBUTE);
    }

    @Test
    void how_often_one_looks_changes_nothing() {
        CylinderBalance often = balance(engine(Cylinders.sound(4)), 0);
        for (long nanos = 0; often.verdict().isEmpty(); nanos += 333_333_333) {
            often.advanceTo(nanos);
        }

        assertThat(often.verdict())
                .hasValue(balance(engine(Cylinders.sound(4)), 0).run());
    }

    @Test
    void more_cylinders_than_flashes_can_tell_are_refused() {
        Engine ten = engine(Cylinders.sound(10));

        assertThatThrownBy(() -> balance(ten, 0)).hasMessageContaining("10");
    }
}
