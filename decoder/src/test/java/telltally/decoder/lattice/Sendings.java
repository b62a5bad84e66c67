package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import telltally.simulator.format.GroupKind;
import telltally.simulator.signal.PulseTrain;

/** Sendings of codes as a recording might show them, made by hand, and the formats that they are of. */
final class Sendings {
    /** The members of a format of two digits of 1 to 9 in half seconds, before those of its list. */
    static final String TWO_DIGITS = """
            "flashes_s": {"flash": 0.5},
            "code": {"places": [{"flash": "flash", "from": 1, "to": 9}, {"flash": "flash", "from": 1, "to": 9}]},
            "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0},
            """;

    private Sendings() {}

    static FormatModel shipped(String format) {
        return new FormatModel(Recordings.shipped(format));
    }

    /** A format of which the members after its title are given. */
    static FormatModel format(String members) {
        return new FormatModel(Recordings.format("own", members));
    }

    /** Dark and lit lengths by turns, dark first. */
    static Flashes flashes(List<Integer> darkAndLitMillis) {
        PulseTrain.Builder pulses = PulseTrain.builder();
        for (int i = 0; i < darkAndLitMillis.size(); i++) {
            pulses.stay(i % 2 == 1, darkAndLitMillis.get(i) * 1_000_000L);
        }
        return Flashes.of(pulses.build(), true, 1_000_000, 1_000_000, 1000);
    }

    /** Dark and lit milliseconds of codes of {@link #TWO_DIGITS}, each as long as it should be. */
    static List<Integer> clean(String... codes) {
        List<Integer> lengths = new ArrayList<>(List.of(3000));
        for (String code : codes) {
            for (int place = 0; place < 2; place++) {
                for (int i = code.charAt(place) - '0'; i > 0; i--) {
                    lengths.addAll(List.of(500, i > 1 ? 500 : place == 0 ? 2000 : 4000));
                }
            }
        }
        return lengths;
    }

    /** A sign of nine that there are, with the shares of those that it may have been. */
    static Guess sign(Object... textsAndShares) {
        Guess guess = Guess.ofShares(9);
        for (int i = 0; i < textsAndShares.length; i += 2) {
            guess.add((String) textsAndShares[i], (double) textsAndShares[i + 1]);
        }
        return guess;
    }

    /** A code of one-character signs of which none leaves a doubt. */
    static Found whole(String code) {
        return whole(signs(code));
    }

    static Found whole(Guess... signs) {
        return filled(found(0, false, false), signs);
    }

    /** A code after a gap that says that the list begins again. */
    static Found repeat(String code) {
        return filled(found(0, false, true), signs(code));
    }

    /** The recording began within it, in the sign of this place or just before. */
    static Found begunBefore(int place, Guess... signs) {
        return filled(found(place, true, false), signs);
    }

    /** The recording ended within it. */
    static Found unfinished(Guess... signs) {
        Found found = whole(signs);
        found.unfinished = true;
        return found;
    }

    /** What is made of sendings that no brink of the recording cut. */
    static ListStructure structure(FormatModel model, Found... groups) {
        return new ListStructure(model, List.of(groups), false, false);
    }

    static ListStructure structure(FormatModel model, String... codes) {
        return structure(model, Arrays.stream(codes).map(Sendings::whole).toArray(Found[]::new));
    }

    private static Guess[] signs(String code) {
        return code.chars()
                .mapToObj(sign -> sign(Character.toString(sign), 1.0))
                .toArray(Guess[]::new);
    }

    private static Found found(int place, boolean begunBefore, boolean repeat) {
        return new Found(GroupKind.CODE, 0, place, begunBefore, repeat);
    }

    private static Found filled(Found found, Guess... signs) {
        found.signs.addAll(List.of(signs));
        return found;
    }
}
