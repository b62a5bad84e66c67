package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import telltally.decoder.lattice.PracticeSessions.Session;
import telltally.decoder.lattice.PracticeSessions.Spoiler;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;

class LatticeDecoderTest {
    private static final int SESSIONS = 6;

    private final List<FlashFormat> formats = FormatCatalog.shipped().all();
    private final LatticeDecoder decoder = new LatticeDecoder();

    /** The least number of sessions of all formats together that are read wholly right, told no format. */
    private static final Map<Spoiler, Integer> FLOORS = new EnumMap<>(Map.of(
            Spoiler.CLEAN, 42,
            Spoiler.BOUNCE, 42,
            Spoiler.FRAMES, 42,
            Spoiler.JITTER, 42,
            Spoiler.WIRE, 42,
            Spoiler.GHOSTS, 41,
            Spoiler.MISSED, 39,
            Spoiler.MIXED, 40));

    @ParameterizedTest
    @EnumSource(
            value = Spoiler.class,
            names = {"CLEAN", "BOUNCE", "FRAMES", "JITTER", "WIRE", "GHOSTS", "MISSED", "MIXED"})
    void nearly_every_session_is_read_wholly_right_without_being_told_its_format(Spoiler spoiler) {
        int right = 0;
        for (FlashFormat format : formats) {
            for (int seed = 0; seed < SESSIONS; seed++) {
                Session session = PracticeSessions.session(format, spoiler, 7000 + seed);
                right += decoder.decode(session.train(), formats).codes().equals(session.codes()) ? 1 : 0;
            }
        }
        assertThat(right).isGreaterThanOrEqualTo(FLOORS.get(spoiler));
    }
}
