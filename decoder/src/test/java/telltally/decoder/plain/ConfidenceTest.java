package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.GroupKind;

/** Probabilities of groups, as the formula of {@link Confidence} has them. */
class ConfidenceTest {
    private static final double NO_ACCIDENT = 1 - Confidence.ACCIDENT;

    private static List<Double> probabilities(String counts) {
        Reading reading = Trains.read(Trains.even(counts), "pair-even");
        return reading.groups().stream().map(Group::probability).toList();
    }

    /** Nothing but an accident can be wrong where every length is exact: none is near another class. */
    @Test
    void an_exact_group_is_as_sure_as_its_intervals_are_many() {
        List<Double> sure = probabilities("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1");

        // Seven flashes, five gaps within digits, one between them, one after the code; before it begins nothing.
        assertThat(sure.get(0)).isCloseTo(Math.pow(NO_ACCIDENT, 7 + 5 + 1 + 1), within(1e-9));
        assertThat(sure.get(1)).isCloseTo(Math.pow(NO_ACCIDENT, 7 + 5 + 1 + 2), within(1e-9));
        // The separator: one flash and the gaps around it.
        assertThat(sure.get(2)).isCloseTo(Math.pow(NO_ACCIDENT, 1 + 2), within(1e-9));
        // Two flashes, the gap between them, the one before; after the last code comes nothing.
        assertThat(sure.get(4)).isCloseTo(Math.pow(NO_ACCIDENT, 2 + 1 + 1), within(1e-9));
    }

    /** Half way between 2 s and 4 s, as a ratio: as likely the one as the other. */
    @Test
    void a_gap_between_two_kinds_is_as_sure_as_its_likelihoods_are_apart() {
        List<Double> sure = probabilities("3 (2.828) 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1");

        assertThat(sure.get(0)).isBetween(0.4, 0.6);
        assertThat(sure.get(1)).isGreaterThan(0.99);
    }

    @Test
    void whatever_cannot_be_read_is_not_sure_at_all() {
        Reading reading = Trains.read(Trains.even("3 / 4 (4) 2 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), "pair-even");

        assertThat(reading.groups().get(1).kind()).isEqualTo(GroupKind.UNREADABLE);
        assertThat(reading.groups().get(1).probability()).isZero();
    }

    /** Four fifths at most; what was seen without the flash that nobody saw shares the rest with all else. */
    @Test
    void where_a_flash_was_put_in_nobody_is_surer_than_four_fifths() {
        Reading reading = Trains.read(Trains.even("1 (1.5) 1 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), "pair-even");
        Group first = reading.groups().get(0);

        assertThat(first.digits()).isEqualTo("34");
        assertThat(first.probability()).isBetween(0.7, 0.8);
        assertThat(first.alternatives()).hasSize(1);
        assertThat(first.alternatives().get(0).digits()).isEqualTo("24");
        assertThat(first.alternatives().get(0).probability()).isCloseTo((1 - first.probability()) / 2, within(1e-9));
    }

    /** No length tells a lead-in from another light; it and the gap after it are left, none before the first. */
    @Test
    void a_steady_light_can_be_wrong_by_accident_only() {
        String code = "2.5 2.5 0.5 2.5 0.5 0.5 0.5 2.5 0.5 2.5 0.5 2.5 ";
        Reading reading = Trains.read(Trains.of("1 " + code.repeat(2)), "quad-lead");

        assertThat(reading.groups().get(0).kind()).isEqualTo(GroupKind.STEADY);
        assertThat(reading.groups().get(0).probability()).isCloseTo(Math.pow(NO_ACCIDENT, 2), within(1e-9));
    }
}
