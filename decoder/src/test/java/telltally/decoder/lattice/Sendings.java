package telltally.decoder.lattice;

import java.util.List;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatReader;
import telltally.simulator.format.GroupKind;

/** Sendings of codes as a recording might show them, made by hand, and the formats that they are of. */
final class Sendings {
    private Sendings() {}

    static FormatModel shipped(String format) {
        return new FormatModel(FormatCatalog.shipped().find(format).orElseThrow());
    }

    /** @param rest what stands in the file beside its head */
    static FormatModel format(String rest) {
        String file =
                "{\"schema\": \"telltally/format/1\", \"id\": \"own\", \"title\": \"Made for a test\", " + rest + "}";
        try {
            return new FormatModel(FormatReader.read(new TextFile("own.json", file)));
        } catch (ProblemException e) {
            throw new IllegalStateException(e);
        }
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
