package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Counts;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.score.CurvePoint;
import telltally.decoder.score.Line;

class CurveTest {
    private static SetCard at(String family, double strength, LineCard... lines) {
        return HandMade.set(family + strength, new CurvePoint(family, strength, "share"), lines);
    }

    private static LineCard line(Line line, long right, long all) {
        return HandMade.line(line, HandMade.format("pair-even", HandMade.counts(right, all)));
    }

    @Test
    void sets_of_a_family_are_points_by_strength_and_lines_are_curves_of_their_own() {
        ScoreCard card = HandMade.card(
                at("jitter", 0.3, line(Line.LAMP, 5, 10), line(Line.PIN, 6, 10)),
                at("fade", 0.2, line(Line.LAMP, 1, 2)),
                at("jitter", 0.1, line(Line.LAMP, 9, 10), line(Line.PIN, 10, 10)),
                HandMade.calm(),
                at("fade", 0.1, line(Line.LAMP, 2, 2)));
        List<Curve> curves = Curve.of(card);
        assertThat(curves)
                .extracting(curve -> curve.family() + " " + curve.line().key())
                .containsExactly("fade lamp", "jitter lamp", "jitter pin");
        assertThat(curves).allMatch(curve -> curve.unit().equals("share"));
        assertThat(curves.get(1).points()).extracting(Curve.Point::strength).containsExactly(0.1, 0.3);
        assertThat(curves.get(1).points())
                .extracting(point -> point.decoder().listsRight())
                .containsExactly(9L, 5L);
        assertThat(curves.get(2).points())
                .extracting(point -> point.decoder().listsRight())
                .containsExactly(10L, 6L);
    }

    @Test
    void one_point_is_no_curve_and_a_set_without_lists_no_point() {
        assertThat(Curve.of(HandMade.card(at("jitter", 0.1, line(Line.LAMP, 1, 2)), HandMade.calm())))
                .isEmpty();
        LineCard nothing = HandMade.line(Line.LAMP, HandMade.format("pair-even", Counts.NOTHING));
        assertThat(Curve.of(HandMade.card(at("jitter", 0.1, line(Line.LAMP, 1, 2)), at("jitter", 0.2, nothing))))
                .isEmpty();
    }
}
