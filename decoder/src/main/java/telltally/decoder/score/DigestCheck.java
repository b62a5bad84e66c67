package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;

/** Whether the cases of a seed set still come out as they did when its digests were drawn. */
public final class DigestCheck {
    private DigestCheck() {}

    /** A line for each block that moved, in order; empty where none did. */
    public static List<String> moved(SeedSet set) {
        List<String> lines = new ArrayList<>();
        for (SeedBlock block : set.blocks()) {
            String frozen = set.digests().sha256().get(block.number() - 1);
            if (!CaseDigest.of(set, block).equals(frozen)) {
                lines.add("seed set " + set.id() + ", " + block + ": " + reason(set));
            }
        }
        return lines;
    }

    private static String reason(SeedSet set) {
        return set.source() instanceof SeedSource.Recordings
                ? "a frozen recording or its truth changed: undo (where it was changed on purpose, draw the digests anew)"
                : "generated output changed: raise the generator version or undo"
                        + " (where a lesson or a format was changed on purpose, draw the digests anew)";
    }
}
