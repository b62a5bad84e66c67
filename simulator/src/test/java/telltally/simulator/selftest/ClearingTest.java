package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Battery;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Place;

/** Two ways erase what is stored, and no others. Common practice, no source. */
class ClearingTest {
    private static Workshop whileCodesAreSent() {
        return Workshop.sound()
                .fault("coolant", Workshop.OPEN_SIGNAL)
                .fault("air", Workshop.OPEN_SIGNAL, new Presence.Remembered())
                .jumperIn(1)
                .keyOn(3)
                .until(40);
    }

    @Test
    void pulling_the_jumper_while_codes_are_sent_erases_the_stored_ones() {
        Workshop workshop = whileCodesAreSent().jumperOut(41).jumperIn(45).until(150);
        assertThat(workshop.details(Kind.STORED_ERASED)).containsExactly("interrupted");
        assertThat(workshop.bench().codes()).containsEntry(Segment.STORED, List.of("11"));
    }

    @Test
    void turning_the_key_off_while_codes_are_sent_erases_the_stored_ones() {
        Workshop workshop = whileCodesAreSent().keyOff(41);
        assertThat(workshop.bench().storedCodes()).isEmpty();
        assertThat(workshop.details(Kind.STORED_ERASED)).containsExactly("interrupted");
    }

    @Test
    void the_starter_while_codes_are_sent_interrupts_them_too() {
        assertThat(whileCodesAreSent().crank(41).bench().storedCodes()).isEmpty();
    }

    @Test
    void the_battery_taken_off_erases_at_any_time() {
        for (double at : new double[] {0.5, 2, 4, 8, 40, 200}) {
            Workshop workshop = Workshop.sound().fault("air", Workshop.OPEN_SIGNAL, new Presence.Remembered());
            if (at > 1) {
                workshop.jumperIn(1);
            }
            if (at > 3) {
                workshop.keyOn(3);
            }
            workshop.act(new OperatorAct.BatteryOff(Workshop.nanos(at)));
            assertThat(workshop.bench().storedCodes()).isEmpty();
            assertThat(workshop.details(Kind.STORED_ERASED)).containsExactly("battery");
        }
    }

    @Test
    void with_the_key_on_a_battery_put_back_begins_with_the_bulb_check() {
        Workshop workshop = whileCodesAreSent().act(new OperatorAct.BatteryOff(Workshop.nanos(41)));
        assertThat(workshop.events(Kind.BULB_CHECK)).hasSize(2);
        workshop.until(120);
        assertThat(workshop.bench().codes()).containsEntry(Segment.STORED, List.of("11"));
    }

    @Test
    void after_a_disconnection_there_is_nothing_stored() {
        Conditions disconnected =
                Conditions.warm().withBattery(Battery.charged().disconnected());
        Workshop workshop = Workshop.sound()
                .conditions(disconnected)
                .fault("air", Workshop.OPEN_SIGNAL, new Presence.Remembered())
                .fault("coolant", Workshop.OPEN_SIGNAL);
        assertThat(workshop.bench().storedCodes()).isEmpty();
    }

    @Test
    void after_all_codes_are_out_key_and_jumper_erase_nothing() {
        Workshop workshop = whileCodesAreSent().until(150);
        assertThat(workshop.events(Kind.CODES_OUT)).hasSize(1);
        workshop.jumperOut(151).keyOff(152);
        assertThat(workshop.bench().storedCodes()).containsExactly("41", "61");
    }

    @Test
    void what_was_sent_before_the_interruption_was_sent_and_half_a_code_was_not() {
        Workshop workshop = whileCodesAreSent();
        // 41: 3.5 s, 2 s and 0.5 s long; two of them with 4 s between end 16 s after the first flash.
        long first = workshop.groups(telltally.simulator.format.GroupKind.CODE)
                .get(0)
                .startNanos();
        Workshop half = Workshop.sound()
                .fault("coolant", Workshop.OPEN_SIGNAL)
                .jumperIn(1)
                .keyOn(3)
                .jumperOut(first / 1e9 + 4)
                .until(60);
        assertThat(half.bench().codes()).containsEntry(Segment.PRESENT, List.of());
        assertThat(half.groups(telltally.simulator.format.GroupKind.CODE)).isEmpty();
        assertThat(half.bench().codes()).doesNotContainKey(Segment.STORED);
    }

    @Test
    void a_supply_lost_while_codes_are_sent_interrupts_them() {
        Workshop workshop = Workshop.sound()
                .fault("air", Workshop.OPEN_SIGNAL, new Presence.Remembered())
                .fault(
                        "supply",
                        new Fault.Open(Place.SUPPLY_WIRE),
                        new Presence.Recurring(40 * Workshop.SECOND, Workshop.SECOND, false))
                .jumperIn(2)
                .keyOn(3)
                .until(42);
        assertThat(workshop.bench().storedCodes()).isEmpty();
    }
}
