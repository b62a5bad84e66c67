package telltally.simulator.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.simulator.Simulation;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.scenario.ScenarioReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What stands in the truth of a story beside the codes, as a library that is not ours reads it. */
class StoryTruthJsonTest {
    private static final String STORY = """
            {"schema": "telltally/scenario/1", "id": "yard", "title": "Yard", "briefing": ["It coughs."],
             "task": "Count.", "format": "pair-even", "code_list": "plank",
             "vehicle": {"cylinders": 4, "transmission": "automatic",
              "weak": [{"cylinder": 2, "strength": 0.3, "cause": "compression"}]},
             "conditions": {"battery_v": 8.6},
             "faults": [
              {"circuit": "purge-solenoid", "fault": "high-resistance", "place": "supply-wire", "ohms": 90},
              {"circuit": "neutral-switch", "fault": "stuck-open"},
              {"circuit": "coolant", "fault": "drifted", "kelvin": -60},
              {"circuit": "air", "fault": "short-to-supply", "place": "signal-wire", "when": "wiggled", "connector": "air-sensor"},
              {"circuit": "air", "fault": "short-to-ground", "when": "recurring", "period_s": 3000, "length_s": 1},
              {"circuit": "idle-air-solenoid", "fault": "dead-output"},
              {"circuit": "throttle", "fault": "open", "when": "remembered"}],
             "acts": [{"at_s": 1, "act": "jumper-in"}, {"at_s": 3.5, "act": "key-on"}, {"at_s": 100, "act": "wait"}]}
            """;

    private static JsonNode truth() throws ProblemException {
        Recording recording =
                Simulation.run(ScenarioReader.shipped().read(new TextFile("s.json", STORY), Optional.empty()), 1);
        return JsonMapper.shared().readTree(TruthJson.text(recording));
    }

    @Test
    void what_happened_on_the_bench_is_told_in_order() throws ProblemException {
        JsonNode bench = truth().get("bench");
        assertThat(bench.get(1).toString()).isEqualTo("{\"time_s\":3.5,\"kind\":\"key-on\",\"detail\":\"\"}");
        assertThat(bench.size()).isGreaterThan(5);
    }

    @Test
    void every_fault_is_told_in_the_words_of_the_lesson() throws ProblemException {
        List<String> told = new ArrayList<>();
        truth().get("expected")
                .get("findings")
                .forEach(finding -> told.add(finding.get("circuit").asString() + " "
                        + finding.get("fault").asString() + " "
                        + finding.path("place").asString("-") + " "
                        + finding.get("when").asString()));
        assertThat(told)
                .containsExactly(
                        "purge-solenoid high-resistance supply-wire always",
                        "neutral-switch stuck-open - always",
                        "coolant drifted - always",
                        "air short-to-supply signal-wire wiggled",
                        "air short-to-ground part recurring",
                        "idle-air-solenoid dead-output - always",
                        "throttle open part remembered");
    }

    @Test
    void a_finding_has_its_codes_its_silent_solenoid_and_its_measurements() throws ProblemException {
        JsonNode finding = truth().get("expected").get("findings").get(5);
        assertThat(finding.get("codes").toString()).isEqualTo("{\"stored\":[\"74\"],\"running\":[\"74\"]}");
        assertThat(finding.get("silent_solenoids").toString()).isEqualTo("[\"idle-air-solenoid\"]");
        JsonNode confirmed = finding.get("confirmed_by").get(0);
        assertThat(confirmed.get("measurement").asString()).isEqualTo("volts-connected");
        assertThat(confirmed.get("quantity").asString()).isEqualTo("volts");
        assertThat(confirmed.get("outputs_on").asBoolean()).isTrue();
        assertThat(confirmed.get("reads").asDouble())
                .isGreaterThan(confirmed.get("sound_reads").asDouble());
    }

    @Test
    void a_meter_over_its_range_shows_no_number() throws ProblemException {
        assertThat(truth().get("expected")
                        .get("findings")
                        .get(6)
                        .get("confirmed_by")
                        .toString())
                .contains("\"over range\"");
    }

    @Test
    void weak_cylinders_and_what_comes_of_the_conditions_are_told() throws ProblemException {
        JsonNode expected = truth().get("expected");
        assertThat(expected.get("weak_cylinders").toString()).isEqualTo("[{\"cylinder\":2,\"cause\":\"compression\"}]");
        assertThat(expected.get("from_conditions").toString()).isEqualTo("{\"present\":[\"88\"]}");
    }
}
