package telltally.decoder.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import telltally.decoder.score.Line;

/**
 * One seed set on one line.
 *
 * @param formats by id
 * @param worst at most {@value #WORST}, the worst one first
 */
public record LineCard(Line line, List<FormatCard> formats, RightCases right, List<WorstCase> worst) {
    /** How many of the worst cases are kept. */
    public static final int WORST = 5;

    public LineCard {
        formats = List.copyOf(formats);
        worst = List.copyOf(worst);
    }

    public Tally decoder() {
        return formats.stream().map(FormatCard::decoder).reduce(Tally.NOTHING, Tally::plus);
    }

    /** Empty where the plain decoder did not run beside. */
    public Optional<Counts> plain() {
        return formats.stream().flatMap(each -> each.plain().stream()).reduce(Counts::plus);
    }

    /** Empty where the lattice did not run beside. */
    public Optional<Counts> told() {
        return formats.stream().flatMap(each -> each.told().stream()).reduce(Counts::plus);
    }

    LineCard plus(LineCard other) {
        SortedMap<String, FormatCard> sums = new TreeMap<>();
        Stream.concat(formats.stream(), other.formats.stream())
                .forEach(each -> sums.merge(each.format(), each, FormatCard::plus));
        List<WorstCase> both = new ArrayList<>(worst);
        both.addAll(other.worst);
        both.sort(WorstCase.WORST_FIRST);
        return new LineCard(
                line, List.copyOf(sums.values()), right.or(other.right), both.subList(0, Math.min(WORST, both.size())));
    }
}
