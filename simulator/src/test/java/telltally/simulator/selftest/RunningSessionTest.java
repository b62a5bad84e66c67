package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Transmission;

/** Key on, engine running. The order of things and their times: common practice, no source. */
class RunningSessionTest {
    private static Workshop runningTest(Workshop workshop) {
        return workshop.jumperIn(1).crank(2).until(180);
    }

    private static List<String> running(Workshop workshop) {
        return workshop.bench().codes().get(Segment.RUNNING);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 6, 8, 10, 12})
    void it_opens_with_half_as_many_flashes_as_cylinders(int cylinders) {
        Workshop workshop = runningTest(Workshop.sound().vehicle(cylinders, Transmission.MANUAL));
        assertThat(workshop.groups(GroupKind.CYLINDERS)).hasSize(1);
        assertThat(workshop.groups(GroupKind.CYLINDERS).get(0).digits()).isEqualTo("" + cylinders / 2);
        assertThat(running(workshop)).containsExactly("11");
    }

    @Test
    void the_test_takes_one_to_two_minutes_and_the_codes_come_twice() {
        Workshop workshop = runningTest(Workshop.sound().fault("air", Workshop.OPEN_SIGNAL));
        long opened = workshop.groups(GroupKind.CYLINDERS).get(0).endNanos();
        assertThat(workshop.groups(GroupKind.CODE))
                .extracting(group -> group.digits())
                .containsExactly("61", "61");
        assertThat(workshop.groups(GroupKind.CODE).get(0).startNanos() - opened)
                .isBetween(60 * Workshop.SECOND, 120 * Workshop.SECOND);
    }

    @Test
    void the_speed_rises_for_the_test_and_falls_to_about_1000_for_the_codes() {
        Workshop workshop = runningTest(Workshop.sound());
        SampledSignal speed = workshop.bench().speedRpm().orElseThrow();
        // The idle control settles within a second or two, and single cycles vary by a few rpm.
        assertThat(meanRpm(speed, 3, 4)).isBetween(700.0, 800.0);
        assertThat(meanRpm(speed, 30, 80)).isBetween(1580.0, 1620.0);
        assertThat(meanRpm(speed, 105, 115)).isBetween(980.0, 1020.0);
    }

    private static double meanRpm(SampledSignal speed, double from, double to) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < speed.size(); i++) {
            if (speed.atNanos(i) >= Workshop.nanos(from) && speed.atNanos(i) < Workshop.nanos(to)) {
                sum += speed.value(i);
                count++;
            }
        }
        return sum / count;
    }

    @Test
    void the_record_of_speeds_stands_before_the_start_and_after_the_key_is_off() {
        SampledSignal speed = Workshop.sound()
                .crank(2)
                .until(5)
                .keyOff(6)
                .until(9)
                .bench()
                .speedRpm()
                .orElseThrow();
        assertThat(speed.atNanos(0)).isEqualTo(Workshop.nanos(2));
        assertThat(speed.value(0)).isZero();
        assertThat(speed.atNanos(speed.size() - 1)).isEqualTo(Workshop.nanos(6));
        assertThat(speed.value(speed.size() - 1)).isZero();
        assertThat(speed.value(speed.size() - 2)).isBetween(700.0, 800.0);
    }

    @Test
    void a_cold_engine_sets_the_coolant_code_and_comes_of_the_conditions() {
        Workshop workshop =
                runningTest(Workshop.sound().conditions(Conditions.warm().withCoolantCelsius(15)));
        assertThat(running(workshop)).containsExactly("43");
        assertThat(workshop.bench().codesFromConditions()).containsEntry(Segment.RUNNING, List.of("43"));
    }

    @Test
    void a_drifted_sensor_sets_the_same_code_and_does_not_come_of_the_conditions() {
        Workshop workshop = runningTest(
                Workshop.sound().fault("coolant", new telltally.simulator.vehicle.Fault.DriftedByKelvin(-60)));
        assertThat(running(workshop)).containsExactly("43");
        assertThat(workshop.bench().codesFromConditions()).isEmpty();
    }

    @Test
    void a_gear_engaged_during_the_test_sets_the_neutral_code() {
        Workshop workshop = Workshop.sound()
                .vehicle(4, Transmission.AUTOMATIC)
                .jumperIn(1)
                .crank(2)
                .act(new OperatorAct.Shift(Workshop.nanos(30), Gear.ENGAGED))
                .until(180);
        assertThat(running(workshop)).containsExactly("91");
        assertThat(workshop.bench().codesFromConditions()).containsEntry(Segment.RUNNING, List.of("91"));
    }

    @Test
    void a_neutral_switch_not_connected_sets_the_neutral_code_and_is_a_fault() {
        Workshop workshop = runningTest(
                Workshop.sound().vehicle(4, Transmission.AUTOMATIC).fault("neutral-switch", Workshop.OPEN_SIGNAL));
        assertThat(running(workshop)).containsExactly("91");
        assertThat(workshop.bench().codesFromConditions()).isEmpty();
    }

    @Test
    void air_conditioning_left_on_sets_its_own() {
        Workshop workshop =
                runningTest(Workshop.sound().conditions(Conditions.warm().withAirConditioningOn(true)));
        assertThat(running(workshop)).containsExactly("93");
    }

    @Test
    void the_jumper_put_in_while_the_engine_runs_starts_it() {
        Workshop workshop = Workshop.sound().crank(2).until(20).jumperIn(21).until(180);
        assertThat(workshop.secondsOf(Kind.TEST_BEGINS)).isEqualTo(21);
        assertThat(running(workshop)).containsExactly("11");
    }

    @Test
    void the_jumper_pulled_during_the_test_ends_it_and_erases_nothing() {
        Workshop workshop = Workshop.sound()
                .fault("air", Workshop.OPEN_SIGNAL)
                .jumperIn(1)
                .crank(2)
                .jumperOut(50)
                .until(180);
        assertThat(workshop.groups(GroupKind.CODE)).isEmpty();
        assertThat(workshop.bench().storedCodes()).containsExactly("61");
        assertThat(workshop.bench().engineRuns()).isTrue();
        assertThat(workshop.bench().rpmNow()).isBetween(700.0, 800.0);
    }

    @Test
    void the_jumper_pulled_while_running_codes_are_sent_erases_the_stored_ones() {
        Workshop workshop = Workshop.sound()
                .fault("air", Workshop.OPEN_SIGNAL)
                .jumperIn(1)
                .crank(2)
                .until(110)
                .jumperOut(111);
        assertThat(workshop.bench().storedCodes()).isEmpty();
    }

    @Nested
    class The_starter {
        @Test
        void does_not_turn_with_the_drive_engaged() {
            Workshop workshop = Workshop.sound()
                    .conditions(Conditions.warm().withGear(Gear.ENGAGED))
                    .crank(2)
                    .until(20);
            assertThat(workshop.details(Kind.STARTER_BLOCKED)).containsExactly("drive engaged");
            assertThat(workshop.bench().engineRuns()).isFalse();
            assertThat(workshop.bench().speedRpm()).isEmpty();
        }

        @Test
        void turns_in_gear_with_the_clutch_held_down_and_the_engine_stalls_when_it_comes_up() {
            Workshop workshop = Workshop.sound()
                    .conditions(Conditions.warm().withGear(Gear.ENGAGED).withClutchDown(true))
                    .crank(2)
                    .until(10);
            assertThat(workshop.bench().engineRuns()).isTrue();
            workshop.act(new OperatorAct.Clutch(Workshop.nanos(11), false));
            assertThat(workshop.bench().engineRuns()).isFalse();
            assertThat(workshop.secondsOf(Kind.ENGINE_STALLS)).isEqualTo(11);
            assertThat(workshop.bench().rpmNow()).isZero();
        }

        @Test
        void grinds_while_the_engine_runs_and_changes_nothing() {
            Workshop workshop = runningTest(Workshop.sound()).crank(181).until(190);
            assertThat(workshop.events(Kind.STARTER_GRINDS)).hasSize(1);
            assertThat(workshop.bench().engineRuns()).isTrue();
        }

        @Test
        void does_nothing_without_supply_and_the_dark_stays() {
            Workshop workshop = Workshop.sound()
                    .fault(
                            "supply",
                            new telltally.simulator.vehicle.Fault.Open(telltally.simulator.vehicle.Place.SUPPLY_WIRE))
                    .crank(2)
                    .until(20);
            assertThat(workshop.details(Kind.DOES_NOT_START)).containsExactly("supply");
            assertThat(workshop.bench().pin().edgeCount()).isZero();
        }
    }

    @Nested
    class The_prompt {
        private static final String NOT_MOVED = "34";

        private Workshop prompted() {
            Workshop workshop = Workshop.sound().prompting();
            return workshop.jumperIn(1).crank(2).until(60);
        }

        @Test
        void is_one_flash_half_way() {
            Workshop workshop = prompted();
            assertThat(workshop.groups(GroupKind.PROMPT)).hasSize(1);
            assertThat(workshop.groups(GroupKind.PROMPT).get(0).startNanos())
                    .isBetween(Workshop.nanos(50), Workshop.nanos(60));
        }

        @Test
        void answered_sets_nothing() {
            assertThat(running(prompted().press(61, 0.3).until(180))).containsExactly("11");
        }

        @Test
        void answered_by_a_pedal_that_goes_down_slowly_counts() {
            Workshop workshop = prompted();
            for (int step = 1; step <= 10; step++) {
                workshop.throttle(60 + step * 0.1, step / 20.0);
            }
            assertThat(running(workshop.throttle(62, 0).until(180))).containsExactly("11");
        }

        @Test
        void not_answered_or_answered_too_late_or_before_it_came_sets_a_code() {
            assertThat(running(prompted().until(180))).containsExactly(NOT_MOVED);
            assertThat(running(prompted().press(90, 0.3).until(180))).containsExactly(NOT_MOVED);
            Workshop early = Workshop.sound().prompting().jumperIn(1).crank(2).press(30, 0.3);
            assertThat(running(early.until(180))).containsExactly(NOT_MOVED);
        }

        @Test
        void nobody_answers_is_told_from_a_sensor_that_does_not_show_the_answer() {
            Workshop dead = Workshop.sound().prompting().fault("throttle", Workshop.OPEN_SIGNAL);
            dead.jumperIn(1).crank(2).press(61, 0.5).until(180);
            assertThat(running(dead)).containsExactly("32", NOT_MOVED);
            assertThat(dead.bench().codesFromConditions()).isEmpty();
            assertThat(prompted().until(180).bench().codesFromConditions())
                    .containsEntry(Segment.RUNNING, List.of(NOT_MOVED));
        }
    }

    @Test
    void acts_that_the_vehicle_does_not_offer_and_instants_that_have_passed_are_refused() {
        Workshop automatic = Workshop.sound().vehicle(4, Transmission.AUTOMATIC).until(10);
        assertThatThrownBy(() -> automatic.act(new OperatorAct.Clutch(Workshop.nanos(11), true)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Workshop.sound().act(new OperatorAct.Shift(1, Gear.PARK)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> automatic.keyOn(9)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void an_odd_number_of_cylinders_has_no_whole_half() {
        assertThatThrownBy(
                        () -> Workshop.sound().vehicle(3, Transmission.MANUAL).setup())
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Workshop.sound()
                        .vehicle(3, Transmission.MANUAL)
                        .format("pair-loop", "plank")
                        .setup())
                .isNotNull();
    }
}
