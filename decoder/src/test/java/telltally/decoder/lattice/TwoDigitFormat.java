package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** A format so small that all its lists, and all ways of seeing each, can be enumerated; with sessions of it. */
final class TwoDigitFormat {
    private static final String FILE = """
            {"schema": "telltally/format/1", "id": "small", "title": "Two digits of 1 to 3",
             "flashes_s": {"flash": 0.5},
             "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 3}]},
             "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0},
             "list": {"list_times": 2, "most_codes": 2}}
            """;

    static final Channel CHANNEL = new Channel(1, 0, 0.08, 0.03, 0.03, 0.02);

    final FlashFormat format = Recordings.read(FILE);
    final FormatModel model = new FormatModel(format);

    /** A list sent twice, watched from any instant to any. */
    SentList sent(String... codes) {
        return new SentList(
                model, new SentList.Plan(false, false, false, false, List.of(2), true, true), List.of(codes));
    }

    List<List<String>> lists() {
        List<String> codes = new ArrayList<>();
        for (int tens = 1; tens <= 3; tens++) {
            for (int ones = 1; ones <= 3; ones++) {
                codes.add("" + tens + ones);
            }
        }
        List<List<String>> lists = new ArrayList<>();
        codes.forEach(code -> lists.add(List.of(code)));
        for (String first : codes) {
            for (String second : codes) {
                if (!first.equals(second)) {
                    lists.add(List.of(first, second));
                }
            }
        }
        return lists;
    }

    /** A row of flashes as steps from flash to flash. */
    static Automaton automaton(SentList row) {
        Automaton.Builder builder = new Automaton.Builder();
        int first = builder.nodes();
        for (int at = 0; at < row.count(); at++) {
            int node = builder.node(row.lights.get(row.light(at)), true);
            Gap before = row.gaps.get(row.gapBefore(at));
            if (row.openStart()) {
                step(builder, Automaton.START, node, before.cut(GapKind.LEAD_CUT), row.entering());
            }
            if (at > 0) {
                step(builder, node - 1, node, before, 1);
                if (row.openEnd()) {
                    step(builder, node - 1, Automaton.END, before.cut(GapKind.TAIL_CUT), FreeGrammar.EARLY);
                }
            }
            if (row.mayEndAfter(at)) {
                step(builder, node, Automaton.END, Gap.TAIL, SentList.ENDING);
            }
        }
        step(builder, Automaton.START, first, Gap.LEAD, row.firstWeight());
        return builder.build();
    }

    private static void step(Automaton.Builder builder, int from, int to, Gap gap, double weight) {
        builder.step(from, to, gap, weight, Automaton.Ends.NOTHING, "", false);
    }

    /** A session of one or two codes, some of its flashes unseen, some not sent. */
    Flashes flashes(long seed, int codes) {
        Chance chance = Chance.of(seed);
        List<List<String>> all = lists();
        List<String> list = codes == 1 ? all.get(chance.below(9)) : all.get(9 + chance.below(72));
        PulseTrain.Builder pulses = PulseTrain.builder();
        double[] wait = {chance.between(0.3, 5)};
        for (int time = 0; time < 2; time++) {
            for (String code : list) {
                for (int place = 0; place < 2; place++) {
                    for (int i = 0; i < code.charAt(place) - '0'; i++) {
                        double lit = 0.5 * (1 + 0.06 * chance.nextNormal());
                        if (chance.happens(0.06)) {
                            wait[0] += lit;
                        } else {
                            pulses.dark((long) (1e9 * wait[0]));
                            pulses.lit((long) (1e9 * lit));
                            wait[0] = 0;
                        }
                        wait[0] += 0.5 * (1 + 0.06 * chance.nextNormal());
                    }
                    wait[0] += 1.5;
                }
                wait[0] += 2;
            }
        }
        pulses.dark((long) (1e9 * (wait[0] + 0.5)));
        Flashes seen = Flashes.of(pulses.build(), true, 30_000_000, 30_000_000, 1000);
        return seen.count > 0 ? seen : flashes(seed + 1, codes);
    }
}
