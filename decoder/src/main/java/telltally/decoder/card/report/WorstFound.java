package telltally.decoder.card.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.WorstCase;
import telltally.decoder.score.Line;

/** A case that was read wrong, and where it is found. */
record WorstFound(SetCard set, Line line, WorstCase worst) {
    private static final String RANDOM = "random message";

    /** The worst ones first; a case that is wrong on both lines comes once, and no set has them all. */
    static List<WorstFound> of(ScoreCard card, int fromEachSet, int inAll) {
        List<WorstFound> all = new ArrayList<>();
        for (SetCard set : card.sets()) {
            List<WorstFound> own = new ArrayList<>();
            for (LineCard each : set.lines()) {
                for (WorstCase worst : each.worst()) {
                    if (own.stream().noneMatch(other -> other.worst().index() == worst.index())) {
                        own.add(new WorstFound(set, each.line(), worst));
                    }
                }
            }
            own.sort(Comparator.comparing(WorstFound::worst, WorstCase.WORST_FIRST));
            all.addAll(own.subList(0, Math.min(fromEachSet, own.size())));
        }
        // The order within a set is by index, which says nothing between sets: a stable sort leaves it to their order.
        all.sort(
                Comparator.comparing((WorstFound each) -> each.worst().failure().isEmpty())
                        .thenComparing(Comparator.comparingLong(
                                        (WorstFound each) -> each.worst().errors())
                                .reversed()));
        return all.subList(0, Math.min(inAll, all.size()));
    }

    /** What the decoder made of it, in words. */
    String answer() {
        return worst.failure()
                .map(kind -> "no answer: " + CardJson.word(kind).replace('-', ' '))
                .orElse("read " + worst.read());
    }

    /** The command that shows it again. */
    String command(ScoreCard card) {
        List<String> words = new ArrayList<>(List.of("telltally", "score"));
        words.addAll(card.arguments());
        words.addAll(List.of("--set", set.title().id(), "--seed", Long.toString(worst.seed())));
        if (!worst.origin().equals(RANDOM)) {
            words.addAll(List.of("--lesson", worst.origin()));
        }
        words.addAll(List.of("--line", line.key()));
        return words.stream().map(WorstFound::quoted).collect(Collectors.joining(" "));
    }

    /** As a shell takes it for one word. */
    private static String quoted(String word) {
        return word.matches("[A-Za-z0-9_./:=,@%+-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
