package telltally.decoder.score;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import telltally.simulator.signal.PulseTrain;

/**
 * SHA-256 (FIPS 180-4) over cases in a canonical form. Numbers are 64 bits, most significant byte first; a text is its
 * length in bytes, then UTF-8. A case is its seed, the format's id, the number of segments, of each segment its key, the
 * number of its codes and the codes; then lamp and pin, each as the level at the start (1 is lit), the number of edges,
 * the edges and the end, in nanoseconds.
 */
public final class CaseDigest {
    private final MessageDigest digest;

    public CaseDigest() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** In small hexadecimal digits. */
    static String of(Iterable<SeedCase> cases) {
        CaseDigest all = new CaseDigest();
        cases.forEach(all::add);
        return all.hex();
    }

    /** Ends the digest: in small hexadecimal digits. Once only. */
    public String hex() {
        return HexFormat.of().formatHex(digest.digest());
    }

    /** The digest of all cases of a block. */
    static String of(SeedSet set, SeedBlock block) {
        SeedCases cases = new SeedCases(set);
        return of(() ->
                block.seeds().stream().flatMap(seed -> cases.of(seed).stream()).iterator());
    }

    public void add(SeedCase each) {
        number(each.seed());
        text(each.truth().formatId());
        number(each.truth().codes().size());
        // In the order of the segments' declaration, which an EnumMap keeps.
        each.truth().codes().forEach((segment, codes) -> {
            text(segment.key());
            number(codes.size());
            codes.forEach(this::text);
        });
        List.of(each.lamp(), each.pin()).forEach(this::train);
    }

    private void train(PulseTrain train) {
        number(train.litAtStart() ? 1 : 0);
        number(train.edgeCount());
        for (int i = 0; i < train.edgeCount(); i++) {
            number(train.edgeNanos(i));
        }
        number(train.endNanos());
    }

    private void text(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        number(bytes.length);
        digest.update(bytes);
    }

    private void number(long number) {
        digest.update(ByteBuffer.allocate(Long.BYTES).putLong(number).array());
    }
}
