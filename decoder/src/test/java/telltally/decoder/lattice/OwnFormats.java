package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.decoder.lattice.Automaton.Step;
import telltally.simulator.chance.Chance;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatReader;
import telltally.simulator.signal.PulseTrain;

/** Formats as somebody might write them, with every feature that there is, and senseless recordings in their lengths. */
final class OwnFormats {
    private OwnFormats() {}

    /** Drawn until the reader takes it: some drawn ones are refused, as a gap that is no longer than another. */
    static FlashFormat drawn(Chance chance) {
        for (; ; ) {
            Optional<FlashFormat> format = read(file(chance));
            if (format.isPresent()) {
                return format.get();
            }
        }
    }

    private static Optional<FlashFormat> read(String file) {
        try {
            return Optional.of(FormatReader.read(new TextFile("own.json", file)));
        } catch (ProblemException refused) {
            return Optional.empty();
        }
    }

    private static String file(Chance chance) {
        boolean spelled = chance.happens(0.25);
        int places = 1 + chance.below(4);
        boolean sessions = !spelled && chance.happens(0.3);
        double flash = 0.1 * (1 + chance.below(8));
        double within = flash * (1 + chance.below(2));
        double digits = within * (2 + chance.below(3));
        double codes = digits * (1.5 + chance.below(2));
        List<String> members = new ArrayList<>();
        members.add("\"schema\": \"telltally/format/1\", \"id\": \"own\", \"title\": \"Own\"");
        members.add("\"flashes_s\": {\"s\": " + flash + ", \"l\": " + flash * (2 + chance.below(3)) + "}");
        members.add("\"code\": " + (spelled ? signs(chance) : places(chance, places)));
        members.add("\"gaps\": {\"within_digit_s\": " + within
                + (!spelled && places == 1 ? "" : ", \"between_digits_s\": " + digits)
                + ", \"between_codes_s\": " + codes
                + (chance.happens(0.5) ? "" : ", \"before_repeat_s\": " + codes * 1.7) + "}");
        members.add("\"list\": {"
                + (sessions || chance.happens(0.7) ? "\"list_times\": " + (1 + chance.below(3)) : "\"loops\": true")
                + (chance.happens(0.4) ? ", \"most_codes\": " + (1 + chance.below(5)) : "")
                + (chance.happens(0.3) ? ", \"each_code_times\": " + (1 + chance.below(4)) : "") + "}");
        String twos = "2".repeat(places);
        if (sessions) {
            members.add("\"nothing_to_report\": {\"code\": \"" + twos + "\"}");
            members.add("\"sessions\": {\"separator_flashes\": " + (1 + chance.below(3)) + ", \"around_separator_s\": "
                    + codes * 2 + ", \"flash\": \"s\", \"running_test_s\": 60, \"most_balance_flashes\": "
                    + (1 + chance.below(9)) + "}");
        } else if (chance.happens(0.3)) {
            members.add(
                    "\"nothing_to_report\": {\"blink_on_s\": " + flash / 2 + ", \"blink_off_s\": " + flash / 2 + "}");
        }
        if (chance.happens(0.2)) {
            members.add("\"lead_in\": {\"lit_s\": " + flash * 9 + ", \"dark_after_s\": " + codes + "}");
        }
        if (!spelled && chance.happens(0.25)) {
            members.add("\"framing_code\": \"" + twos + "\"");
        }
        if (chance.happens(0.15)) {
            members.add("\"rests_lit\": true");
        }
        return "{" + String.join(", ", members) + "}";
    }

    private static String signs(Chance chance) {
        return "{\"signs\": {\"A\": \"sl\", \"B\": \"lsss\", \"E\": \"s\", \"T\": \"l\", \"N\": \"ls\"}, \"most_signs\": "
                + (1 + chance.below(6)) + "}";
    }

    private static String places(Chance chance, int count) {
        List<String> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int from = 1 + chance.below(6);
            places.add("{\"flash\": \"" + (chance.happens(0.7) ? "s" : "l") + "\", \"from\": " + from + ", \"to\": "
                    + Math.min(9, from + chance.below(9)) + "}");
        }
        return "{\"places\": [" + String.join(", ", places) + "]}";
    }

    /** Flash after flash as some flash of the format may follow another, or any length after any, and then silence. */
    static PulseTrain babble(FlashFormat format, int flashes, Chance chance) {
        Automaton automaton = new FormatModel(format).grammar.automaton;
        boolean rest = format.restsLit();
        double scatter = chance.happens(0.5) ? 0.02 : 0.12;
        double leap = chance.happens(0.5) ? 0.02 : 1;
        PulseTrain.Builder pulses = PulseTrain.builder();
        pulses.stay(rest, nanos(chance.happens(0.2) ? 0 : chance.between(0.05, 8)));
        int node = anyNode(automaton, chance);
        for (int i = 0; i < flashes; i++) {
            Light light = automaton.light(node);
            double lit = light.broad() ? chance.between(light.seconds(), 5) : light.seconds();
            Step step = stepFrom(automaton, node, chance);
            double dark = step.gap().kind() == GapKind.FIXED ? step.gap().seconds() : Math.exp(chance.between(-3, 4));
            pulses.stay(!rest, nanos(lit * (1 + scatter * chance.nextNormal())));
            pulses.stay(rest, nanos(dark * (1 + scatter * chance.nextNormal())));
            node = step.to() == Automaton.END || chance.happens(leap) ? anyNode(automaton, chance) : step.to();
        }
        return pulses.build();
    }

    private static int anyNode(Automaton automaton, Chance chance) {
        return Automaton.END + 1 + chance.below(automaton.nodes - Automaton.END - 1);
    }

    private static Step stepFrom(Automaton automaton, int node, Chance chance) {
        List<Step> steps = new ArrayList<>();
        for (Step step : automaton.steps) {
            if (step.from() == node && (step.gap().kind() == GapKind.FIXED || chance.happens(0.1))) {
                steps.add(step);
            }
        }
        return steps.isEmpty() ? stepFrom(automaton, node, chance) : steps.get(chance.below(steps.size()));
    }

    private static long nanos(double seconds) {
        return Math.max(1, (long) (1e9 * seconds));
    }
}
