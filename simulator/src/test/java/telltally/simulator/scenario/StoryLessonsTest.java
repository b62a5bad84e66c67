package telltally.simulator.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.Simulation;
import telltally.simulator.channel.Bulb;
import telltally.simulator.channel.FilamentLamp;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.GroupKind;
import telltally.simulator.recording.Recording;
import telltally.simulator.selftest.BenchEvent;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.selftest.Debrief.Finding;
import telltally.simulator.selftest.Debrief.WeakCylinder;

/** Every lesson with a vehicle: what comes of it is what its author meant. Codes are those of the invented lists. */
class StoryLessonsTest {
    private static final Map<String, Scenario> STORIES = stories();

    private static Map<String, Scenario> stories() {
        Map<String, Scenario> stories = new LinkedHashMap<>();
        for (TextFile file : new ResourceFolder("telltally/scenarios/lessons").read()) {
            try {
                Scenario scenario = ScenarioReader.shipped().read(file, Optional.empty());
                if (scenario.content() instanceof Content.Caused) {
                    stories.put(scenario.id(), scenario);
                }
            } catch (ProblemException e) {
                throw new AssertionError(e.problems().toString(), e);
            }
        }
        return stories;
    }

    private static Recording played(String id) {
        return Simulation.run(STORIES.get(id), 42);
    }

    /** Codes by segment, faults by circuit and weak cylinders, codes that come of how it was tested. */
    private static final List<String> EXPECTED = List.of(
            "nothing-found: present 11, stored 11, running 11 /  / ",
            "monday-morning: running 43 /  / running 43",
            "hurried-helper: running 91 /  / running 91",
            "after-the-gearbox: running 91 / neutral-switch / ",
            "a-hot-day: running 93 /  / running 93",
            "new-battery: present 11, stored 11 / coolant / ",
            "over-the-cobbles: present 11, stored 11 41 / coolant / ",
            "now-and-then: present 11, stored 61 / air / ",
            "listen: present 11, stored 11 / purge-solenoid / ",
            "one-of-four: running 11, balance 3 / cylinder 3 / ",
            "one-of-eight: running 11, balance 6 9 / cylinder 6 / ",
            "one-of-six: running 11, balance 5 9 / cylinder 5 / ",
            "the-wrong-moment: present 42, stored 11 / coolant, air / ",
            "dim-and-slow: present 88, stored 11 /  / present 88",
            "no-lamp: present 62, stored 62 / air / ",
            "by-the-needle: present 31, stored 31 / throttle / ",
            "winter-salt: present 11, stored 11, running 43 / coolant / ",
            "warm-to-the-hand: running 43 / coolant / ",
            "never-quite-home: present 33, stored 11 / throttle / ",
            "after-the-ford: present 32, stored 11, running 32 43 / throttle / ",
            "one-hides-another: present 32, stored 11 / throttle, coolant / ",
            "nobody-at-the-wheel: running 34 /  / running 34",
            "twelve: running 11 /  / ",
            "two-cylinders: present 222, stored 222 324, running 222 324 / idle-air-solenoid, air / ",
            "round-and-round: codes 22 61 / recirculation-solenoid, air / ",
            "only-a-blink: codes  /  / ",
            "long-and-short-again: codes 31 41 / throttle, coolant / ",
            "in-a-frame: codes 21 41 / purge-solenoid, coolant / ",
            "up-the-ladder: codes 8311 6412 / purge-solenoid, throttle / ",
            "silent-on-command: present 22, stored 11 / recirculation-solenoid / ",
            "a-restless-foot: running 11, balance 9 /  / ",
            "it-will-not-turn: running 11 /  / ");

    private static List<String> told(Map<?, List<String>> codes) {
        List<String> all = new ArrayList<>();
        codes.forEach((segment, list) ->
                all.add(segment.toString().toLowerCase(java.util.Locale.ROOT) + " " + String.join(" ", list)));
        return all;
    }

    private static String told(String id) {
        Recording recording = played(id);
        var expectation = recording.expectation().orElseThrow();
        List<String> causes = new ArrayList<>();
        for (Finding finding : expectation.findings()) {
            causes.add(finding.fault().circuit());
        }
        for (WeakCylinder weak : expectation.weakCylinders()) {
            causes.add("cylinder " + weak.number());
        }
        return id + ": " + String.join(", ", told(recording.truth().codes())) + " / " + String.join(", ", causes)
                + " / " + String.join(", ", told(expectation.fromConditions()));
    }

    @Test
    void every_story_sends_the_codes_of_its_causes() {
        assertThat(STORIES.keySet().stream().map(StoryLessonsTest::told)).containsExactlyElementsOf(EXPECTED);
    }

    @Test
    void what_a_learner_should_measure_shows_every_fault() {
        assertThat(STORIES.keySet())
                .allSatisfy(
                        id -> assertThat(played(id).expectation().orElseThrow().findings())
                                .allSatisfy(finding ->
                                        assertThat(finding.confirmations()).isNotEmpty()));
    }

    /** The first answer is that of the strict test, each further one of a more lenient one. */
    @ParameterizedTest
    @CsvSource({"one-of-four, 3 3 3", "one-of-eight, 6 9", "one-of-six, 5 5 9", "a-restless-foot, 9", "twelve, ''"})
    void repeated_balance_tests_tell_weak_from_dead(String id, String answers) {
        assertThat(played(id).truth().groups().stream()
                        .filter(group -> group.kind() == GroupKind.BALANCE)
                        .map(group -> group.digits())
                        .reduce((first, second) -> first + " " + second)
                        .orElse(""))
                .isEqualTo(answers);
    }

    private static List<String> details(Recording recording, Kind kind, double fromSeconds) {
        return recording.benchEvents().stream()
                .filter(event -> event.kind() == kind && event.atNanos() >= fromSeconds * 1e9)
                .map(BenchEvent::detail)
                .toList();
    }

    @Test
    void in_listen_one_solenoid_is_silent_in_the_output_check_and_no_code_says_so() {
        Recording recording = played("listen");
        assertThat(details(recording, Kind.SOLENOID_CLICKS, 50))
                .hasSize(8)
                .contains("recirculation-solenoid", "lock-up-solenoid")
                .doesNotContain("purge-solenoid");
        assertThat(recording.expectation().orElseThrow().findings().get(0).silentSolenoids())
                .containsExactly("purge-solenoid");
    }

    @Test
    void over_the_cobbles_only_the_loose_connector_lights_the_lamp() {
        Recording recording = played("over-the-cobbles");
        assertThat(recording.truth().groups().stream()
                        .filter(group -> group.kind() == GroupKind.STEADY)
                        .skip(1)
                        .map(group -> group.startNanos() / 1e9))
                .isNotEmpty()
                .allMatch(seconds -> seconds >= 100 && seconds < 105);
    }

    @Test
    void at_the_wrong_moment_a_code_that_was_stored_is_lost_unread() {
        Recording recording = played("the-wrong-moment");
        assertThat(details(recording, Kind.STORED_ERASED, 0)).containsExactly("interrupted");
        assertThat(recording.expectation().orElseThrow().findings())
                .anyMatch(finding -> finding.codes().containsValue(List.of("61")));
        assertThat(recording.truth().codes().toString()).doesNotContain("61");
    }

    @Test
    void on_the_weak_battery_the_starter_does_not_turn_and_the_lamp_is_dim_and_slow() {
        assertThat(details(played("dim-and-slow"), Kind.DOES_NOT_START, 0)).containsExactly("battery");
        double volts = ((Content.Caused) STORIES.get("dim-and-slow").content())
                .setup()
                .conditions()
                .battery()
                .volts();
        FilamentLamp weak = FilamentLamp.of(Bulb.panel(), volts);
        FilamentLamp charged = FilamentLamp.of(Bulb.panel(), 12.6);
        // Light goes with about the 3.4th power of the volts: (8.7 / 12.6)^3.4 is 0.28.
        assertThat(weak.steadyLight()).isLessThan(0.4 * charged.steadyLight());
        Recording recording = played("dim-and-slow");
        assertThat(weak.visible(recording.lamp()).edgeNanos(0))
                .isGreaterThan(charged.visible(recording.lamp()).edgeNanos(0));
    }

    @Test
    void without_a_dash_lamp_test_light_and_meter_show_what_the_wire_says() {
        for (String id : List.of("no-lamp", "by-the-needle")) {
            assertThat(played(id).lamp().edgeCount()).isGreaterThan(20);
        }
    }

    @Test
    void it_will_not_turn_in_gear() {
        assertThat(details(played("it-will-not-turn"), Kind.STARTER_BLOCKED, 0)).containsExactly("drive engaged");
    }

    @Test
    void the_same_story_played_twice_is_the_same_recording() {
        STORIES.values().forEach(story -> {
            Simulation simulation = new Simulation(story);
            assertThat(simulation.run(7)).isEqualTo(simulation.run(7)).isEqualTo(Simulation.run(story, 7));
        });
    }
}
