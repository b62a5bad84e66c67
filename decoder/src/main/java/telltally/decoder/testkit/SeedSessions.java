package telltally.decoder.testkit;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedBlock;
import telltally.decoder.score.SeedCases;
import telltally.decoder.score.SeedLibrary;
import telltally.decoder.score.SeedLibrary.SeedFile;
import telltally.decoder.score.SeedSet;
import telltally.simulator.document.ProblemException;

/**
 * The recordings of seed sets, made when they are asked for.
 *
 * @param sets whose recordings they are
 * @param lines where they are listened to
 * @param atMost how many seeds of each set; its first ones
 */
public record SeedSessions(List<SeedSet> sets, List<Line> lines, int atMost) {
    public SeedSessions {
        sets = List.copyOf(sets);
        lines = List.copyOf(lines);
    }

    /** Every recording of these sets, on the lamp and on the pin. */
    public static SeedSessions of(List<SeedSet> sets) {
        return new SeedSessions(sets, List.of(Line.values()), Integer.MAX_VALUE);
    }

    /** Every recording of the sets that ship. */
    public static SeedSessions shipped() {
        return of(SeedLibrary.shipped());
    }

    /**
     * Every recording of the sets in these files and folders.
     *
     * @throws ProblemException with every problem of every file
     */
    public static SeedSessions in(List<Path> places) throws ProblemException {
        return of(SeedLibrary.read(places).stream().map(SeedFile::set).toList());
    }

    /**
     * Only the sets of these ids; of all where none is named.
     *
     * @throws IllegalArgumentException if there is no set of such an id
     */
    public SeedSessions named(List<String> ids) {
        List<String> known = sets.stream().map(SeedSet::id).toList();
        if (!known.containsAll(ids)) {
            throw new IllegalArgumentException("among " + ids + " is one that no seed set has; there are " + known);
        }
        List<SeedSet> wanted = sets.stream()
                .filter(set -> ids.isEmpty() || ids.contains(set.id()))
                .toList();
        return new SeedSessions(wanted, lines, atMost);
    }

    public SeedSessions on(Line... only) {
        return new SeedSessions(sets, List.of(only), atMost);
    }

    public SeedSessions first(int seeds) {
        return new SeedSessions(sets, lines, seeds);
    }

    public Stream<SeedSession> stream() {
        return sets.stream().flatMap(this::of);
    }

    private Stream<SeedSession> of(SeedSet set) {
        SeedCases cases = new SeedCases(set);
        LongStream seeds = set.blocks().stream()
                .map(SeedBlock::seeds)
                .flatMapToLong(block -> block.stream().mapToLong(Long::longValue));
        return seeds.limit(atMost)
                .boxed()
                .flatMap(seed -> cases.of(seed).stream())
                .flatMap(sent -> lines.stream().map(line -> new SeedSession(set.id(), line, sent)));
    }
}
