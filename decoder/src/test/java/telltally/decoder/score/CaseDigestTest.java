package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.PulseTrain;

class CaseDigestTest {
    private static final FlashFormat FORMAT =
            FormatCatalog.shipped().find("pair-even").orElseThrow();

    private static SeedCase sample(long seed, PulseTrain lamp, PulseTrain pin, String code) {
        Map<Segment, List<String>> codes = Map.of(Segment.STORED, List.of("11"), Segment.PRESENT, List.of(code));
        return new SeedCase(
                seed,
                "sample",
                Optional.of(FORMAT),
                lamp,
                pin,
                new Truth("pair-even", codes, List.of()),
                ImpairmentChain.of());
    }

    private final PulseTrain lamp = PulseTrain.of(false, 9_000_000_000L, 1_000_000_000L, 1_500_000_000L);
    private final PulseTrain pin = PulseTrain.of(true, 9_000_000_000L);

    /**
     * Checked against another implementation of SHA-256 over bytes that were put together by another program:
     *
     * <pre>
     * python3 -c 'import hashlib, struct
     * n = lambda x: struct.pack(">q", x)
     * t = lambda s: n(len(s)) + s
     * print(hashlib.sha256(n(-7) + t(b"pair-even") + n(2)
     *   + t(b"present") + n(1) + t(b"34") + t(b"stored") + n(1) + t(b"11")
     *   + n(0) + n(2) + n(1000000000) + n(1500000000) + n(9000000000)
     *   + n(1) + n(0) + n(9000000000)).hexdigest())'
     * </pre>
     */
    @Test
    void the_canonical_form_is_the_documented_one() {
        assertThat(CaseDigest.of(List.of(sample(-7, lamp, pin, "34"))))
                .isEqualTo("957da803b5c45c4645ffa72726a641fec943c2adb0be88d69dcbf7169ec6beb8");
    }

    @Test
    void whatever_moves_moves_the_digest() {
        List<SeedCase> all = List.of(
                sample(-7, lamp, pin, "34"),
                sample(-6, lamp, pin, "34"),
                sample(-7, lamp, pin, "35"),
                sample(-7, lamp.inverted(), pin, "34"),
                sample(-7, lamp, pin.inverted(), "34"),
                sample(-7, pin, lamp, "34"),
                sample(-7, PulseTrain.of(false, 9_000_000_000L, 1_000_000_000L, 1_500_000_001L), pin, "34"),
                sample(-7, PulseTrain.of(false, 9_000_000_001L, 1_000_000_000L, 1_500_000_000L), pin, "34"));
        assertThat(all.stream().map(each -> CaseDigest.of(List.of(each)))).doesNotHaveDuplicates();
    }

    @Test
    void the_order_of_the_cases_counts() {
        SeedCase one = sample(1, lamp, pin, "34");
        SeedCase other = sample(2, lamp, pin, "34");
        assertThat(CaseDigest.of(List.of(one, other))).isNotEqualTo(CaseDigest.of(List.of(other, one)));
    }
}
