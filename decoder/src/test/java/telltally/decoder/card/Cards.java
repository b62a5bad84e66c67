package telltally.decoder.card;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import telltally.decoder.card.run.Extent;
import telltally.decoder.card.run.RunOrder;
import telltally.decoder.card.run.ScoreRun;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.InProcess;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSetReader;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** Short runs and odd decoders for the tests of score cards. */
public final class Cards {
    /** More than one block of the set, and not all of its seeds. */
    private static final Extent SOME = new Extent(3, 20);

    private Cards() {}

    /** Reads as the plain decoder does, but loses the last code of every list that has two. */
    public static final class Forgetful implements Decoder {
        private final Decoder plain = new PlainDecoder();

        @Override
        public String id() {
            return "forgetful";
        }

        @Override
        public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
            Reading whole = plain.decode(train, candidates);
            List<Group> kept = whole.groups().stream()
                    .filter(group -> whole.codes()
                                    .getOrDefault(group.segment(), List.of())
                                    .indexOf(group.digits())
                            != 1)
                    .toList();
            return new Reading(whole.format(), Reading.merged(kept), kept, whole.warnings());
        }
    }

    /** Throws on every train with an odd number of edge pairs. */
    public static final class Brittle implements Decoder {
        @Override
        public String id() {
            return "brittle";
        }

        @Override
        public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
            if (train.edgeCount() / 2 % 2 == 1) {
                throw new IllegalStateException("odd");
            }
            return new PlainDecoder().decode(train, candidates);
        }
    }

    public static List<SeedSet> sets() throws ProblemException {
        Path seeds = Path.of("..", "seeds");
        return List.of(
                SeedSetReader.read(seeds.resolve("messages-clock-jitter-bounce.json")),
                SeedSetReader.read(seeds.resolve("messages-clean.json")));
    }

    public static RunOrder order(Part part, int threads) throws ProblemException {
        return new RunOrder(sets(), SOME, List.of(Line.values()), false, true, part, threads);
    }

    public static ScoreCard forgetful(Part part, int threads) throws ProblemException {
        return run(order(part, threads), new InProcess("forgetful", Forgetful::new));
    }

    /** The same card for every test that only looks at it. */
    public static ScoreCard plain() {
        return Made.PLAIN;
    }

    /** The same card for every test that only looks at it. */
    public static ScoreCard forgetful() {
        return Made.FORGETFUL;
    }

    private static final class Made {
        private static final ScoreCard PLAIN = made(new InProcess("plain", PlainDecoder::new));
        private static final ScoreCard FORGETFUL = made(new InProcess("forgetful", Forgetful::new));

        private static ScoreCard made(Entrant entrant) {
            try {
                return run(order(Part.WHOLE, 2), entrant);
            } catch (ProblemException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    public static ScoreCard run(RunOrder order, Entrant entrant) {
        return ScoreRun.of(order, entrant, List.of("--decoder", entrant.id()), ScoreRun.Progress.NONE)
                .card();
    }

    /** Every line of every set. */
    public static Stream<LineCard> lines(ScoreCard card) {
        return card.sets().stream().flatMap(set -> set.lines().stream());
    }
}
