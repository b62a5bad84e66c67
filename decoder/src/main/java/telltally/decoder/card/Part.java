package telltally.decoder.card;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Which shards of a sweep are meant. Blocks of seeds go to shards by their index, so that every machine knows its own.
 *
 * @param of how many shards there are
 * @param shards those that are meant, counted from 1, ascending
 */
public record Part(int of, List<Integer> shards) {
    /** All there is. */
    public static final Part WHOLE = new Part(1, List.of(1));

    public Part {
        SortedSet<Integer> ascending = new TreeSet<>(shards);
        if (of < 1 || ascending.isEmpty() || ascending.first() < 1 || ascending.last() > of) {
            throw new IllegalArgumentException("no part: " + shards + " of " + of);
        }
        // What is complete is written in one way only, however many machines it took.
        boolean whole = ascending.size() == of;
        of = whole ? 1 : of;
        shards = whole ? List.of(1) : List.copyOf(ascending);
    }

    public boolean whole() {
        return of == 1;
    }

    /** @param index of a block among all blocks, from 0 */
    public boolean holds(long index) {
        return shards.contains((int) (index % of) + 1);
    }

    /** @throws IllegalArgumentException if they are not of one sweep, or share a shard */
    Part plus(Part other) {
        if (whole() || of != other.of) {
            throw new IllegalArgumentException(this + " and " + other + " are no parts of one run");
        }
        if (shards.stream().anyMatch(other.shards::contains)) {
            throw new IllegalArgumentException(this + " and " + other + " hold the same shard");
        }
        return new Part(
                of,
                IntStream.concat(
                                shards.stream().mapToInt(Integer::intValue),
                                other.shards.stream().mapToInt(Integer::intValue))
                        .boxed()
                        .toList());
    }

    @Override
    public String toString() {
        return whole() ? "the whole run" : "shard " + String.join("+", texts()) + " of " + of;
    }

    private List<String> texts() {
        return shards.stream().map(String::valueOf).toList();
    }
}
