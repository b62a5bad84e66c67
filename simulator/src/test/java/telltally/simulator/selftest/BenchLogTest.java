package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.signal.Interval;
import telltally.simulator.vehicle.Battery;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Place;
import telltally.simulator.vehicle.Transmission;

/** What is noted of a session: every event at its instant, every light from its start to its end. */
class BenchLogTest {
    private static List<String> log(Workshop workshop) {
        return workshop.bench().events().stream()
                .map(event -> (event.atNanos() / 1e9 + " " + event.kind().key() + " " + event.detail()).trim())
                .toList();
    }

    /** From second to second. */
    private static List<String> lights(Workshop workshop) {
        return workshop.groups(GroupKind.STEADY).stream()
                .map(each -> each.startNanos() / 1e9 + " to " + each.endNanos() / 1e9)
                .toList();
    }

    @Test
    void jumper_and_key_are_noted_as_they_were_moved() {
        Workshop workshop = Workshop.sound().jumperIn(1).keyOn(3).jumperOut(4).keyOff(8);
        assertThat(log(workshop))
                .containsExactly("1.0 jumper-in", "3.0 key-on", "3.0 bulb-check", "4.0 jumper-out", "8.0 key-off");
    }

    @Test
    void a_start_cuts_the_bulb_check_short_and_the_lamp_stays_lit_until_the_engine_is_up() {
        Workshop workshop = Workshop.sound().jumperIn(1).crank(2).until(5);
        assertThat(log(workshop))
                .containsExactly(
                        "1.0 jumper-in",
                        "2.0 key-on",
                        "2.0 bulb-check",
                        "2.0 starter-on",
                        "2.0 engine-starts",
                        "4.0 test-begins engine-running");
        assertThat(lights(workshop)).containsExactly("2.0 to 4.0");
    }

    @Test
    void a_starter_that_cannot_turn_draws_the_controller_down_so_that_it_begins_anew() {
        Conditions weak = Conditions.warm().withBattery(Battery.charged().withVolts(8.7));
        Workshop workshop = Workshop.sound()
                .conditions(weak)
                .keyOn(3)
                .crank(20)
                .jumperIn(21)
                .until(26);
        assertThat(log(workshop))
                .startsWith(
                        "3.0 key-on",
                        "3.0 bulb-check",
                        "20.0 starter-on",
                        "20.0 does-not-start battery",
                        "20.0 bulb-check",
                        "21.0 jumper-in",
                        "22.0 test-begins engine-off");
        assertThat(lights(workshop)).containsExactly("3.0 to 5.0", "20.0 to 22.0");
    }

    @Test
    void a_supply_that_comes_back_is_shown_by_a_whole_bulb_check_before_the_test() {
        Presence once = new Presence.Recurring(600 * Workshop.SECOND, 5 * Workshop.SECOND, false);
        Workshop workshop = Workshop.sound()
                .fault("supply", new Fault.Open(Place.SUPPLY_WIRE), once)
                .jumperIn(1)
                .keyOn(2)
                .until(8);
        assertThat(lights(workshop)).containsExactly("5.0 to 7.0");
        assertThat(workshop.secondsOf(Kind.TEST_BEGINS)).isEqualTo(7);
    }

    @Test
    void a_supply_lost_stops_the_engine() {
        Presence later = new Presence.Recurring(30 * Workshop.SECOND, Workshop.SECOND, false);
        Workshop workshop = Workshop.sound()
                .fault("supply", new Fault.Open(Place.SUPPLY_WIRE), later)
                .crank(2)
                .until(29);
        assertThat(workshop.bench().engineRuns()).isTrue();
        assertThat(workshop.until(31).bench().engineRuns()).isFalse();
    }

    @Test
    void a_battery_taken_off_is_noted_with_what_it_erases_and_stops_the_engine() {
        Workshop workshop = Workshop.sound().crank(2).until(9).act(new OperatorAct.BatteryOff(Workshop.nanos(10)));
        assertThat(workshop.bench().engineRuns()).isFalse();
        assertThat(log(workshop)).endsWith("10.0 battery-off", "10.0 stored-erased battery", "10.0 bulb-check");
    }

    @Test
    void an_engine_stalled_while_its_codes_are_sent_interrupts_them_and_the_key_stays_on() {
        Workshop workshop = Workshop.sound()
                .fault("air", Workshop.OPEN_SIGNAL)
                .jumperIn(1)
                .crank(2)
                .until(110)
                .act(new OperatorAct.Shift(Workshop.nanos(111), Gear.ENGAGED));
        assertThat(log(workshop)).endsWith("111.0 engine-stalls", "111.0 stored-erased interrupted");
        workshop.until(115).jumperOut(116).jumperIn(117).until(118);
        assertThat(log(workshop)).contains("117.0 test-begins engine-off");
        assertThat(workshop.bench().pin().litNanosBetween(Workshop.nanos(111), Workshop.nanos(118)))
                .isZero();
    }

    @Test
    void blinking_ends_with_the_jumper_and_only_whole_blinks_are_noted() {
        Workshop workshop = Workshop.sound()
                .format("pair-loop", "plank")
                .jumperIn(1)
                .keyOn(3)
                .jumperOut(30.1)
                .until(60);
        assertThat(workshop.bench().pin().litNanosBetween(Workshop.nanos(30.1), Workshop.nanos(60)))
                .isZero();
        assertThat(workshop.groups(GroupKind.STEADY)).hasSize(2);
        SentGroup blinking = workshop.groups(GroupKind.STEADY).get(1);
        List<Interval> flashes = blinking.signs().stream()
                .map(SentSign::flashes)
                .flatMap(List::stream)
                .toList();
        assertThat(flashes).hasSizeGreaterThan(30).allMatch(flash -> flash.endNanos() <= Workshop.nanos(30.1));
        assertThat(workshop.details(Kind.CODES_BEGIN)).containsExactly("codes");
    }

    @Test
    void a_loop_broken_off_can_be_asked_for_again() {
        Workshop workshop = Workshop.sound()
                .format("pair-loop", "plank")
                .jumperIn(1)
                .keyOn(3)
                .jumperOut(30)
                .jumperIn(35)
                .until(50);
        assertThat(workshop.events(Kind.TEST_BEGINS))
                .extracting(BenchEvent::atNanos)
                .containsExactly(Workshop.nanos(5), Workshop.nanos(35));
    }

    @Nested
    class What_the_pedal_does {
        @Test
        void nine_tenths_of_the_way_is_the_floor() {
            Workshop workshop = Workshop.sound().fault("air", Workshop.OPEN_SIGNAL);
            workshop.jumperIn(1).keyOn(3).until(110).press(111, 0.89).press(113, 0.91);
            assertThat(workshop.events(Kind.OUTPUTS_ON))
                    .extracting(BenchEvent::atNanos)
                    .containsExactly(Workshop.nanos(113));
        }

        @Test
        void a_sensor_that_jumps_to_the_floor_looks_like_it() {
            Presence rarely = new Presence.Recurring(200 * Workshop.SECOND, Workshop.SECOND, false);
            Workshop workshop = Workshop.sound()
                    .fault("throttle", new Fault.ShortToSupply(Place.SIGNAL_WIRE), rarely)
                    .jumperIn(2)
                    .keyOn(3)
                    .until(202);
            assertThat(workshop.secondsOf(Kind.OUTPUTS_ON)).isEqualTo(200);
        }

        @Test
        void an_idling_engine_revs_up_and_comes_down_again() {
            Workshop workshop =
                    Workshop.sound().crank(2).until(20).throttle(21, 0.3).until(26);
            assertThat(workshop.bench().rpmNow()).isGreaterThan(1500);
            assertThat(workshop.throttle(27, 0).until(60).bench().rpmNow()).isBetween(700.0, 800.0);
        }

        @Test
        void let_go_while_the_last_injector_is_cut_leaves_every_cylinder_working() {
            // Begun at 151.5 s: 12 s to rise and 36 s a cylinder, the last 14 s of them without its injector.
            Workshop workshop = Workshop.sound()
                    .jumperIn(1)
                    .crank(2)
                    .until(150)
                    .press(151, 0.5)
                    .press(300, 0.3)
                    .press(330, 0.5)
                    .until(520);
            assertThat(workshop.secondsOf(Kind.BALANCE_SPOILED)).isEqualTo(300);
            assertThat(workshop.bench().codes()).containsEntry(Segment.BALANCE, List.of("9"));
        }
    }

    @Test
    void the_air_conditioning_pulls_the_idle_down_for_a_moment() {
        Workshop workshop =
                Workshop.sound().vehicle(4, Transmission.AUTOMATIC).crank(2).until(20);
        double before = slowest(workshop, 15, 20);
        workshop.act(new OperatorAct.AirConditioning(Workshop.nanos(20), true)).until(25);
        assertThat(slowest(workshop, 20, 25)).isLessThan(before - 10);
    }

    private static double slowest(Workshop workshop, double from, double to) {
        var speed = workshop.bench().speedRpm().orElseThrow();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < speed.size(); i++) {
            if (speed.atNanos(i) >= Workshop.nanos(from) && speed.atNanos(i) < Workshop.nanos(to)) {
                least = Math.min(least, speed.value(i));
            }
        }
        return least;
    }
}
