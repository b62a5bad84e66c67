package telltally.simulator.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PulseTrainTest {
    /** Two flashes of half a second: dark, lit 1.0 to 1.5, dark, lit 2.0 to 2.5, dark to 7.0. */
    private static final PulseTrain TWO_FLASHES =
            PulseTrain.of(false, 7_000_000_000L, 1_000_000_000L, 1_500_000_000L, 2_000_000_000L, 2_500_000_000L);

    @Nested
    class Levels {
        @Test
        void an_edge_belongs_to_the_level_that_begins_with_it() {
            assertThat(TWO_FLASHES.litAt(999_999_999L)).isFalse();
            assertThat(TWO_FLASHES.litAt(1_000_000_000L)).isTrue();
            assertThat(TWO_FLASHES.litAt(1_499_999_999L)).isTrue();
            assertThat(TWO_FLASHES.litAt(1_500_000_000L)).isFalse();
        }

        @Test
        void outside_the_train_the_first_and_the_last_level_hold() {
            PulseTrain train = PulseTrain.of(true, 10, 4);

            assertThat(train.litAt(-1)).isTrue();
            assertThat(train.litAt(10)).isFalse();
            assertThat(train.litAt(Long.MAX_VALUE)).isFalse();
            assertThat(train.litAtEnd()).isFalse();
        }

        @Test
        void lit_time_counts_within_the_window_only() {
            assertThat(TWO_FLASHES.litNanosBetween(0, 7_000_000_000L)).isEqualTo(1_000_000_000L);
            assertThat(TWO_FLASHES.litNanosBetween(1_250_000_000L, 2_100_000_000L))
                    .isEqualTo(350_000_000L);
            assertThat(TWO_FLASHES.litNanosBetween(1_500_000_000L, 2_000_000_000L))
                    .isZero();
            assertThat(TWO_FLASHES.litNanosBetween(3, 2)).isZero();
        }

        @Test
        void what_lies_outside_the_train_counts_as_dark() {
            PulseTrain lit = PulseTrain.of(true, 10);

            assertThat(lit.litNanosBetween(-5, 5)).isEqualTo(5);
            assertThat(lit.litNanosBetween(5, 50)).isEqualTo(5);
            assertThat(lit.litNanosBetween(20, 50)).isZero();
        }
    }

    @Nested
    class Intervals {
        @Test
        void are_the_flashes_and_gaps_in_order() {
            assertThat(PulseTrain.of(true, 10, 4, 7).intervals())
                    .containsExactly(new Interval(true, 0, 4), new Interval(false, 4, 7), new Interval(true, 7, 10));
        }

        @Test
        void are_a_single_one_where_nothing_changes() {
            assertThat(PulseTrain.of(false, 10).intervals()).containsExactly(new Interval(false, 0, 10));
        }

        @Test
        void end_with_the_train() {
            assertThatExceptionOfType(IndexOutOfBoundsException.class)
                    .isThrownBy(() -> PulseTrain.of(false, 10).intervals().get(1));
        }

        @Test
        void need_a_length() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Interval(true, 5, 5))
                    .withMessage("an interval needs a length: 5 to 5 ns");
        }
    }

    @Nested
    class Refused {
        @Test
        void are_edges_at_the_start_or_out_of_order() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PulseTrain.of(false, 10, 0))
                    .withMessage("edges must increase from 0: 0 ns after 0 ns");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PulseTrain.of(false, 10, 5, 5))
                    .withMessage("edges must increase from 0: 5 ns after 5 ns");
        }

        @Test
        void is_an_end_that_is_not_after_the_last_edge() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PulseTrain.of(false, 5, 5))
                    .withMessage("the end at 5 ns is not after 5 ns");
            assertThatIllegalArgumentException().isThrownBy(() -> PulseTrain.of(false, 0));
        }
    }

    @Nested
    class Built {
        @Test
        void stretch_by_stretch_with_equal_neighbours_joined() {
            PulseTrain train = PulseTrain.builder()
                    .dark(1)
                    .dark(2)
                    .lit(3)
                    .lit(0)
                    .dark(0)
                    .lit(4)
                    .dark(5)
                    .build();

            assertThat(train).isEqualTo(PulseTrain.of(false, 15, 3, 10));
        }

        @Test
        void a_stretch_of_no_length_does_not_set_the_first_level() {
            assertThat(PulseTrain.builder().lit(0).dark(3).build()).isEqualTo(PulseTrain.of(false, 3));
        }

        @Test
        void with_many_edges() {
            PulseTrain.Builder train = PulseTrain.builder();
            for (int i = 0; i < 1000; i++) {
                train.stay(i % 2 == 0, 7);
            }

            assertThat(train.nowNanos()).isEqualTo(7000);
            assertThat(train.build().edgeCount()).isEqualTo(999);
        }

        @Test
        void only_with_a_length() {
            assertThatIllegalStateException()
                    .isThrownBy(() -> PulseTrain.builder().build());
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PulseTrain.builder().lit(-1));
        }

        @Test
        void only_up_to_what_a_long_holds() {
            PulseTrain.Builder train = PulseTrain.builder().lit(Long.MAX_VALUE);

            assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> train.dark(1));
        }

        @Test
        void once_and_then_further_without_changing_the_first() {
            PulseTrain.Builder builder = PulseTrain.builder().lit(1);
            PulseTrain first = builder.build();
            builder.dark(1);

            assertThat(first).isEqualTo(PulseTrain.of(true, 1));
            assertThat(builder.build()).isEqualTo(PulseTrain.of(true, 2, 1));
        }
    }

    @Test
    void the_edges_handed_in_are_not_the_edges_kept() {
        long[] edges = {1, 2};
        PulseTrain train = PulseTrain.of(false, 3, edges);
        edges[0] = 0;

        assertThat(train.edgeNanos(0)).isEqualTo(1);
    }

    @Test
    void trains_that_differ_in_anything_are_not_equal() {
        PulseTrain train = PulseTrain.of(false, 10, 5);

        assertThat(train)
                .isNotEqualTo(PulseTrain.of(true, 10, 5))
                .isNotEqualTo(PulseTrain.of(false, 11, 5))
                .isNotEqualTo(PulseTrain.of(false, 10, 6))
                .isNotEqualTo(PulseTrain.of(false, 10))
                .isNotEqualTo("dark");
    }

    @Test
    void a_failing_test_shows_instants_in_seconds() {
        assertThat(TWO_FLASHES).hasToString("dark 1.0 1.5 2.0 2.5 end 7.0");
    }
}
