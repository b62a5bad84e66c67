package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.Automaton.Ends;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;

/** Every step of three tiny formats, said by hand. */
class FreeGrammarTest {
    /** A step between nodes with names: kind, place and number in a row, as in CODE0.1. */
    private record Said(String from, String to, Gap gap, double weight, Ends ends, String sign, boolean repeat) {
        /** Weights to twelve digits, since products may be rounded otherwise. */
        Said rounded() {
            double digits = Double.parseDouble(String.format(java.util.Locale.ROOT, "%.12e", weight));
            return new Said(from, to, gap, digits, ends, sign, repeat);
        }
    }

    private final List<Said> expected = new ArrayList<>();

    private void group(String from, String to, Gap gap, double weight, String sign) {
        expected.add(new Said(from, to, gap, weight, Ends.GROUP, sign, false).rounded());
    }

    private void sign(String from, String to, Gap gap, double weight, String sign) {
        expected.add(new Said(from, to, gap, weight, Ends.SIGN, sign, false).rounded());
    }

    private void plain(String from, String to, Gap gap, double weight) {
        expected.add(new Said(from, to, gap, weight, Ends.NOTHING, "", false).rounded());
    }

    private void repeat(String from, String to, Gap gap, double weight, String sign) {
        expected.add(new Said(from, to, gap, weight, Ends.GROUP, sign, true).rounded());
    }

    /** As a format has it, which counts in nanoseconds. */
    private static Gap dark(double seconds) {
        return FormatTimes.gap(Math.round(1e9 * seconds));
    }

    @Test
    void two_digits_in_a_loop_with_a_mark_before_each_repeat() {
        FreeGrammar grammar = grammar("""
                {"schema": "telltally/format/1", "id": "loop", "title": "Two digits of 1 or 2",
                 "flashes_s": {"flash": 0.5},
                 "code": {"places": [{"flash": "flash", "from": 1, "to": 2}, {"flash": "flash", "from": 1, "to": 2}]},
                 "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0, "before_repeat_s": 6.0},
                 "list": {"loops": true}}
                """);
        plain("CODE0.1", "CODE0.2", dark(0.5), 0.5);
        sign("CODE0.1", "CODE1.1", dark(2), 0.5, "1");
        sign("CODE0.2", "CODE1.1", dark(2), 1, "2");
        plain("CODE1.1", "CODE1.2", dark(0.5), 0.5);
        Map.of("1", 0.5, "2", 1.0).forEach((digit, weight) -> {
            // Seven of ten codes are followed by another, three of ten of those begin the list again.
            group("CODE1." + digit, "CODE0.1", dark(4), 0.7 * 0.7 * weight, digit);
            repeat("CODE1." + digit, "CODE0.1", dark(6), 0.7 * 0.3 * weight, digit);
            group("CODE1." + digit, "END", Gap.TAIL, 0.15 * weight, digit);
        });
        brinks(4);
        plain("START", "CODE0.1", Gap.LEAD, 0.6);
        bulbCheck(Map.of("CODE0.1", 0.6));
        unexplained(List.of("CODE0.1", "CODE0.2", "CODE1.1", "CODE1.2", "STEADY2.1"), "CODE0.1");
        compare(grammar);
        assertThat(grammar.begins).containsExactly(false, true, true, false, false, false, true, true);
    }

    @Test
    void one_digit_with_segments_and_a_running_test() {
        FreeGrammar grammar = grammar("""
                {"schema": "telltally/format/1", "id": "sessions", "title": "One digit, with segments",
                 "flashes_s": {"flash": 0.5},
                 "code": {"places": [{"flash": "flash", "from": 1, "to": 2}]},
                 "gaps": {"within_digit_s": 0.5, "between_codes_s": 4.0},
                 "list": {"list_times": 2},
                 "nothing_to_report": {"code": "1"},
                 "sessions": {"separator_flashes": 2, "around_separator_s": 6.0, "flash": "flash",
                              "running_test_s": 90.0, "most_balance_flashes": 3}}
                """);
        Gap test = Gap.broad(7.5, 450);
        plain("CODE0.1", "CODE0.2", dark(0.5), 0.5);
        Map.of("1", 0.5, "2", 1.0).forEach((digit, weight) -> {
            group("CODE0." + digit, "CODE0.1", dark(4), 0.7 * weight, digit);
            group("CODE0." + digit, "END", Gap.TAIL, 0.15 * weight, digit);
            group("CODE0." + digit, "SEPARATOR0.1", dark(6), 0.15 * weight, digit);
        });
        plain("SEPARATOR0.1", "SEPARATOR0.2", dark(0.5), 1);
        group("SEPARATOR0.2", "CODE0.1", dark(6), 1, "2");
        group("PROMPT0.1", "CODE0.1", test, 1, "1");
        for (int count = 1; count <= 8; count++) {
            // Any number of cylinders up to eight is evenly likely.
            double here = 1.0 / (9 - count);
            if (count < 8) {
                plain("CYLINDERS0." + count, "CYLINDERS0." + (count + 1), dark(0.5), 1 - here);
            }
            group("CYLINDERS0." + count, "CODE0.1", test, 0.7 * here, "" + count);
            group("CYLINDERS0." + count, "PROMPT0.1", test, 0.3 * here, "" + count);
        }
        for (int count = 1; count <= 3; count++) {
            double here = 1.0 / (4 - count);
            if (count < 3) {
                plain("BALANCE0." + count, "BALANCE0." + (count + 1), dark(0.5), 1 - here);
            }
            group("BALANCE0." + count, "END", Gap.TAIL, here, "" + count);
        }
        brinks(2 + 2 + 1 + 8 + 3);
        Map<String, Double> starts = Map.of("CODE0.1", 0.6, "CYLINDERS0.1", 0.15, "BALANCE0.1", 0.08);
        starts.forEach((node, weight) -> plain("START", node, Gap.LEAD, weight));
        bulbCheck(starts);
        List<String> all = new ArrayList<>(
                List.of("CODE0.1", "CODE0.2", "SEPARATOR0.1", "SEPARATOR0.2", "PROMPT0.1", "STEADY2.1"));
        for (int i = 1; i <= 8; i++) {
            all.add("CYLINDERS0." + i);
        }
        all.addAll(List.of("BALANCE0.1", "BALANCE0.2", "BALANCE0.3"));
        unexplained(all, "CODE0.1");
        compare(grammar);
    }

    @Test
    void signs_in_dots_and_dashes_announced_by_a_long_light_or_even_blinking() {
        FreeGrammar grammar = grammar("""
                {"schema": "telltally/format/1", "id": "announced", "title": "Dots and dashes, announced",
                 "flashes_s": {".": 0.2, "-": 0.6},
                 "code": {"signs": {"A": ".-", "E": ".", "T": "-"}, "most_signs": 3},
                 "lead_in": {"lit_s": 2.5, "dark_after_s": 3.5},
                 "gaps": {"within_digit_s": 0.2, "between_digits_s": 0.6, "between_codes_s": 1.4, "before_repeat_s": 3.0},
                 "list": {"list_times": 2},
                 "nothing_to_report": {"blink_on_s": 0.25, "blink_off_s": 0.3}}
                """);
        // CODE0.1 is a dot, of A or E; CODE0.2 the dash of A; CODE0.3 the dash of T. A code may have up to three signs.
        double ends = 1.0 / 3;
        plain("CODE0.1", "CODE0.2", dark(0.2), 0.5);
        Map.of("A", "CODE0.2", "E", "CODE0.1", "T", "CODE0.3").forEach((sign, last) -> {
            double here = sign.equals("E") ? 0.5 : 1;
            // Two of three signs begin with a dot.
            sign(last, "CODE0.1", dark(0.6), here * (1 - ends) * 2 / 3, sign);
            sign(last, "CODE0.3", dark(0.6), here * (1 - ends) / 3, sign);
            group(last, "STEADY0.1", dark(1.4), 0.7 * 0.7 * here * ends, sign);
            repeat(last, "STEADY0.1", dark(3), 0.7 * 0.3 * here * ends, sign);
            group(last, "END", Gap.TAIL, 0.15 * here * ends, sign);
        });
        group("STEADY0.1", "CODE0.1", dark(3.5), 2.0 / 3, "");
        group("STEADY0.1", "CODE0.3", dark(3.5), 1.0 / 3, "");
        for (int i = 1; i < 8; i++) {
            plain("STEADY1." + i, "STEADY1." + (i + 1), dark(0.3), 1);
        }
        plain("STEADY1.8", "STEADY1.8", dark(0.3), 0.9);
        group("STEADY1.8", "END", Gap.TAIL, 0.1, "");
        brinks(3 + 1 + 8);
        Map<String, Double> starts = Map.of("STEADY0.1", 0.6, "STEADY1.1", 0.06);
        starts.forEach((node, weight) -> plain("START", node, Gap.LEAD, weight));
        bulbCheck(starts);
        List<String> all = new ArrayList<>(List.of("CODE0.1", "CODE0.2", "CODE0.3", "STEADY0.1", "STEADY2.1"));
        for (int i = 1; i <= 8; i++) {
            all.add("STEADY1." + i);
        }
        unexplained(all, "STEADY0.1");
        compare(grammar);
        Map<String, Light> lights = Map.of(
                "CODE0.1", FormatTimes.light(200_000_000),
                "CODE0.2", FormatTimes.light(600_000_000),
                "STEADY0.1", FormatTimes.light(2_500_000_000L),
                "STEADY1.8", FormatTimes.light(250_000_000),
                "STEADY2.1", new Light(1.2, 8),
                "UNREADABLE0.1", new Light(1e-3, 1e6));
        List<String> names = names(grammar);
        lights.forEach((name, light) -> assertThat(grammar.automaton.light(names.indexOf(name)))
                .as(name)
                .isEqualTo(light));
    }

    @Test
    void a_list_of_one_code_is_its_own_repeat() {
        FreeGrammar grammar = grammar("""
                {"schema": "telltally/format/1", "id": "count", "title": "One count of 1 to 2 in a loop",
                 "flashes_s": {"flash": 0.3},
                 "code": {"places": [{"flash": "flash", "from": 1, "to": 2}]},
                 "gaps": {"within_digit_s": 0.3, "before_repeat_s": 3.0},
                 "list": {"loops": true, "most_codes": 1}}
                """);
        List<Said> steps = said(grammar);
        assertThat(steps)
                .contains(
                        new Said("CODE0.1", "CODE0.1", dark(3), 0.35, Ends.GROUP, "1", true).rounded(),
                        new Said("CODE0.2", "CODE0.1", dark(3), 0.7, Ends.GROUP, "2", true).rounded());
        assertThat(steps.stream().filter(step -> step.repeat() && step.gap().kind() == GapKind.FIXED))
                .hasSize(2);
    }

    @Test
    void signs_of_which_a_code_has_one_end_it() {
        FreeGrammar grammar = grammar("""
                {"schema": "telltally/format/1", "id": "one", "title": "One sign",
                 "flashes_s": {".": 0.2, "-": 0.6},
                 "code": {"signs": {"E": ".", "T": "-"}, "most_signs": 1},
                 "gaps": {"within_digit_s": 0.2, "between_codes_s": 1.4},
                 "list": {"list_times": 2}}
                """);
        assertThat(said(grammar).stream().filter(step -> step.ends() == Ends.SIGN && step.weight() > 0))
                .isEmpty();
        assertThat(said(grammar))
                .contains(
                        new Said("CODE0.1", "CODE0.1", dark(1.4), 0.35, Ends.GROUP, "E", false).rounded(),
                        new Said("START", "CODE0.2", Gap.LEAD, 0.3, Ends.NOTHING, "", false).rounded(),
                        new Said("UNREADABLE0.1", "CODE0.2", Gap.broad(1e-3, 1e6), 0.05, Ends.GROUP, "", false)
                                .rounded());
    }

    @Test
    void after_cylinder_flashes_codes_begin_with_each_of_their_signs_as_often_as_there_are_codes() {
        FreeGrammar grammar = grammar("""
                {"schema": "telltally/format/1", "id": "one", "title": "One sign, with segments",
                 "flashes_s": {".": 0.2, "-": 0.6},
                 "code": {"signs": {"E": ".", "I": "..", "T": "-"}, "most_signs": 1},
                 "gaps": {"within_digit_s": 0.2, "between_codes_s": 1.4},
                 "list": {"list_times": 2},
                 "nothing_to_report": {"code": "E"},
                 "sessions": {"separator_flashes": 1, "around_separator_s": 4.0, "flash": ".",
                              "running_test_s": 90.0, "most_balance_flashes": 3}}
                """);
        // Eight cylinder flashes are the last that there may be; a third of the codes begins with a dash.
        assertThat(said(grammar))
                .contains(
                        new Said("CYLINDERS0.8", "CODE0.1", Gap.broad(7.5, 450), 0.7 * 2 / 3, Ends.GROUP, "8", false)
                                .rounded(),
                        new Said("CYLINDERS0.8", "CODE0.3", Gap.broad(7.5, 450), 0.7 / 3, Ends.GROUP, "8", false)
                                .rounded());
    }

    /** For every step said so far: the recording may begin in its gap, once for each gap into a flash, and end in it. */
    private void brinks(int flashes) {
        List<Said> known = List.copyOf(expected);
        List<String> begun = new ArrayList<>();
        for (Said step : known) {
            if (step.gap().kind() == GapKind.FIXED) {
                Gap rest = step.gap().cut(GapKind.LEAD_CUT);
                if (!begun.contains(step.to() + rest)) {
                    begun.add(step.to() + rest);
                    plain("START", step.to(), rest, 0.015 / ((flashes + 2) * 1.5));
                }
                expected.add(new Said(
                                step.from(),
                                "END",
                                step.gap().cut(GapKind.TAIL_CUT),
                                1e-4 * step.weight(),
                                step.ends(),
                                step.sign(),
                                false)
                        .rounded());
            }
        }
    }

    private void bulbCheck(Map<String, Double> starts) {
        plain("START", "STEADY2.1", Gap.LEAD, 0.1);
        starts.forEach((node, weight) -> group("STEADY2.1", node, Gap.broad(0.05, 600), weight, ""));
    }

    private void unexplained(List<String> all, String head) {
        Gap any = Gap.broad(1e-3, 1e6);
        all.forEach(node -> plain(node, "UNREADABLE0.1", any, 1e-7));
        all.stream().filter(node -> !endsAnyhow(node)).forEach(node -> plain(node, "END", Gap.TAIL, 1e-14));
        plain("UNREADABLE0.1", "UNREADABLE0.1", any, 0.5);
        group("UNREADABLE0.1", head, any, 0.1, "");
        plain("START", "UNREADABLE0.1", Gap.LEAD, 1e-7);
        group("UNREADABLE0.1", "END", Gap.TAIL, 0.1, "");
    }

    private boolean endsAnyhow(String node) {
        return expected.stream()
                .anyMatch(step -> step.from().equals(node) && step.gap().kind() == GapKind.TAIL);
    }

    private void compare(FreeGrammar grammar) {
        assertThat(said(grammar)).containsExactlyInAnyOrderElementsOf(expected);
    }

    private static List<Said> said(FreeGrammar grammar) {
        List<String> names = names(grammar);
        List<Said> said = new ArrayList<>();
        for (Step step : grammar.automaton.steps) {
            said.add(new Said(
                            names.get(step.from()),
                            names.get(step.to()),
                            step.gap(),
                            step.weight(),
                            step.ends(),
                            step.sign(),
                            step.repeat())
                    .rounded());
        }
        return said;
    }

    private static List<String> names(FreeGrammar grammar) {
        List<String> names = new ArrayList<>(List.of("START", "END"));
        Map<String, Integer> counts = new HashMap<>();
        for (int node = 2; node < grammar.automaton.nodes; node++) {
            GroupKind kind = grammar.kindOf[node];
            String name = kind.name() + grammar.placeOf[node];
            names.add(name + "." + counts.merge(name, 1, Integer::sum));
        }
        return names;
    }

    private static FreeGrammar grammar(String file) {
        FlashFormat format = Recordings.read(file);
        return FreeGrammar.of(format, new FormatTimes(format));
    }
}
