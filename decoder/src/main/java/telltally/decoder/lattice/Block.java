package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;

/** Groups next to each other that are one code, sent several times in a row: evidence taken together. */
final class Block {
    final List<Found> groups = new ArrayList<>();
    /** By place; even where nothing was seen. */
    final List<Guess> signs;

    final boolean repeat;
    final boolean whole;

    Block(FormatModel model, List<Found> together) {
        groups.addAll(together);
        signs = joint(model, together);
        repeat = together.get(0).repeat;
        whole = together.stream().anyMatch(group -> !group.begunBefore && !group.unfinished);
    }

    private static List<Guess> joint(FormatModel model, List<Found> together) {
        int places = model.places();
        if (places == 0) {
            places = together.stream()
                    .mapToInt(group -> group.signs.size())
                    .max()
                    .orElse(0);
        }
        List<Guess> signs = new ArrayList<>();
        for (int place = 0; place < places; place++) {
            Guess guess = Guess.even(model.choices(place));
            for (Found group : together) {
                int at = place - (model.places() == 0 ? 0 : group.firstPlace);
                if (at >= 0 && at < group.signs.size()) {
                    guess = guess.knowsNothing() ? group.signs.get(at) : guess.and(group.signs.get(at));
                }
            }
            signs.add(guess);
        }
        return signs;
    }

    /** Logarithm of the evidence that the sendings were one code, against independent codes. */
    double logEvidence() {
        double sum = 0;
        for (Guess sign : signs) {
            sum += sign.logEvidence();
        }
        return sum;
    }

    /** Whether every sign was seen and leaves no doubt. */
    boolean sure() {
        for (Guess sign : signs) {
            if (sign.knowsNothing() || sign.probability(sign.best()) < 0.999) {
                return false;
            }
        }
        return true;
    }

    String best() {
        StringBuilder text = new StringBuilder();
        for (Guess sign : signs) {
            text.append(sign.best());
        }
        return text.toString();
    }

    boolean complete() {
        return signs.stream().noneMatch(Guess::knowsNothing);
    }

    /** Other codes that the signs allow, most probable first. */
    List<String> choices(String code, double leastShare, int most) {
        List<String> codes = new ArrayList<>(List.of(""));
        for (Guess sign : signs) {
            List<String> longer = new ArrayList<>();
            for (String begun : codes) {
                for (String text : sign.ranked()) {
                    if (sign.probability(text) >= leastShare && longer.size() < 4 * most) {
                        longer.add(begun + text);
                    }
                }
            }
            codes = longer;
        }
        codes.remove(code);
        codes.sort(java.util.Comparator.comparingDouble((String each) -> -probability(each)));
        return codes.subList(0, Math.min(most, codes.size()));
    }

    double probability(String code) {
        double product = 1;
        for (int i = 0; i < signs.size(); i++) {
            product *= signs.get(i).probability(signs.size() == code.length() ? code.substring(i, i + 1) : code);
        }
        return product;
    }
}
