package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Groups next to each other that are one code, sent several times in a row: evidence taken together. */
final class Block {
    private static final double SURE = 0.999;

    final List<Found> groups;
    /** By place; even where nothing was seen. */
    final List<Guess> signs;
    /** The most probable code; short where a place was not seen. */
    final String best;

    final boolean repeat;
    final boolean whole;
    /** Whether something of every sign was seen. */
    final boolean complete;

    Block(FormatModel model, List<Found> together) {
        groups = List.copyOf(together);
        signs = joint(model, together);
        best = text(signs);
        repeat = together.get(0).repeat;
        boolean anyWhole = false;
        for (Found group : together) {
            anyWhole |= !group.begunBefore && !group.unfinished;
        }
        whole = anyWhole;
        boolean all = true;
        for (Guess sign : signs) {
            all &= !sign.knowsNothing();
        }
        complete = all;
    }

    private static List<Guess> joint(FormatModel model, List<Found> together) {
        int places = model.places;
        if (places == 0) {
            for (Found group : together) {
                places = Math.max(places, group.signs.size());
            }
        }
        List<Guess> signs = new ArrayList<>(places);
        for (int place = 0; place < places; place++) {
            @Nullable Guess guess = null;
            for (Found group : together) {
                int at = place - (model.places == 0 ? 0 : group.firstPlace);
                if (at >= 0 && at < group.signs.size()) {
                    Guess one = group.signs.get(at);
                    guess = guess == null || guess.knowsNothing() ? one : guess.and(one);
                }
            }
            signs.add(guess == null ? Guess.even(model.choices(place)) : guess);
        }
        return signs;
    }

    private static String text(List<Guess> signs) {
        if (signs.size() == 1) {
            return signs.get(0).best();
        }
        StringBuilder text = new StringBuilder();
        for (Guess sign : signs) {
            text.append(sign.best());
        }
        return text.toString();
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
            if (sign.knowsNothing() || sign.probability(sign.best()) < SURE) {
                return false;
            }
        }
        return true;
    }

    private record Choice(String code, double probability) {}

    /** Other codes that the signs allow, most probable first. */
    List<String> choices(String code, double leastShare, int most) {
        List<Choice> choices = List.of(new Choice("", 1));
        for (Guess sign : signs) {
            List<Choice> longer = new ArrayList<>();
            for (Choice begun : choices) {
                for (String text : sign.ranked()) {
                    double share = sign.probability(text);
                    if (share >= leastShare && longer.size() < 4 * most) {
                        longer.add(new Choice(begun.code() + text, begun.probability() * share));
                    }
                }
            }
            choices = longer;
        }
        return choices.stream()
                .filter(choice -> !choice.code().equals(code))
                .sorted(Comparator.comparingDouble((Choice choice) -> -choice.probability()))
                .limit(most)
                .map(Choice::code)
                .toList();
    }

    double probability(String code) {
        double product = 1;
        for (int i = 0; i < signs.size(); i++) {
            product *= signs.get(i).probability(signs.size() == code.length() ? code.substring(i, i + 1) : code);
        }
        return product;
    }
}
