package telltally.decoder.testkit;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.score.Score;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;

/** What a decoder must do, as errors that print the timeline of what was sent beside what was read. */
public final class DecoderAssertions {
    private DecoderAssertions() {}

    /**
     * The decoder, told the format, reads exactly what was sent. A session whose right answer is nothing is read among
     * all formats that ship.
     *
     * @throws AssertionError if it does not
     */
    public static void assertReadsTold(Decoder decoder, Session session) {
        assertReads(decoder, session, told(session));
    }

    /**
     * The decoder reads exactly what was sent, among several formats.
     *
     * @throws AssertionError if it does not
     */
    public static void assertReads(Decoder decoder, Session session, List<FlashFormat> candidates) {
        Reading reading = decoder.decode(session.train(), candidates);
        if (!Score.of(session.truth(), reading).perfect()) {
            throw new AssertionError(
                    decoder.id() + " read something else than was sent\n" + new TextTimeline(session, reading).text());
        }
    }

    /**
     * The decoder, told the format, reads at least a share of the sessions without a mistake.
     *
     * @param least a share, 0 to 1
     * @throws AssertionError if it reads fewer; with the first session that it misread, or if there is no session
     */
    public static void assertReadsTold(Decoder decoder, Stream<? extends Session> sessions, double least) {
        int all = 0;
        int right = 0;
        AssertionError first = null;
        for (Session session : (Iterable<Session>) sessions.<Session>map(each -> each)::iterator) {
            AssertionError error = error(decoder, session);
            all++;
            right += error == null ? 1 : 0;
            first = first == null ? error : first;
        }
        if (all == 0 || right < least * all) {
            throw new AssertionError(
                    decoder.id() + " read " + right + " of " + all + " sessions without a mistake; at least a share of "
                            + least + " was expected",
                    first);
        }
    }

    private static @Nullable AssertionError error(Decoder decoder, Session session) {
        try {
            assertReadsTold(decoder, session);
            return null;
        } catch (AssertionError e) {
            return e;
        }
    }

    private static List<FlashFormat> told(Session session) {
        return session.format()
                .map(List::of)
                .orElseGet(() -> FormatCatalog.shipped().all());
    }
}
