package telltally.decoder.card.run;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.SeedCase;
import telltally.decoder.score.SeedCases;
import telltally.decoder.score.SeedSet;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.signal.PulseTrain;

/**
 * Whether a decoder answers anything at all, tried before a run with sessions from all over the sweep. Who fails ten of
 * them and answers none before is not asked again, so that a program that always hangs does not take its time in every
 * block. What is tried does not depend on the shard, so all shards come to the same.
 */
final class Trial {
    private static final int MOST_SESSIONS = 100;
    private static final int FAILURES = 10;

    private final RunOrder order;
    private final boolean told;
    private final FormatCatalog formats;

    /** @param told whether the decoder is told each session's format */
    Trial(RunOrder order, boolean told, FormatCatalog formats) {
        this.order = order;
        this.told = told;
        this.formats = formats;
    }

    private record Session(PulseTrain train, List<FlashFormat> candidates) {}

    /** What became of the last of them, where the decoder failed them all. */
    Optional<Outcome.Failed> failureOf(Entrant entrant) {
        int failures = 0;
        for (Session each : (Iterable<Session>) sessions()::iterator) {
            Outcome outcome = outcome(entrant, each);
            if (outcome instanceof Outcome.Failed failed) {
                failures++;
                if (failures == FAILURES) {
                    return Optional.of(failed);
                }
            } else if (!isUnreadable(((Outcome.Read) outcome).reading())) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static Outcome outcome(Entrant entrant, Session session) {
        try (Entrant.Reader reader = entrant.open()) {
            return reader.read(session.train(), session.candidates());
        }
    }

    /** Who is not asked about a format shows nothing by that. */
    private static boolean isUnreadable(Reading reading) {
        return reading.warnings().stream().anyMatch(warning -> warning.kind() == WarningKind.NO_FORMAT);
    }

    /** Some of all sessions, evenly. One that cannot be made is left to the run, which tells it. */
    private Stream<Session> sessions() {
        long seeds = order.sets().stream().mapToLong(set -> set.seeds().count()).sum();
        long step = Math.max(1, seeds / MOST_SESSIONS);
        return LongStream.iterate(0, place -> place < seeds, place -> place + step)
                .boxed()
                .flatMap(place -> session(place).stream());
    }

    /** @param place counts the seeds of one set after the other */
    private Optional<Session> session(long place) {
        long index = place;
        for (SeedSet set : order.sets()) {
            if (index < set.seeds().count()) {
                return session(set, set.seeds().from() + index);
            }
            index -= set.seeds().count();
        }
        throw new IllegalArgumentException("there is no seed " + place);
    }

    private Optional<Session> session(SeedSet set, long seed) {
        Optional<Line> line =
                order.lines().stream().filter(set.lines()::contains).findFirst();
        try {
            SeedCase given = new SeedCases(set).of(seed).get(0);
            return line.map(each -> new Session(each.train(given), given.candidates(set.candidates(formats), told)));
        } catch (RuntimeException e) {
            return Optional.empty();
        }
    }
}
