package telltally.decoder.card;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.BitSet;
import java.util.List;

/** Which cases of a set came out right, one bit each: what a later run is compared with, case by case. */
public final class RightCases {
    private static final int PIECE_BYTES = 3_000;

    private final int cases;
    private final BitSet right;

    /** @param right counted from 0, below the number of cases */
    public RightCases(int cases, BitSet right) {
        if (cases < 0 || right.length() > cases) {
            throw new IllegalArgumentException(cases + " cases, the last one right is " + (right.length() - 1));
        }
        this.cases = cases;
        this.right = (BitSet) right.clone();
    }

    public int cases() {
        return cases;
    }

    public boolean right(int index) {
        return right.get(index);
    }

    public int count() {
        return right.cardinality();
    }

    /** Those right in either; of shards, each of which knows its own cases only. */
    RightCases or(RightCases other) {
        if (cases != other.cases) {
            throw new IllegalArgumentException(cases + " cases and " + other.cases);
        }
        BitSet both = (BitSet) right.clone();
        both.or(other.right);
        return new RightCases(cases, both);
    }

    /** How many are right here and not there. */
    public int rightHereOnly(RightCases there) {
        BitSet only = (BitSet) right.clone();
        only.andNot(there.right);
        return only.cardinality();
    }

    /**
     * Base64 (RFC 4648) of the bits, eight to a byte, the lowest bit first; in pieces of {@value #PIECE_BYTES} bytes, since
     * readers of JSON limit how long one text may be.
     */
    public List<String> texts() {
        byte[] bytes = Arrays.copyOf(right.toByteArray(), bytes(cases));
        List<String> pieces = new ArrayList<>();
        for (int from = 0; from < bytes.length; from += PIECE_BYTES) {
            pieces.add(Base64.getEncoder()
                    .encodeToString(Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + PIECE_BYTES))));
        }
        return pieces;
    }

    /** @throws IllegalArgumentException if the texts are no Base64 of so many bits */
    public static RightCases of(int cases, List<String> texts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        texts.forEach(text -> bytes.writeBytes(Base64.getDecoder().decode(text)));
        if (bytes.size() != bytes(cases)) {
            throw new IllegalArgumentException("holds " + bytes.size() + " bytes; expected " + bytes(cases));
        }
        return new RightCases(cases, BitSet.valueOf(bytes.toByteArray()));
    }

    private static int bytes(int cases) {
        return (cases + 7) / 8;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RightCases that && cases == that.cases && right.equals(that.right);
    }

    @Override
    public int hashCode() {
        return 31 * cases + right.hashCode();
    }

    @Override
    public String toString() {
        return count() + " of " + cases + " cases right";
    }
}
