package telltally.trainer.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class TrialCommandTest {
    @Test
    void json_has_learners_phi_and_the_minutes_of_each_order() {
        CommandRun run = CommandRun.of("trial", "--learners", "1", "--seed", "4", "--json");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.get("learners").asInt()).isEqualTo(1);
        assertThat(json.get("phi").asDouble()).isEqualTo(0.3);
        JsonNode minutes = json.get("minutes_to_mastery");
        assertThat(minutes.propertyNames()).containsExactlyInAnyOrder("tutor", "fixed-order", "random");
        minutes.forEach(each -> assertThat(each.asDouble()).isGreaterThan(60));
        JsonNode shown = json.get("minutes_to_shown_mastery");
        assertThat(shown.propertyNames()).isEqualTo(minutes.propertyNames());
        for (String order : minutes.propertyNames()) {
            assertThat(shown.get(order).asDouble())
                    .isGreaterThanOrEqualTo(minutes.get(order).asDouble());
        }
        assertThat(json.get("minutes_to_mastery_interval").get("tutor").size()).isEqualTo(2);
        assertThat(json.get("false_passes_share").get("random").asDouble()).isBetween(0.0, 1.0);
    }

    @Test
    void what_cannot_be_is_refused_in_one_line() {
        assertThat(CommandRun.of("trial", "--learners", "0").status()).isEqualTo(2);
        CommandRun run = CommandRun.of("trial", "--phi", "2");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.errorLines()).hasSize(1).first().asString().contains("--phi: 2.0 is not 0 to 1");
    }
}
