package telltally.decoder.card;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.score.Line;

/**
 * How a decoder did on seed sets: counts only, which add up. The same decoder, sets, seeds and generator version give the
 * same card, on any machine, with any number of threads and however it was sharded.
 *
 * @param decoder its id
 * @param generator the version that the recordings were made with
 * @param arguments what the command line was given that another run needs to repeat this one
 * @param toldFormat whether the decoder was told each session's format
 * @param part the shards that it holds
 */
public record ScoreCard(
        String decoder, int generator, List<String> arguments, boolean toldFormat, Part part, List<SetCard> sets) {
    public ScoreCard {
        arguments = List.copyOf(arguments);
        sets = List.copyOf(sets);
    }

    /** Everything on one line. */
    public Tally total(Line line) {
        return sets.stream()
                .flatMap(set -> set.lines().stream())
                .filter(each -> each.line() == line)
                .map(LineCard::decoder)
                .reduce(Tally.NOTHING, Tally::plus);
    }

    /** The lines that were listened to, in their order. */
    public List<Line> lines() {
        return sets.stream()
                .flatMap(set -> set.lines().stream())
                .map(LineCard::line)
                .distinct()
                .sorted()
                .toList();
    }

    /** Whether every floor holds, every digest matches and every case was run. */
    public boolean holds() {
        return sets.stream()
                .allMatch(set -> set.flaws().isEmpty()
                        && set.lines().stream()
                                .allMatch(line ->
                                        !part.whole() || set.shortfalls(line).isEmpty()));
    }

    /**
     * Puts shards together.
     *
     * @throws IllegalArgumentException if they are no parts of one run, in words for the user
     */
    public ScoreCard plus(ScoreCard other) {
        if (!decoder.equals(other.decoder)) {
            throw new IllegalArgumentException("one is of the decoder " + decoder + ", the other of " + other.decoder);
        }
        if (generator != other.generator) {
            throw new IllegalArgumentException(
                    "one has recordings of generator " + generator + ", the other of " + other.generator);
        }
        if (!arguments.equals(other.arguments) || toldFormat != other.toldFormat || sets.size() != other.sets.size()) {
            throw new IllegalArgumentException("they come from different commands");
        }
        Part both = part.plus(other.part);
        List<SetCard> sums = new ArrayList<>();
        for (int i = 0; i < sets.size(); i++) {
            sums.add(sets.get(i).plus(other.sets.get(i)));
        }
        return new ScoreCard(decoder, generator, arguments, toldFormat, both, sums);
    }
}
