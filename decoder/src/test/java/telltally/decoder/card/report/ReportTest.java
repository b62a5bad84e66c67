package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import telltally.decoder.card.Cards;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.compare.Comparison;
import telltally.decoder.card.run.ReadingTimes;
import telltally.decoder.score.CurvePoint;
import telltally.simulator.document.ProblemException;

class ReportTest {
    /** The two sets of the card as two points of one curve. */
    private static ScoreCard withCurve() throws ProblemException {
        ScoreCard card = Cards.forgetful();
        List<SetCard> sets = new ArrayList<>();
        for (SetCard set : card.sets()) {
            SetCard.Title title = set.title();
            CurvePoint place = new CurvePoint("a < b & c", sets.isEmpty() ? 0.06 : 0.02, "share \"of\" it");
            SetCard.Title placed = new SetCard.Title(
                    title.id(),
                    title.why(),
                    Optional.of(place),
                    title.channel(),
                    title.from(),
                    title.seeds(),
                    title.cases(),
                    title.fingerprint());
            sets.add(new SetCard(placed, set.floors(), set.flaws(), set.lines()));
        }
        return new ScoreCard(card.decoder(), card.generator(), List.of("--run", "it's mine"), false, card.part(), sets);
    }

    private static String page() throws ProblemException {
        ScoreCard card = withCurve();
        return CardHtml.text(card, Optional.empty(), Optional.of(Comparison.of(card, Cards.plain())));
    }

    /** HTML need not be XML, but what is XML has no open end. */
    @Test
    void the_page_is_well_formed_and_needs_nothing_beside_it() throws Exception {
        String page = page();
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page)));
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(page)
                .doesNotContain("http")
                .doesNotContain("src=")
                .doesNotContain("@import")
                .doesNotContain("url(");
        assertThat(page).contains("prefers-color-scheme: dark");
    }

    @Test
    void every_drawing_is_told_in_words_and_every_table_says_what_it_holds() throws Exception {
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page())));
        int drawings = document.getElementsByTagName("svg").getLength();
        assertThat(drawings).isEqualTo(3);
        for (int i = 0; i < drawings; i++) {
            assertThat(document.getElementsByTagName("svg")
                            .item(i)
                            .getAttributes()
                            .getNamedItem("aria-label")
                            .getNodeValue())
                    .isNotBlank();
        }
        assertThat(document.getElementsByTagName("caption").getLength())
                .isEqualTo(document.getElementsByTagName("table").getLength())
                .isGreaterThan(7);
    }

    @Test
    void a_curve_runs_by_strength_with_all_three_decoders() throws ProblemException {
        List<Curve> curves = Curve.of(withCurve());
        assertThat(curves).hasSize(2);
        assertThat(curves.get(0).points()).extracting(Curve.Point::strength).isSorted();
        String drawing = CurveSvg.text(curves.get(0));
        assertThat(drawing)
                .contains("class=\"decoder\"")
                .contains("class=\"plain\"")
                .contains("class=\"told\"")
                .contains("a &lt; b &amp; c, lamp")
                .contains(">0.02<");
    }

    @Test
    void the_command_of_a_case_survives_a_shell() throws ProblemException {
        ScoreCard card = withCurve();
        List<WorstFound> worst = WorstFound.of(card, 2, 3);
        assertThat(worst).hasSize(3);
        assertThat(worst.get(0).command(card))
                .startsWith("telltally score --run 'it'\\''s mine' --set messages-c")
                .contains(" --seed ")
                .endsWith("--line lamp");
        assertThat(worst.stream().filter(each -> each.set().equals(card.sets().get(0))))
                .hasSizeBetween(1, 2);
    }

    @Test
    void a_card_without_a_run_has_no_times_and_one_with_a_run_has() throws ProblemException {
        ScoreCard card = Cards.plain();
        assertThat(CardText.text(card, Optional.empty())).doesNotContain("median");
        assertThat(CardText.text(card, Optional.of(new ReadingTimes()))).doesNotContain("median");
        assertThat(CardText.text(card, Optional.empty()))
                .contains("240 sessions of 2 seed sets\n")
                .contains("No floors to hold")
                .doesNotContain("worst");
    }

    @Test
    void columns_stand_under_their_heads() {
        TextTable table = new TextTable(1, "", "n", "share");
        table.row(List.of("lamp", "1,234", "9"));
        table.row(List.of("x", "7", "100.0", "beyond"));
        assertThat(table.text(" ").lines())
                .containsExactly("           n  share", " lamp  1,234      9", " x         7  100.0  beyond");
    }
}
