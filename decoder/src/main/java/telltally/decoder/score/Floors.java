package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;

/**
 * How well a decoder must do on a seed set at least, on the lamp and on the pin each.
 *
 * @param listsRight share of the lists that are right, 0 to 1
 * @param codesRight share of the codes that are right, 0 to 1
 * @param inventedCodes how many invented codes are let pass
 */
public record Floors(double listsRight, double codesRight, int inventedCodes) {
    /** What a score falls short in, a line each; empty where it holds. */
    public List<String> shortfalls(Score score) {
        List<String> lines = new ArrayList<>();
        addIfShort(lines, "lists", score.listsRight(), score.lists(), listsRight);
        addIfShort(lines, "codes", score.codesRight(), score.codes(), codesRight);
        if (score.inventedCodes() > inventedCodes) {
            lines.add(score.inventedCodes() + " invented codes; at most " + inventedCodes + " are let pass");
        }
        return lines;
    }

    private static void addIfShort(List<String> lines, String what, int right, int all, double floor) {
        // One division, correctly rounded: 495 of 500 is the same double as 0.99 in a file.
        if (all > 0 && right / (double) all < floor) {
            lines.add(right + " of " + all + " " + what + " right; the floor is " + floor);
        }
    }
}
