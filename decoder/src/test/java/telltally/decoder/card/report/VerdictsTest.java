package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;

class VerdictsTest {
    @Test
    void every_flaw_and_every_floor_that_does_not_hold_is_told_with_its_set() {
        ScoreCard card = HandMade.card(
                HandMade.held(HandMade.calm(), HandMade.HIGH_FLOORS),
                HandMade.flawed(HandMade.storm(), "block 1 is not what its digest says"));
        assertThat(Verdicts.shortfalls(card))
                .containsExactly(
                        "calm, lamp: 1818 of 1850 lists right; the floor is 0.99",
                        "calm, lamp: 39 invented codes; at most 38 are let pass",
                        "storm: block 1 is not what its digest says");
    }

    @Test
    void a_shard_is_not_held_to_floors_but_its_flaws_are_told() {
        ScoreCard shard = HandMade.card(
                new Part(2, List.of(1)),
                HandMade.held(HandMade.calm(), HandMade.HIGH_FLOORS),
                HandMade.flawed(HandMade.storm(), "seed 7 could not be run"));
        assertThat(Verdicts.shortfalls(shard)).containsExactly("storm: seed 7 could not be run");
        assertThat(Verdicts.inOneLine(shard)).isEqualTo("Floors are judged when all shards are merged.");
    }

    @Test
    void a_card_says_whether_it_had_floors_to_hold() {
        assertThat(Verdicts.inOneLine(
                        HandMade.card(HandMade.storm(), HandMade.held(HandMade.calm(), HandMade.LOW_FLOORS))))
                .isEqualTo("Holds every floor.");
        assertThat(Verdicts.inOneLine(HandMade.card(HandMade.storm(), HandMade.calm())))
                .startsWith("No floors to hold");
    }
}
