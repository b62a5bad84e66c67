package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.simulator.format.FormatCatalog;

class DensitiesTest {
    private static final Channel CHANNEL = new Channel(1.25, 0.05, 0.04, 0.02, 0.125, 0.01);

    private final Automaton automaton =
            new FormatModel(FormatCatalog.shipped().find("pair-even").orElseThrow()).grammar.automaton;
    private final Densities densities = new Densities(automaton);

    private static double law(double seconds, double mean, double deviation) {
        double z = (seconds - mean) / deviation;
        double near = Noise.density(z) / deviation;
        return near + (seconds > 0.67 * mean && seconds < 1.33 * mean ? 1e-3 / mean : 0);
    }

    @Test
    void gaps_that_reach_the_length_seen_have_the_density_of_their_law_and_others_none() {
        for (Channel channel : List.of(CHANNEL, new Channel(0.9, -0.01, 0.1, 0.05, 0.01, 0.01))) {
            densities.through(channel);
            assertThat(densities.gap).containsOnly(0);
            for (double seconds = 0.01; seconds < 30; seconds *= 1.03) {
                densities.lookAtGap(seconds);
                int from = 0;
                while (from < automaton.fixedGaps && longest(automaton.gaps[from], channel) <= seconds) {
                    from++;
                }
                int to = from;
                while (to < automaton.fixedGaps && shortest(automaton.gaps[to], channel) < seconds) {
                    to++;
                }
                assertThat(densities.gapFrom).isEqualTo(from);
                assertThat(densities.gapTo).isEqualTo(to);
                for (int i = 0; i < automaton.gaps.length; i++) {
                    double expected = i < automaton.fixedGaps && (i < from || i >= to)
                            ? 0
                            : density(automaton.gaps[i], seconds, channel);
                    assertThat(densities.gap[i])
                            .as(automaton.gaps[i] + " " + seconds)
                            .isCloseTo(expected, within(1e-12 + 1e-9 * expected));
                }
            }
        }
    }

    private static double density(Gap gap, double seconds, Channel channel) {
        if (gap.kind() == GapKind.BROAD) {
            boolean fits = seconds >= gap.seconds() && seconds <= gap.mostSeconds();
            return fits ? 1 / (seconds * Math.log(gap.mostSeconds() / gap.seconds())) : 0;
        }
        double mean = gap.seconds() * channel.scale() - channel.biasSeconds();
        return gap.kind() == GapKind.FIXED ? law(seconds, mean, channel.deviation(gap.squares())) : 0;
    }

    private static double longest(Gap gap, Channel channel) {
        double mean = gap.seconds() * channel.scale() - channel.biasSeconds();
        return Math.max(mean + 9 * channel.deviation(gap.squares()), 1.33 * mean);
    }

    private static double shortest(Gap gap, Channel channel) {
        double mean = gap.seconds() * channel.scale() - channel.biasSeconds();
        return Math.min(mean - 9 * channel.deviation(gap.squares()), 0.67 * mean);
    }

    @Test
    void a_gap_cut_by_the_brink_is_longer_than_what_was_seen_of_it() {
        densities.through(CHANNEL);
        for (int i = 0; i < automaton.gaps.length; i++) {
            Gap gap = automaton.gaps[i];
            if (gap.kind() == GapKind.TAIL_CUT) {
                double mean = gap.seconds() * 1.25 - 0.05;
                double deviation = CHANNEL.deviation(gap.squares());
                assertThat(densities.gapBeyond(i, mean + deviation)).isCloseTo(Noise.beyond(1), within(1e-9));
            }
        }
    }

    @Test
    void an_edge_weighs_less_with_each_flash_that_it_leaves_unseen() {
        densities.through(CHANNEL);
        for (int edge = 0; edge < densities.edge.length; edge++) {
            assertThat(densities.edge[edge])
                    .isEqualTo(automaton.edgeWeight[edge] * Math.pow(0.125, automaton.edgeMissed[edge]));
        }
    }

    @Test
    void a_light_has_the_density_of_its_law_and_that_it_was_seen() {
        LightDensities lights = new LightDensities(List.of(new Light(0.4, 0), new Light(0, 0)));
        lights.through(CHANNEL);
        // 0.4 s at a clock of 1.25 and a bias of 0.05 s are 0.55 s.
        double deviation = Math.sqrt(0.05 * 0.05 * 0.16 + 0.02 * 0.02);
        for (double seconds : new double[] {0.3, 0.5, 0.55, 0.6, 0.7, 0.8}) {
            lights.lookAt(seconds, false);
            assertThat(lights.density[0]).isCloseTo(0.875 * law(seconds, 0.55, deviation), within(1e-9));
            assertThat(lights.density[1]).isZero();
            double longer = 0.875 * Noise.beyond((seconds - 0.55) / deviation);
            assertThat(lights.of(0, seconds, true)).isCloseTo(longer, within(1e-9));
            lights.lookAt(seconds, true);
            assertThat(lights.density[0]).isCloseTo(longer, within(1e-9));
        }
    }

    /** Evenly likely on a logarithmic scale from 0.2 microseconds to 0.2 s times the same: over a range of 13.8. */
    @Test
    void steady_light_is_of_any_length_within_its_bounds() {
        LightDensities lights = new LightDensities(List.of(new Light(1.2, 8), new Light(1e-3, 1e6), new Light(1, 100)));
        lights.through(CHANNEL);
        assertThat(lights.of(0, 1.2, false)).isCloseTo(0.875 * 7 / (1.2 * 13.8), within(1e-12));
        assertThat(lights.of(0, 8, false)).isCloseTo(0.875 * 7 / (8 * 13.8), within(1e-12));
        assertThat(lights.of(0, 8.01, false)).isZero();
        assertThat(lights.of(0, 1.19, false)).isZero();
        // What the brink cuts may have been longer, but was no shorter.
        assertThat(lights.of(0, 0.5, true)).isCloseTo(0.875 * 7 / (0.5 * 13.8), within(1e-12));
        assertThat(lights.of(0, 8.01, true)).isZero();
        // Beside a bulb check nothing is as usual.
        assertThat(lights.of(1, 2, false)).isCloseTo(0.875 / (2 * 13.8), within(1e-12));
        assertThat(lights.of(2, 2, false)).isCloseTo(0.875 / (2 * 13.8), within(1e-12));
    }
}
