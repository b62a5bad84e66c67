package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TallyTest {
    @ParameterizedTest
    @CsvSource({
        // The four cases of Newcombe 1998, Statistics in Medicine 17:857-872, to the four places printed there.
        "81, 263, 0.2553, 0.3662, 0.00005",
        "15, 148, 0.0624, 0.1605, 0.00005",
        "0, 20, 0, 0.1611, 0.00005",
        "1, 29, 0.0061, 0.1718, 0.00005",
        // R package binom, as stored in statsmodels results_proportion.py at 1a63aa7.
        "18, 20, 0.6989663548, 0.9721335188, 1e-9",
        "4, 20, 0.0806576626, 0.4160174323, 1e-9",
        "4, 200, 0.0078044264, 0.0502870869, 1e-9",
        "190, 200, 0.9104218519, 0.9726173544, 1e-9",
        "0, 30, 0, 0.11351339, 1e-8",
        "30, 30, 0.8864866, 1, 1e-7",
    })
    void wilsons_bounds_are_the_published_ones(int right, int asked, double low, double high, double places) {
        Bounds bounds = new Tally(right, asked).bounds();
        assertThat(bounds.low()).isCloseTo(low, within(places));
        assertThat(bounds.high()).isCloseTo(high, within(places));
    }

    @Test
    void a_narrower_confidence_gives_narrower_bounds() {
        // 4 of 20 at 90 %: computed with statsmodels 0.15.
        Bounds bounds = new Tally(4, 20).wilson(1.6448536269514722);
        assertThat(bounds.low()).isCloseTo(0.0931, within(0.00005));
        assertThat(bounds.high()).isCloseTo(0.3784, within(0.00005));
    }

    @Test
    void nothing_asked_says_nothing() {
        assertThat(Tally.NONE.bounds()).isEqualTo(new Bounds(0, 1));
    }

    @Test
    void more_right_than_asked_is_refused() {
        assertThatThrownBy(() -> new Tally(3, 2)).hasMessage("3 right of 2");
    }

    @Property(tries = 200)
    void the_bounds_hold_the_share_and_rise_with_it(
            @ForAll @IntRange(min = 1, max = 500) int asked, @ForAll @IntRange(max = 499) int few) {
        Tally tally = new Tally(few % asked, asked);
        Tally better = new Tally(tally.right() + 1, asked);
        assertThat(tally.share()).isBetween(tally.bounds().low(), tally.bounds().high());
        assertThat(better.bounds().low()).isGreaterThan(tally.bounds().low());
        assertThat(better.bounds().high()).isGreaterThanOrEqualTo(tally.bounds().high());
    }
}
