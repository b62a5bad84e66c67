package telltally.simulator.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.BenchSetup;
import telltally.simulator.selftest.FaultCase;
import telltally.simulator.selftest.OperatorAct;
import telltally.simulator.selftest.Presence;
import telltally.simulator.vehicle.Cylinder;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Place;
import telltally.simulator.vehicle.Transmission;

class CauseReaderTest {
    private static final String GOOD = """
            {
              "schema": "telltally/scenario/1",
              "id": "yard-van",
              "title": "The yard van",
              "briefing": ["It coughs."],
              "task": "Count.",
              "format": "pair-even",
              "code_list": "yard",
              "vehicle": {"cylinders": 4, "transmission": "manual"},
              "conditions": {"coolant_c": 20},
              "faults": [
                {"circuit": "coolant", "fault": "open"}
              ],
              "acts": [
                {"at_s": 1, "act": "key-on"},
                {"at_s": 9.5, "act": "wait"}
              ]
            }
            """;

    private static final String VEHICLE = "{\"cylinders\": 4, \"transmission\": \"manual\"}";
    private static final String FAULT = "{\"circuit\": \"coolant\", \"fault\": \"open\"}";
    private static final String ACT = "{\"at_s\": 1, \"act\": \"key-on\"}";

    private static CodeList list(String id, String code, String condition) {
        return new CodeList(
                id,
                "Yard",
                "",
                Map.of(code, "open"),
                List.of(new CodeList.Rule(code, condition, List.of(Segment.PRESENT))));
    }

    private static final ScenarioReader READER = new ScenarioReader(
            FormatCatalog.shipped(),
            CodeListCatalog.of(List.of(
                    list("yard", "41", "coolant-voltage-high"),
                    list("long", "4123", "coolant-voltage-high"),
                    list("slip", "41", "coolent-voltage-high"),
                    new CodeList("bare", "Bare", "", Map.of("41", "open")))));

    private static BenchSetup setup(String text) throws ProblemException {
        return ((Content.Caused) read(text).content()).setup();
    }

    private static Scenario read(String text) throws ProblemException {
        return READER.read(new TextFile("lesson.json", text), Optional.empty());
    }

    private static List<String> problems(String text) {
        ProblemException thrown = catchThrowableOfType(ProblemException.class, () -> read(text));
        return thrown.problems().stream().map(Problem::toString).toList();
    }

    /** A good lesson with one part of it replaced, and the lines that this must give. */
    private record BadFile(String name, String text, List<String> lines) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static BadFile bad(String name, String part, String replacement, String... lines) {
        assertThat(GOOD).contains(part);
        return new BadFile(
                name,
                GOOD.replace(part, replacement),
                Stream.of(lines).map(line -> "lesson.json:" + line).toList());
    }

    static Stream<BadFile> badFiles() {
        return Stream.of(wholeBadFiles(), vehicleBadFiles(), conditionBadFiles(), faultBadFiles(), actBadFiles())
                .flatMap(each -> each);
    }

    private static Stream<BadFile> wholeBadFiles() {
        return Stream.of(
                bad(
                        "no code list",
                        "\"code_list\": \"yard\",",
                        "",
                        "1:1: /code_list: is missing; with a vehicle it says which condition sets which code"),
                bad(
                        "a code list without conditions",
                        "\"yard\"",
                        "\"bare\"",
                        "8:16: /code_list: no code of bare says by what it is set"),
                bad(
                        "a condition that no vehicle has",
                        "\"yard\"",
                        "\"slip\"",
                        "8:16: /code_list: slip has the condition coolent-voltage-high, which no vehicle can detect"),
                bad(
                        "codes that the format cannot send",
                        "\"yard\"",
                        "\"long\"",
                        "8:16: /code_list: the format pair-even cannot send its code 4123: has 4 digits; this format sends 2"),
                bad("a vehicle that is none", VEHICLE, "4", "9:14: /vehicle: is a number; expected an object"),
                bad(
                        "codes as well",
                        "\"conditions\"",
                        "\"codes\": {\"present\": []}, \"conditions\"",
                        "10:3: /codes: is not known here; expected one of schema, id, title, briefing, task, format,"
                                + " code_list, prompt, shown_by, loops, vehicle, conditions, faults, acts, channel"),
                bad(
                        "loops",
                        "\"conditions\"",
                        "\"loops\": 2, \"conditions\"",
                        "10:12: /loops: has no meaning here; with a vehicle the list loops until the key is off"),
                new BadFile(
                        "a prompt where there is no running test",
                        GOOD.replace("pair-even", "pair-loop")
                                .replace("\"conditions\"", "\"prompt\": true, \"conditions\""),
                        List.of("lesson.json:10:13: /prompt: has no meaning here; only a running test prompts")));
    }

    private static Stream<BadFile> vehicleBadFiles() {
        return Stream.of(
                bad(
                        "an empty vehicle",
                        VEHICLE,
                        "{}",
                        "9:14: /vehicle/cylinders: is missing; expected a whole number",
                        "9:14: /vehicle/transmission: is missing; expected a text"),
                bad(
                        "an odd number of cylinders",
                        "\"cylinders\": 4",
                        "\"cylinders\": 5",
                        "9:28: /vehicle/cylinders: is odd; the running test opens with half the number of cylinders"),
                bad(
                        "too many cylinders",
                        "\"cylinders\": 4",
                        "\"cylinders\": 14",
                        "9:28: /vehicle/cylinders: is 14; expected a whole number from 2 to 12"),
                bad(
                        "another transmission",
                        "\"manual\"",
                        "\"belt\"",
                        "9:47: /vehicle/transmission: is \"belt\"; expected \"manual\" or \"automatic\""),
                bad(
                        "a firing order with a cylinder twice",
                        "\"manual\"}",
                        "\"manual\", \"firing_order\": [1, 2, 2, 4]}",
                        "9:73: /vehicle/firing_order: expected each cylinder from 1 to 4 once"),
                bad(
                        "a firing order of fractions",
                        "\"manual\"}",
                        "\"manual\", \"firing_order\": [1.5, 2, 3, 4]}",
                        "9:73: /vehicle/firing_order: expected each cylinder from 1 to 4 once"),
                bad(
                        "a weak cylinder that is not there",
                        "\"manual\"}",
                        "\"manual\", \"weak\": [{\"cylinder\": 5, \"strength\": 1, \"cause\": \"none\"}]}",
                        "9:79: /vehicle/weak/0/cylinder: is 5; expected a whole number from 1 to 4",
                        "9:94: /vehicle/weak/0/strength: is 1; expected a number from 0 to 0.99",
                        "9:106: /vehicle/weak/0/cause: is \"none\"; expected \"spark\" or \"fuel\" or \"compression\""));
    }

    private static Stream<BadFile> conditionBadFiles() {
        return Stream.of(
                bad(
                        "hotter than an engine gets",
                        "\"coolant_c\": 20",
                        "\"coolant_c\": 131",
                        "10:31: /conditions/coolant_c: is 131; expected a number from -40 to 130"),
                bad(
                        "park in a manual gearbox",
                        "\"coolant_c\": 20",
                        "\"gear\": \"park\"",
                        "10:17: /conditions: a manual gearbox has no park; expected gear \"neutral\" or \"engaged\""),
                new BadFile(
                        "a clutch in an automatic",
                        GOOD.replace("\"manual\"", "\"automatic\"")
                                .replace("\"coolant_c\": 20", "\"clutch_down\": true"),
                        List.of(
                                "lesson.json:10:17: /conditions: an automatic gearbox has no clutch pedal to hold down")),
                bad(
                        "a mistyped condition",
                        "\"coolant_c\"",
                        "\"coolant\"",
                        "10:18: /conditions/coolant: is not known here; expected one of battery_v, battery_disconnected,"
                                + " gear, coolant_c, air_c, clutch_down, air_conditioning, throttle"));
    }

    private static Stream<BadFile> faultBadFiles() {
        return Stream.of(
                bad(
                        "a circuit that is not there",
                        "\"coolant\", \"fault\"",
                        "\"lock-up-solenoid\", \"fault\"",
                        "12:17: /faults/0/circuit: no circuit is called \"lock-up-solenoid\"; expected one of supply,"
                                + " coolant, air, throttle, neutral-switch, clutch-switch, air-conditioning,"
                                + " recirculation-solenoid, purge-solenoid, air-diverter-solenoid, idle-air-solenoid"),
                bad(
                        "an empty fault",
                        FAULT,
                        "{}",
                        "12:5: /faults/0/circuit: is missing; expected a text",
                        "12:5: /faults/0/fault: is missing; expected a text"),
                bad(
                        "a fault that this circuit cannot have",
                        "\"open\"}",
                        "\"stuck-open\"}",
                        "12:37: /faults/0/fault: the circuit coolant cannot have this fault at this place"),
                bad(
                        "a place that this circuit does not have",
                        "\"open\"}",
                        "\"open\", \"place\": \"reference-wire\"}",
                        "12:37: /faults/0/fault: the circuit coolant cannot have this fault at this place"),
                bad(
                        "ohms missing",
                        "\"open\"}",
                        "\"high-resistance\"}",
                        "12:5: /faults/0/ohms: is missing; expected a number"),
                bad(
                        "ohms where they have no meaning",
                        "\"open\"}",
                        "\"open\", \"ohms\": 3}",
                        "12:45: /faults/0/ohms: is not known here; expected one of circuit, fault, place, when"),
                bad(
                        "a loose connector that is not there",
                        "\"open\"}",
                        "\"open\", \"when\": \"wiggled\", \"connector\": \"coolant\"}",
                        "12:77: /faults/0/connector: no connector is called \"coolant\"; expected one of battery-lead,"
                                + " coolant-sensor, air-sensor, throttle-sensor, neutral-switch, clutch-switch,"
                                + " air-conditioning-switch, recirculation-solenoid, purge-solenoid,"
                                + " air-diverter-solenoid, idle-air-solenoid"),
                bad(
                        "a recurring fault that never goes",
                        "\"open\"}",
                        "\"open\", \"when\": \"recurring\", \"period_s\": 2, \"length_s\": 2}",
                        "12:93: /faults/0/length_s: is not shorter than \"period_s\"; the fault would never go"),
                bad(
                        "a recurring fault too short to see",
                        "\"open\"}",
                        "\"open\", \"when\": \"recurring\", \"period_s\": 2, \"length_s\": 0.01}",
                        "12:93: /faults/0/length_s: is 0.01; expected seconds from 0.1 to 3600.0"));
    }

    private static Stream<BadFile> actBadFiles() {
        return Stream.of(
                bad(
                        "no acts",
                        "[\n    {\"at_s\": 1, \"act\": \"key-on\"},\n    {\"at_s\": 9.5, \"act\": \"wait\"}\n  ]",
                        "[]",
                        "14:11: /acts: is empty; expected what is done to the vehicle, in the order of time"),
                bad(
                        "acts that are not in the order of time",
                        "9.5",
                        "0.5",
                        "16:14: /acts/1/at_s: is before the act above it at 1.0; acts stand in the order of time"),
                bad(
                        "an act without an instant",
                        "\"at_s\": 1, ",
                        "",
                        "15:5: /acts/0/at_s: is missing; expected a number of seconds"),
                bad(
                        "an act at the very start",
                        "\"at_s\": 1,",
                        "\"at_s\": 0,",
                        "15:14: /acts/0/at_s: is 0; expected seconds from 0.000000001 to 3600.0"),
                bad(
                        "an act that is none",
                        "\"key-on\"",
                        "\"kick\"",
                        "15:24: /acts/0/act: is \"kick\"; expected \"jumper-in\" or \"jumper-out\" or \"key-on\" or"
                                + " \"key-off\" or \"crank\" or \"throttle\" or \"clutch\" or \"gear\" or"
                                + " \"air-conditioning\" or \"wiggle\" or \"battery-off\" or \"wait\""),
                bad(
                        "a throttle that goes nowhere",
                        "\"key-on\"",
                        "\"throttle\"",
                        "15:5: /acts/0/to: is missing; expected a text"),
                bad(
                        "park in a manual gearbox",
                        "\"key-on\"",
                        "\"gear\", \"gear\": \"park\"",
                        "15:24: /acts/0/act: this vehicle's transmission offers no such act"),
                bad(
                        "a wiggle without a connector",
                        "\"key-on\"",
                        "\"wiggle\", \"for_s\": 0",
                        "15:5: /acts/0/connector: is missing; expected a text",
                        "15:43: /acts/0/for_s: is 0; expected seconds from 0.000000001 to 3600.0"),
                bad(
                        "a field of another act",
                        ACT,
                        "{\"at_s\": 1, \"act\": \"key-on\", \"down\": true}",
                        "15:34: /acts/0/down: is not known here; expected one of at_s, act"));
    }

    @ParameterizedTest
    @MethodSource("badFiles")
    void each_rule_is_told_with_place_field_and_what_was_expected(BadFile file) {
        assertThat(problems(file.text())).containsExactlyElementsOf(file.lines());
    }

    @Test
    void all_problems_are_told_in_one_run() {
        assertThat(problems(GOOD.replace("\"manual\"", "\"belt\"")
                        .replace("\"coolant_c\": 20", "\"coolant_c\": \"x\"")
                        .replace("\"open\"", "\"opened\"")
                        .replace("\"key-on\"", "\"kick\"")))
                .hasSize(4);
    }

    @Test
    void a_good_story_is_read_whole() throws ProblemException {
        Scenario scenario = read(GOOD.replace(
                        "\"manual\"",
                        "\"automatic\", \"weak\": [{\"cylinder\": 3, \"strength\": 0.4,"
                                + " \"cause\": \"compression\"}], \"firing_order\": [1, 2, 4, 3]")
                .replace("\"coolant_c\": 20", "\"coolant_c\": 20, \"battery_disconnected\": true, \"gear\": \"park\"")
                .replace("\"key-on\"", "\"throttle\", \"to\": \"half\""));
        Content.Caused caused = (Content.Caused) scenario.content();
        BenchSetup setup = caused.setup();
        assertThat(setup.vehicle().transmission()).isEqualTo(Transmission.AUTOMATIC);
        assertThat(setup.vehicle().cylinders().byNumber().get(2))
                .isEqualTo(new Cylinder(0.4, Cylinder.Weakness.COMPRESSION));
        assertThat(setup.vehicle().cylinders().firingOrder()).containsExactly(1, 2, 4, 3);
        assertThat(setup.conditions().coolantCelsius()).isEqualTo(20);
        assertThat(setup.conditions().gear()).isEqualTo(Gear.PARK);
        assertThat(setup.conditions().battery().disconnectedSinceDrive()).isTrue();
        assertThat(setup.faults())
                .containsExactly(new FaultCase("coolant", new Fault.Open(Place.PART), new Presence.Hard()));
        assertThat(caused.acts())
                .containsExactly(new OperatorAct.Throttle(1_000_000_000L, 0.5), new OperatorAct.Wait(9_500_000_000L));
    }

    @Test
    void a_dead_dash_lamp_is_dark_unless_something_else_shows_the_output() throws ProblemException {
        String dead = GOOD.replace("\"manual\"", "\"manual\", \"dash_lamp_works\": false");
        assertThat(setup(GOOD).lampVisible()).isTrue();
        assertThat(setup(dead).lampVisible()).isFalse();
        for (String instead : List.of("test-light", "meter")) {
            assertThat(setup(dead.replace("\"vehicle\"", "\"shown_by\": \"" + instead + "\", \"vehicle\""))
                            .lampVisible())
                    .isTrue();
        }
    }
}
