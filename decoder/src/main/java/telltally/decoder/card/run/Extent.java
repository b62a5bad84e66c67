package telltally.decoder.card.run;

import java.util.List;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSource;

/**
 * How many seeds of each set are run: a multiple of its own number, so that sets keep their weights. Seeds beyond the own
 * number follow on from the last one.
 *
 * @param times of the multiple
 * @param per of the multiple: 3 for 2 is one and a half times as many
 */
public record Extent(long times, long per) {
    /** Each set's own seeds, and those that it names one by one. */
    public static final Extent OWN = new Extent(1, 1);

    private static final int MOST_CASES = 100_000_000;

    public Extent {
        if (times < 1 || per < 1) {
            throw new IllegalArgumentException(times + " for " + per);
        }
    }

    /**
     * As many as it takes for so many sessions in all sets together; a few more where it does not divide.
     *
     * @param lines where the decoder listens
     */
    public static Extent sessions(long sessions, List<SeedSet> sets, List<Line> lines) {
        long own = 0;
        for (SeedSet set : sets) {
            long heard = lines.stream().filter(set.lines()::contains).count();
            own += heard * set.seeds().count() * casesPerSeed(set);
        }
        return new Extent(sessions, Math.max(1, own));
    }

    /** The set as it is run: itself, or with another number of seeds. */
    SeedSet of(SeedSet set) {
        long wanted = (Math.multiplyExact(set.seeds().count(), times) + per - 1) / per;
        long room = Math.min(
                MOST_CASES / casesPerSeed(set), Long.MAX_VALUE - set.seeds().from() - 1);
        int seeds = (int) Math.min(wanted, room);
        return seeds == set.seeds().count() ? set : set.withCount(seeds);
    }

    static int casesPerSeed(SeedSet set) {
        return set.source() instanceof SeedSource.Scenarios lessons
                ? lessons.scenarios().size()
                : 1;
    }
}
