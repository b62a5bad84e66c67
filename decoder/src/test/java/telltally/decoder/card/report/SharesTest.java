package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.card.Counts;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.Tally;
import telltally.decoder.score.Line;

class SharesTest {
    private static final ScoreCard CARD = HandMade.card(HandMade.calm(), HandMade.storm());

    /** The cases of Newcombe 1998, Statistics in Medicine 17:857-872, table I, from memory; ends rounded outwards. */
    @ParameterizedTest
    @CsvSource({
        "81, 263, 30.8, 25.5 to 36.7",
        "15, 148, 10.1, 6.2 to 16.1",
        "0, 20, 0.0, 0.0 to 16.2",
        "1, 29, 3.4, 0.6 to 17.2",
    })
    void shares_and_their_intervals_are_in_percent(long right, long all, String share, String interval) {
        assertThat(Shares.percent(right, all)).isEqualTo(share);
        assertThat(Shares.interval(right, all)).isEqualTo(interval);
    }

    @Test
    void of_nothing_there_is_no_share() {
        assertThat(Shares.percent(0, 0)).isEqualTo("-");
        assertThat(Shares.interval(0, 0)).isEqualTo("-");
        assertThat(Shares.lists(Optional.of(Counts.NOTHING))).isEqualTo("-");
        assertThat(Shares.lists(Optional.empty())).isEqualTo("-");
    }

    @Test
    void figures_stand_in_the_order_of_their_heads() {
        Counts counts = new Counts(1000, 900, 263, 81, 5000, 3000, 1200, 7);
        assertThat(Shares.figures(counts, Optional.of(HandMade.counts(1, 4)), Optional.of(HandMade.counts(3, 4))))
                .containsExactly("1,000", "30.8", "25.5 to 36.7", "25.0", "75.0", "1,200", "800", "7");
    }

    @Test
    void formats_are_summed_over_sets_line_by_line() {
        ScoreCard card = HandMade.card(
                HandMade.set(
                        "one",
                        HandMade.line(Line.LAMP, HandMade.format("b", HandMade.counts(1, 2))),
                        HandMade.line(Line.PIN, HandMade.format("b", HandMade.counts(10, 20)))),
                HandMade.set(
                        "two",
                        HandMade.line(
                                Line.LAMP,
                                HandMade.format("b", HandMade.counts(3, 4)),
                                HandMade.format("a", HandMade.counts(7, 8)))));
        var formats = Shares.byFormat(card);
        assertThat(formats.keySet()).containsExactly("a", "b");
        assertThat(formats.get("b").keySet()).containsExactly(Line.LAMP, Line.PIN);
        assertThat(sessions(formats.get("b").get(Line.LAMP))).containsExactly(4L, 6L);
        assertThat(sessions(formats.get("b").get(Line.PIN))).containsExactly(10L, 20L);
        assertThat(sessions(formats.get("a").get(Line.LAMP))).containsExactly(7L, 8L);
    }

    private static List<Long> sessions(FormatCard card) {
        Counts counts = card.decoder().counts();
        return List.of(counts.sessionsRight(), counts.sessions());
    }

    @Test
    void sets_behind_the_same_impairments_are_summed() {
        ScoreCard card = HandMade.card(
                HandMade.storm(), HandMade.storm(), HandMade.behind(HandMade.storm(), "jitter"), HandMade.calm());
        var channels = Shares.byChannel(card);
        assertThat(channels.keySet()).containsExactly("(none)", "jitter", "jitter + bounce");
        assertThat(sessions(channels.get("jitter + bounce").get(Line.LAMP))).containsExactly(8L, 20L);
        assertThat(sessions(channels.get("jitter").get(Line.LAMP))).containsExactly(4L, 10L);
        assertThat(channels.get("(none)").keySet()).containsExactly(Line.LAMP, Line.PIN);
    }

    @Test
    void everything_is_all_sets_on_both_lines() {
        Tally all = Shares.everything(CARD);
        assertThat(all.counts().sessions()).isEqualTo(1250 + 1200 + 10);
        assertThat(all.calibration().codes()).isEqualTo(1200);
    }
}
