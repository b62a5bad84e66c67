package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.WorstCase;
import telltally.decoder.score.Line;

class WorstFoundTest {
    private static final LineCard LAMP = HandMade.line(Line.LAMP);
    private static final LineCard PIN = HandMade.line(Line.PIN);

    private static SetCard set(String id, WorstCase... lamp) {
        return HandMade.set(id, HandMade.worst(LAMP, lamp));
    }

    private static List<String> names(List<WorstFound> found) {
        return found.stream()
                .map(each -> each.set().title().id() + " " + each.line().key() + " "
                        + each.worst().index())
                .toList();
    }

    @Test
    void a_case_that_is_wrong_on_both_lines_comes_once() {
        ScoreCard card = HandMade.card(HandMade.set(
                "set",
                HandMade.worst(LAMP, HandMade.wrong(1, 5)),
                HandMade.worst(PIN, HandMade.wrong(1, 5), HandMade.wrong(2, 4))));
        assertThat(names(WorstFound.of(card, 9, 9))).containsExactly("set lamp 1", "set pin 2");
    }

    @Test
    void of_a_set_the_worst_are_taken_on_whichever_line_they_are() {
        ScoreCard card = HandMade.card(HandMade.set(
                "set",
                HandMade.worst(LAMP, HandMade.wrong(1, 5), HandMade.wrong(2, 3)),
                HandMade.worst(PIN, HandMade.wrong(3, 9), HandMade.wrong(4, 4))));
        assertThat(names(WorstFound.of(card, 3, 9))).containsExactly("set pin 3", "set lamp 1", "set pin 4");
    }

    @Test
    void among_sets_no_answer_comes_first_then_more_errors_then_the_order_of_the_sets() {
        ScoreCard card = HandMade.card(
                set("a", HandMade.wrong(9, 2)),
                set("b", HandMade.wrong(8, 7), HandMade.wrong(7, 2)),
                set("c", HandMade.failed(6, 1)));
        assertThat(names(WorstFound.of(card, 2, 9))).containsExactly("c lamp 6", "b lamp 8", "a lamp 9", "b lamp 7");
        assertThat(names(WorstFound.of(card, 2, 2))).containsExactly("c lamp 6", "b lamp 8");
    }

    @Test
    void a_random_message_is_named_by_its_seed_and_a_lesson_by_its_name_as_well() {
        ScoreCard card = HandMade.card(set("calm", HandMade.wrong(9, 2)), set("storm", HandMade.failed(6, 1)));
        List<WorstFound> found = WorstFound.of(card, 2, 9);
        assertThat(found.get(1).command(card))
                .isEqualTo("telltally score --decoder mine --set calm --seed 109 --line lamp");
        assertThat(found.get(0).command(card))
                .isEqualTo("telltally score --decoder mine --set storm --seed 106 --lesson 'a lesson' --line lamp");
    }

    @Test
    void the_answer_is_what_was_read_or_why_nothing_was() {
        ScoreCard card = HandMade.card(set("calm", HandMade.wrong(9, 2), HandMade.failed(6, 1)));
        List<WorstFound> found = WorstFound.of(card, 2, 9);
        assertThat(found.get(0).answer()).isEqualTo("no answer: out of order");
        assertThat(found.get(1).answer()).isEqualTo("read codes 9");
    }
}
