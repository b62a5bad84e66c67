package telltally.decoder.card;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.score.InProcess;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Writer, reader and schema are held to the same cards. */
class CardSchemaTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(
                    new ResourceFolder("telltally/scenarios/schemas")
                            .read().stream()
                                    .filter(file -> file.name().equals("scorecard.schema.json"))
                                    .findFirst()
                                    .orElseThrow()
                                    .text(),
                    InputFormat.JSON);

    private static ScoreCard read(String text) throws ProblemException {
        return CardReader.read(new TextFile("card.json", text));
    }

    private static List<ScoreCard> samples() throws ProblemException {
        return List.of(
                SmallCard.whole(),
                Cards.forgetful(),
                Cards.forgetful(new Part(3, List.of(2)), 2),
                Cards.run(Cards.order(Part.WHOLE, 2), new InProcess("brittle", Cards.Brittle::new)));
    }

    @Test
    void what_is_written_is_read_back_and_valid_by_the_schema() throws ProblemException {
        for (ScoreCard card : samples()) {
            String text = CardJson.text(card);
            assertThat(read(text)).isEqualTo(card);
            assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
        }
    }

    @Test
    void the_schema_explains_every_field_that_is_written() throws ProblemException {
        JsonNode schema = JsonMapper.shared().readTree(SCHEMA.toString());
        assertThat(schema).isNotNull();
        String text = CardJson.text(Cards.forgetful());
        // The schema allows no other names, so that a new one fails here until it is explained.
        String more = text.replaceFirst("\"decoder\":", "\"shoe_size\": 44, \"decoder\":");
        assertThat(SCHEMA.validate(more, InputFormat.JSON)).isNotEmpty();
    }
}
