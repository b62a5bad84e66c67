package telltally.decoder.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.decoder.score.CurvePoint;
import telltally.decoder.score.Floors;
import telltally.decoder.score.Line;

/**
 * One seed set.
 *
 * @param title what it is, the same for every decoder and every shard
 * @param floors those of this decoder; empty where it has none, or where other seeds than the set's own were run
 * @param flaws digests that did not match and cases that could not be run, by block
 * @param lines in the order of {@link Line}
 */
public record SetCard(Title title, Optional<Floors> floors, List<Flaw> flaws, List<LineCard> lines) {
    public SetCard {
        flaws = flaws.stream()
                .sorted(Comparator.comparingInt(Flaw::block).thenComparing(Flaw::text))
                .toList();
        lines = List.copyOf(lines);
    }

    /**
     * @param curve where it stands on a curve of accuracy against noise; empty where on none
     * @param channel the kinds of impairments, in order
     * @param seeds how many seeds were run, from the first one on; those that the set names one by one are not among them
     * @param cases how many cases that makes, all shards together
     * @param fingerprint SHA-256 of the set's digests: two sets with the same one stand for the same recordings
     */
    public record Title(
            String id,
            String why,
            Optional<CurvePoint> curve,
            List<String> channel,
            long from,
            int seeds,
            int cases,
            String fingerprint) {
        public Title {
            channel = List.copyOf(channel);
        }
    }

    /** @param block of seeds, counted from 1 */
    public record Flaw(int block, String text) {}

    /** What a line falls short in; empty where it holds its floors, or has none. */
    public List<String> shortfalls(LineCard line) {
        return floors.map(each -> each.shortfalls(line.decoder().counts().score()))
                .orElse(List.of());
    }

    /** What both counted, of the same set in the same run. */
    public SetCard plus(SetCard other) {
        if (!title.equals(other.title) || !floors.equals(other.floors) || lines.size() != other.lines.size()) {
            throw new IllegalArgumentException("the seed set " + title.id() + " is not the same in both");
        }
        List<LineCard> sums = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            sums.add(lines.get(i).plus(other.lines.get(i)));
        }
        return new SetCard(
                title,
                floors,
                Stream.concat(flaws.stream(), other.flaws.stream()).toList(),
                sums);
    }
}
