package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat.LeadIn;
import telltally.simulator.format.FlashKind;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.vehicle.Transmission;

/** What holds whatever is done to the bench, in whatever order. */
class BenchProperties {
    private static final Set<Kind> INTERRUPTIONS = EnumSet.of(
            Kind.KEY_OFF, Kind.JUMPER_OUT, Kind.ENGINE_STALLS, Kind.STARTER_ON, Kind.NO_SUPPLY, Kind.BATTERY_OFF);

    @Provide
    Arbitrary<Session> sessions() {
        return Session.any();
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void live_steps_between_the_acts_give_the_same_as_the_list_of_acts(
            @ForAll("sessions") Session session, @ForAll long stepSeed) {
        Bench scripted = session.played();
        Bench live = session.freshBench();
        Chance steps = Chance.of(stepSeed);
        for (OperatorAct act : session.acts()) {
            while (live.nowNanos() < act.atNanos()) {
                long step = 1 + Math.round(steps.nextExponential() * steps.between(1, 4e9));
                live.advanceTo(Math.min(act.atNanos(), live.nowNanos() + step));
            }
            live.act(act);
        }
        assertThat(live.pin()).isEqualTo(scripted.pin());
        assertThat(live.lamp()).isEqualTo(scripted.lamp());
        assertThat(live.groups()).isEqualTo(scripted.groups());
        assertThat(live.codes()).isEqualTo(scripted.codes());
        assertThat(live.events()).isEqualTo(scripted.events());
        assertThat(live.speedRpm()).isEqualTo(scripted.speedRpm());
        assertThat(live.storedCodes()).isEqualTo(scripted.storedCodes());
        assertThat(live.codesFromConditions()).isEqualTo(scripted.codesFromConditions());
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void the_lamp_shows_what_the_wire_carries_without_its_fast_lists_or_nothing(@ForAll("sessions") Session session) {
        showsWhatTheWireCarries(session);
    }

    /** The starter cuts a fast list off in the middle of a flash, which then runs into the bulb check. */
    @Example
    void a_fast_list_that_is_cut_off_does_not_lengthen_the_bulb_check_on_the_lamp() {
        BenchSetup setup = Workshop.sound()
                .vehicle(2, Transmission.MANUAL)
                .fault("air", Workshop.GROUNDED_SIGNAL)
                .prompting()
                .setup();
        Session session = new Session(
                setup,
                List.of(
                        new OperatorAct.KeyOn(Workshop.nanos(1)),
                        new OperatorAct.Throttle(Workshop.nanos(1), 0.5),
                        new OperatorAct.JumperIn(Workshop.nanos(1.3)),
                        new OperatorAct.Crank(Workshop.nanos(9.3)),
                        new OperatorAct.Wait(Workshop.nanos(109.3))),
                1);
        Bench bench = session.played();
        Interval onTheWire = slow(session, bench.pin()).get(1);
        assertThat(onTheWire.startNanos()).isEqualTo(Workshop.nanos(9.295));
        assertThat(slow(session, bench.lamp()).get(1).startNanos()).isEqualTo(Workshop.nanos(9.3));
        showsWhatTheWireCarries(session);
    }

    private static void showsWhatTheWireCarries(Session session) {
        Bench bench = session.played();
        assertThat(bench.lamp().endNanos()).isEqualTo(bench.pin().endNanos()).isEqualTo(bench.nowNanos());
        if (session.setup().lampVisible()) {
            List<Interval> shown = slow(session, bench.lamp());
            assertThat(slow(session, bench.pin())).hasSameSizeAs(shown).zipSatisfy(shown, (carried, light) -> {
                // A flash of a fast list that something cuts off may lie just before what follows.
                assertThat(light.startNanos() - carried.startNanos()).isBetween(0L, fastestNanos(session));
                assertThat(carried.endNanos()).isEqualTo(light.endNanos());
            });
        } else {
            assertThat(bench.lamp().edgeCount()).isZero();
            assertThat(bench.lamp().litAtStart()).isFalse();
        }
    }

    /** Always the same draw: what is met is a matter of the sessions, not of luck. */
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE, seed = "20")
    @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
    void the_sessions_that_are_drawn_meet_every_stage(@ForAll("sessions") Session session) {
        Set<String> met = new LinkedHashSet<>();
        session.played()
                .events()
                .forEach(event -> met.add(
                        event.kind() == Kind.CODES_BEGIN
                                ? event.kind().key() + " " + event.detail()
                                : event.kind().key()));
        for (String each : List.of(
                "codes-begin present",
                "codes-begin running",
                "codes-begin codes",
                "outputs-on",
                "prompt",
                "balance-begins",
                "balance-spoiled",
                "engine-stalls",
                "stored-erased",
                "no-supply")) {
            Statistics.label(each)
                    .collect(met.contains(each))
                    .coverage(coverage -> coverage.check(true).count(times -> times >= 1));
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void every_light_on_the_wire_has_a_reason(@ForAll("sessions") Session session) {
        Bench bench = session.played();
        List<Interval> unexplained = slow(session, bench.pin());
        bench.groups().stream()
                .flatMap(group -> group.signs().stream())
                .flatMap(sign -> sign.flashes().stream())
                .filter(flash -> flash.lengthNanos() > fastestNanos(session))
                .forEach(flash -> {
                    assertThat(unexplained).anyMatch(light -> within(flash, light));
                    subtract(unexplained, flash);
                });
        for (Interval light : unexplained) {
            assertThat(isPartOfAnInterruptedGroup(session, bench, light))
                    .as("light %s of %s", light, bench.events())
                    .isTrue();
        }
    }

    /** A flash of a fast list takes 5 ms; a loose circuit's light is shorter only where something cuts it off. */
    private static long fastestNanos(Session session) {
        return session.setup().format().burst().isPresent() ? Workshop.nanos(0.006) : 0;
    }

    private static List<Interval> slow(Session session, PulseTrain train) {
        List<Interval> lights = new ArrayList<>();
        for (Interval each : train.intervals()) {
            if (each.lit() && each.lengthNanos() > fastestNanos(session)) {
                lights.add(each);
            }
        }
        return lights;
    }

    private static boolean within(Interval inner, Interval outer) {
        return outer.startNanos() <= inner.startNanos() && inner.endNanos() <= outer.endNanos();
    }

    private static void subtract(List<Interval> lights, Interval flash) {
        Interval light =
                lights.stream().filter(each -> within(flash, each)).findFirst().orElseThrow();
        int index = lights.indexOf(light);
        lights.remove(index);
        if (light.endNanos() > flash.endNanos()) {
            lights.add(index, new Interval(true, flash.endNanos(), light.endNanos()));
        }
        if (flash.startNanos() > light.startNanos()) {
            lights.add(index, new Interval(true, light.startNanos(), flash.startNanos()));
        }
    }

    /** It lies after the last whole group before something that interrupts, or before the end of the recording. */
    private static boolean isPartOfAnInterruptedGroup(Session session, Bench bench, Interval light) {
        long longestFlash = session.setup().format().flashKinds().stream()
                .mapToLong(FlashKind::onNanos)
                .max()
                .orElseThrow();
        long leadIn = session.setup().format().leadIn().map(LeadIn::litNanos).orElse(0L);
        long cutNanos = bench.events().stream()
                .filter(event -> INTERRUPTIONS.contains(event.kind()) && event.atNanos() >= light.endNanos())
                .mapToLong(BenchEvent::atNanos)
                .min()
                .orElse(bench.nowNanos());
        boolean wholeGroupBetween = bench.groups().stream()
                .anyMatch(group -> group.endNanos() > light.endNanos() && group.endNanos() <= cutNanos);
        return light.lengthNanos() <= Math.max(longestFlash, leadIn) && !wholeGroupBetween;
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void stored_codes_are_lost_by_interrupting_or_by_the_battery_and_in_no_other_way(
            @ForAll("sessions") Session session) {
        Bench bench = session.freshBench();
        for (OperatorAct act : session.acts()) {
            List<String> before = bench.storedCodes();
            int events = bench.events().size();
            bench.act(act);
            List<BenchEvent> since =
                    bench.events().subList(events, bench.events().size());
            if (since.stream().noneMatch(event -> event.kind() == Kind.STORED_ERASED)) {
                assertThat(bench.storedCodes()).containsAll(before);
            }
        }
        assertThat(bench.events().stream().filter(event -> event.kind() == Kind.STORED_ERASED))
                .allMatch(erased -> hasItsReason(session, bench.events(), erased));
    }

    private static boolean hasItsReason(Session session, List<BenchEvent> events, BenchEvent erased) {
        List<BenchEvent> before = events.subList(0, events.indexOf(erased));
        if (erased.detail().equals("battery")) {
            return before.get(before.size() - 1).kind() == Kind.BATTERY_OFF;
        }
        Kind last = before.stream()
                .map(BenchEvent::kind)
                .filter(kind -> kind == Kind.CODES_BEGIN || kind == Kind.CODES_OUT)
                .reduce((first, second) -> second)
                .orElseThrow();
        return session.setup().format().sessions().isPresent()
                && last == Kind.CODES_BEGIN
                && INTERRUPTIONS.contains(before.get(before.size() - 1).kind());
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void the_engine_runs_only_with_the_key_on_and_its_speeds_are_speeds(@ForAll("sessions") Session session) {
        Bench bench = session.played();
        bench.speedRpm().ifPresent(speed -> {
            for (int i = 0; i < speed.size(); i++) {
                // The limiter cuts in at 6000; a cycle may end a little above it.
                assertThat(speed.value(i)).isBetween(0.0, 6600.0);
            }
        });
        bench.act(new OperatorAct.KeyOff(bench.nowNanos() + 1));
        assertThat(bench.engineRuns()).isFalse();
        assertThat(bench.rpmNow()).isZero();
        bench.advanceTo(bench.nowNanos() + Workshop.nanos(30));
        assertThat(bench.lit()).isFalse();
    }
}
