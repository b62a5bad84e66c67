package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashKind;

/** From flashes to the text of a digit or sign; an empty text where they are none. */
final class SignTable {
    private final List<Map<Integer, String>> digitsByPlace = new ArrayList<>();
    private final List<Integer> kindByPlace = new ArrayList<>();
    private final Map<List<Integer>, String> signs = new HashMap<>();
    private int longestSign;

    SignTable(CodeShape shape, Lengths lengths) {
        if (shape instanceof CodeShape.Counted counted) {
            for (CodeShape.Place place : counted.places()) {
                Map<Integer, String> digits = new HashMap<>();
                place.counts().forEach((digit, count) -> digits.put(count, digit));
                digitsByPlace.add(digits);
                kindByPlace.add(lengths.kind(place.flash()));
            }
        } else if (shape instanceof CodeShape.Spelled spelled) {
            spelled.table().forEach((sign, flashes) -> signs.put(kinds(flashes, lengths), sign));
            longestSign = signs.keySet().stream().mapToInt(List::size).max().orElse(0);
        }
    }

    private static List<Integer> kinds(List<FlashKind> flashes, Lengths lengths) {
        return flashes.stream().map(lengths::kind).toList();
    }

    String digit(int place, int kind, int count) {
        return kindByPlace.get(place) == kind ? digitsByPlace.get(place).getOrDefault(count, "") : "";
    }

    String sign(List<Integer> kinds) {
        return signs.getOrDefault(kinds, "");
    }

    /** What it costs to say one certain code of so many signs, all being equally likely: its length in nats. */
    double cost(int signsOfCode) {
        return signs.isEmpty()
                ? digitsByPlace.stream()
                        .mapToDouble(digits -> StrictMath.log(digits.size()))
                        .sum()
                : signsOfCode * StrictMath.log(signs.size());
    }

    /** The most flashes that a sign has. */
    int longestSign() {
        return longestSign;
    }
}
