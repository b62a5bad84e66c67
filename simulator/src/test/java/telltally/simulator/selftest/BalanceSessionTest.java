package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.format.GroupKind;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Transmission;

/** Cylinder balance. The order of things and their times: common practice, no source. */
class BalanceSessionTest {
    private static Workshop running(Workshop workshop) {
        return workshop.jumperIn(1).crank(2).until(150);
    }

    private static Stream<String> results(Workshop workshop) {
        return workshop.groups(GroupKind.BALANCE).stream().map(group -> group.digits());
    }

    @Test
    void with_eight_cylinders_it_takes_about_five_minutes_and_nine_says_that_all_contribute() {
        Workshop workshop = running(Workshop.sound().vehicle(8, Transmission.MANUAL))
                .press(151, 0.5)
                .until(480);
        assertThat(results(workshop)).containsExactly("9");
        double seconds = workshop.secondsOf(Kind.BALANCE_ENDS) - workshop.secondsOf(Kind.BALANCE_BEGINS);
        assertThat(seconds).isBetween(280.0, 320.0);
    }

    @Test
    void otherwise_the_number_of_the_weak_cylinder_is_sent_once() {
        Workshop workshop =
                running(Workshop.sound().weak(2, 0.3)).press(151, 0.5).until(330);
        assertThat(results(workshop)).containsExactly("2");
    }

    /** Each repeat is more lenient: what only the first names is weak, what all name is dead. */
    @ParameterizedTest
    @CsvSource({"0.65, 3, 9, 9", "0.35, 3, 3, 9", "0.0, 3, 3, 3"})
    void repeats_tell_weak_from_dead(double strength, String first, String second, String third) {
        Workshop workshop = running(Workshop.sound().weak(3, strength))
                .press(151, 0.5)
                .press(351, 0.5)
                .press(551, 0.5)
                .until(740);
        assertThat(results(workshop)).containsExactly(first, second, third);
    }

    @Test
    void a_new_running_test_begins_again_with_the_strict_one() {
        Workshop workshop = running(Workshop.sound().weak(3, 0.65))
                .press(151, 0.5)
                .until(330)
                .jumperOut(331)
                .jumperIn(332)
                .until(470)
                .press(471, 0.5)
                .until(660);
        assertThat(results(workshop)).containsExactly("3", "3");
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 12})
    void with_more_cylinders_than_flashes_can_tell_there_is_none(int cylinders) {
        Workshop workshop = running(Workshop.sound().vehicle(cylinders, Transmission.AUTOMATIC))
                .press(151, 0.5)
                .until(300);
        assertThat(workshop.events(Kind.BALANCE_BEGINS)).isEmpty();
    }

    @Test
    void the_floor_is_not_half_and_a_touch_is_not_half() {
        Workshop workshop =
                running(Workshop.sound()).press(151, 1).press(160, 0.15).until(200);
        assertThat(workshop.events(Kind.BALANCE_BEGINS)).isEmpty();
    }

    @Test
    void a_press_before_all_codes_are_out_starts_nothing_even_if_it_is_let_go_afterwards() {
        Workshop workshop = Workshop.sound()
                .jumperIn(1)
                .crank(2)
                .until(110)
                .throttle(111, 0.5)
                .until(150)
                .throttle(150.5, 0.6)
                .throttle(151, 0)
                .until(200);
        assertThat(workshop.events(Kind.BALANCE_BEGINS)).isEmpty();
        assertThat(workshop.press(201, 0.5).events(Kind.BALANCE_BEGINS)).hasSize(1);
    }

    @Test
    void touching_the_throttle_spoils_it_and_nothing_is_sent() {
        Workshop workshop = running(Workshop.sound().weak(3, 0))
                .press(151, 0.5)
                .until(220)
                .press(221, 0.3)
                .until(400);
        assertThat(workshop.secondsOf(Kind.BALANCE_SPOILED)).isEqualTo(221);
        assertThat(results(workshop)).isEmpty();
    }

    @Test
    void after_a_spoiled_test_every_injector_works_and_the_next_one_is_still_the_strict_one() {
        Workshop workshop = running(Workshop.sound().weak(3, 0.65))
                .press(151, 0.5)
                .until(190)
                .press(191, 0.3)
                .until(210)
                .press(211, 0.5)
                .until(400);
        assertThat(results(workshop)).containsExactly("3");
    }

    @Test
    void the_key_off_in_the_middle_ends_it_and_erases_nothing() {
        Workshop workshop = running(Workshop.sound().fault("air", Workshop.OPEN_SIGNAL))
                .press(151, 0.5)
                .until(200)
                .keyOff(201)
                .until(400);
        assertThat(results(workshop)).isEmpty();
        assertThat(workshop.bench().storedCodes()).containsExactly("61");
        assertThat(workshop.bench().engineRuns()).isFalse();
        assertThat(workshop.crank(401).until(410).bench().engineRuns()).isTrue();
    }

    @Test
    void the_jumper_out_in_the_middle_lets_the_engine_idle_on_all_cylinders() {
        Workshop workshop = running(Workshop.sound()).press(151, 0.5).until(190);
        workshop.jumperOut(191).until(220);
        assertThat(results(workshop)).isEmpty();
        assertThat(workshop.bench().rpmNow()).isBetween(700.0, 800.0);
        Workshop other = running(Workshop.sound());
        other.jumperOut(191).until(220);
        assertThat(List.of(other.bench().engineRuns(), workshop.bench().engineRuns()))
                .containsOnly(true);
    }

    @Test
    void an_engine_that_dies_of_a_cut_injector_ends_the_test() {
        // One cylinder of two is dead; with the other one cut nothing is left.
        Workshop workshop = running(
                        Workshop.sound().vehicle(2, Transmission.MANUAL).weak(1, 0))
                .press(151, 0.5)
                .until(300);
        assertThat(workshop.events(Kind.ENGINE_STALLS)).hasSize(1);
        assertThat(results(workshop)).isEmpty();
        assertThat(workshop.bench().engineRuns()).isFalse();
        assertThat(workshop.bench().rpmNow()).isZero();
    }

    @Test
    void that_it_died_is_noticed_at_the_same_instant_whoever_looks_how_often() {
        Workshop seldom = running(dying()).press(151, 0.5).until(300);
        Workshop often = running(dying()).press(151, 0.5);
        for (int step = 1; step <= 148_000; step++) {
            often.bench().advanceTo(Workshop.nanos(151.5) + step * Workshop.nanos(0.001));
        }
        assertThat(often.until(300).bench().events()).isEqualTo(seldom.bench().events());
        assertThat(often.bench().speedRpm()).isEqualTo(seldom.bench().speedRpm());
    }

    private static Workshop dying() {
        return Workshop.sound().vehicle(2, Transmission.MANUAL).weak(1, 0);
    }

    @Test
    void air_conditioning_during_the_test_does_not_accuse_a_sound_cylinder() {
        Workshop workshop = running(
                        Workshop.sound().conditions(Conditions.warm().withAirConditioningOn(true)))
                .press(151, 0.5)
                .until(340);
        assertThat(results(workshop)).containsExactly("9");
    }
}
