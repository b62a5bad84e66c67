package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;

class AutomatonTest {
    private static final Light SHORT = new Light(0.5, 0);
    private static final Light LONG = new Light(1, 0);
    private static final Gap NEAR = Gap.fixed(0.5);
    private static final Gap FAR = Gap.fixed(2);
    private static final Gap ANY = Gap.broad(0.1, 10);

    /** An edge as it is said. */
    private record Edge(int from, int to, Gap gap, int missed, double weight, List<Step> steps) {}

    @Test
    void an_edge_leads_over_flashes_that_were_not_seen() {
        Automaton.Builder builder = new Automaton.Builder();
        int one = builder.node(SHORT, true);
        int two = builder.node(LONG, true);
        int three = builder.node(SHORT, true);
        step(builder, one, two, NEAR, 0.5);
        step(builder, two, three, FAR, 0.25);
        step(builder, three, Automaton.END, Gap.TAIL, 0.125);
        Automaton automaton = builder.build();
        List<Edge> edges = edges(automaton, one, false);
        assertThat(edges).hasSize(2);
        assertThat(edges.get(0).gap()).isEqualTo(NEAR);
        assertThat(edges.get(1))
                .isEqualTo(new Edge(
                        one,
                        three,
                        // 0.5 s dark, 1 s lit and 2 s dark.
                        new Gap(GapKind.FIXED, 3.5, 0.25 + 1 + 4, 0, 0),
                        1,
                        0.125,
                        List.of(automaton.steps[0], automaton.steps[1])));
        assertThat(edges(automaton, one, true))
                .containsExactly(
                        new Edge(one, Automaton.END, Gap.TAIL, 2, 0.5 * 0.25 * 0.125, List.of(automaton.steps)));
        assertThat(automaton.shortestLight).isEqualTo(0.5);
    }

    @Test
    void no_more_than_two_flashes_are_missed_in_a_row_and_broad_light_never() {
        Automaton.Builder builder = new Automaton.Builder();
        int[] row = new int[6];
        for (int i = 0; i < row.length; i++) {
            row[i] = builder.node(i == 4 ? new Light(1, 8) : SHORT, i != 4);
            if (i > 0) {
                step(builder, row[i - 1], row[i], NEAR, 1);
            }
        }
        Automaton automaton = builder.build();
        assertThat(edges(automaton, row[0], false)).extracting(Edge::to).containsExactly(row[1], row[2], row[3]);
        assertThat(edges(automaton, row[2], false)).extracting(Edge::to).containsExactly(row[3], row[4]);
        assertThat(edges(automaton, row[3], false)).extracting(Edge::to).containsExactly(row[4]);
    }

    @Test
    void what_is_less_likely_than_one_in_a_thousand_million_is_not_followed() {
        for (double weight : new double[] {1.1e-9, 0.9e-9}) {
            Automaton.Builder builder = new Automaton.Builder();
            int one = builder.node(SHORT, true);
            int two = builder.node(SHORT, true);
            int three = builder.node(SHORT, true);
            step(builder, one, two, NEAR, weight);
            step(builder, two, three, NEAR, 1);
            assertThat(edges(builder.build(), one, false)).hasSize(weight > 1e-9 ? 2 : 1);
        }
    }

    @Test
    void a_step_without_weight_is_none() {
        Automaton.Builder builder = new Automaton.Builder();
        int one = builder.node(SHORT, true);
        step(builder, one, one, NEAR, 0);
        assertThat(builder.build().steps).isEmpty();
    }

    @Test
    void equal_lights_and_gaps_are_one() {
        Automaton.Builder builder = new Automaton.Builder();
        int one = builder.node(new Light(0.5, 0), false);
        int two = builder.node(new Light(0.5, 0), false);
        int three = builder.node(new Light(0.6, 0), false);
        step(builder, one, two, Gap.fixed(1), 1);
        step(builder, two, three, Gap.fixed(1), 1);
        step(builder, three, one, Gap.fixed(2), 1);
        Automaton automaton = builder.build();
        assertThat(automaton.lights).containsExactly(new Light(0, 0), new Light(0.5, 0), new Light(0.6, 0));
        assertThat(automaton.light(two)).isEqualTo(new Light(0.5, 0));
        assertThat(automaton.gaps).containsExactly(Gap.fixed(1), Gap.fixed(2));
    }

    @Test
    void a_broad_gap_knows_the_ratio_of_its_bounds() {
        assertThat(ANY.logRange()).isCloseTo(Math.log(100), within(1e-15));
        assertThat(ANY.squares()).isZero();
        assertThat(FAR.cut(GapKind.TAIL_CUT)).isEqualTo(new Gap(GapKind.TAIL_CUT, 2, 4, 0, 0));
        assertThat(new Light(1, 8).broad()).isTrue();
        assertThat(SHORT.broad()).isFalse();
    }

    @Test
    void every_kind_of_gap_joins_every_other_as_enumeration_has_it() {
        List<Gap> kinds = List.of(
                NEAR,
                FAR,
                ANY,
                Gap.broad(0.2, 5),
                Gap.LEAD,
                Gap.TAIL,
                NEAR.cut(GapKind.LEAD_CUT),
                FAR.cut(GapKind.TAIL_CUT));
        Automaton.Builder builder = new Automaton.Builder();
        for (Gap first : kinds) {
            for (Gap second : kinds) {
                for (Gap third : kinds) {
                    int one = builder.node(SHORT, true);
                    int two = builder.node(LONG, true);
                    int three = builder.node(SHORT, true);
                    int four = builder.node(LONG, true);
                    step(builder, one, two, first, 0.5);
                    step(builder, two, three, second, 0.5);
                    step(builder, three, four, third, 0.5);
                    step(builder, three, Automaton.END, third, 0.25);
                }
            }
        }
        compareWithEnumeration(builder.build());
    }

    @ParameterizedTest
    @ValueSource(strings = {"count-loop", "pair-loop", "quad-lead", "pair-even"})
    void the_edges_of_a_format_are_those_of_enumeration(String id) {
        FlashFormat format = FormatCatalog.shipped().find(id).orElseThrow();
        compareWithEnumeration(new FormatModel(format).grammar.automaton);
    }

    private static void compareWithEnumeration(Automaton automaton) {
        int count = 0;
        for (int node = 0; node < automaton.nodes; node++) {
            for (boolean toEnd : new boolean[] {false, true}) {
                List<Edge> edges = edges(automaton, node, toEnd);
                List<Edge> counted = new ArrayList<>();
                enumerate(automaton, node, toEnd, counted);
                assertThat(edges).containsExactlyInAnyOrderElementsOf(counted);
                count += edges.size();
                if (!toEnd) {
                    assertThat(edges)
                            .isSortedAccordingTo(Comparator.comparing(
                                            (Edge edge) -> edge.gap().kind())
                                    .thenComparing(edge -> edge.gap().seconds()));
                    long fixed = counted.stream()
                            .filter(edge -> edge.gap().kind() == GapKind.FIXED)
                            .count();
                    assertThat(automaton.firstBroadEdge[node] - automaton.firstEdge[node])
                            .isEqualTo((int) fixed);
                }
            }
        }
        assertThat(automaton.edgeTo).hasSize(count);
        assertThat(automaton.edgeWeight).hasSize(count);
        for (int i = 0; i < automaton.gaps.length; i++) {
            assertThat(automaton.gaps[i].kind() == GapKind.FIXED).isEqualTo(i < automaton.fixedGaps);
        }
        assertThat(automaton.gaps).doesNotHaveDuplicates();
    }

    private static void enumerate(Automaton automaton, int node, boolean toEnd, List<Edge> edges) {
        for (Step one : automaton.steps) {
            if (one.from() == node) {
                extend(automaton, List.of(one), one.gap(), one.weight(), toEnd, edges);
            }
        }
    }

    private static void extend(
            Automaton automaton, List<Step> path, Gap gap, double weight, boolean toEnd, List<Edge> edges) {
        int reached = path.get(path.size() - 1).to();
        if (toEnd == (reached == Automaton.END)) {
            edges.add(new Edge(path.get(0).from(), reached, gap, path.size() - 1, weight, path));
        }
        boolean missable = reached > Automaton.END && !automaton.light(reached).broad();
        if (missable && path.size() < 3 && weight >= 1e-9 && gap.kind() != GapKind.LEAD_CUT) {
            for (Step next : automaton.steps) {
                if (next.from() == reached && next.gap().kind() != GapKind.TAIL_CUT) {
                    List<Step> longer = new ArrayList<>(path);
                    longer.add(next);
                    Gap joined = EveryPath.joined(gap, automaton.light(reached).seconds(), next.gap());
                    extend(automaton, longer, joined, weight * next.weight(), toEnd, edges);
                }
            }
        }
    }

    private static List<Edge> edges(Automaton automaton, int node, boolean toEnd) {
        int[] first = toEnd ? automaton.firstEnd : automaton.firstEdge;
        List<Edge> edges = new ArrayList<>();
        for (int edge = first[node]; edge < first[node + 1]; edge++) {
            List<Step> steps = new ArrayList<>();
            for (int i = 0; i <= automaton.edgeMissed[edge]; i++) {
                steps.add(automaton.step(edge, i));
            }
            edges.add(new Edge(
                    node,
                    automaton.edgeTo[edge],
                    automaton.gaps[automaton.edgeGap[edge]],
                    automaton.edgeMissed[edge],
                    automaton.edgeWeight[edge],
                    steps));
        }
        return edges;
    }

    private static void step(Automaton.Builder builder, int from, int to, Gap gap, double weight) {
        builder.step(from, to, gap, weight, Ends.NOTHING, "", false);
    }
}
