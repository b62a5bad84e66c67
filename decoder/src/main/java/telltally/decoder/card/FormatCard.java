package telltally.decoder.card;

import java.util.Optional;

/**
 * The sessions that were sent in one format.
 *
 * @param format its id, or {@link #NOTHING_SENT}
 * @param plain what the plain decoder made of the same sessions: the floor of the trade
 * @param told what the lattice made of them that was told the format: about the most that there is to be had
 */
public record FormatCard(String format, Tally decoder, Optional<Counts> plain, Optional<Counts> told) {
    /** Sessions in which there was nothing to be read. In brackets: no format can be called so. */
    public static final String NOTHING_SENT = "(nothing)";

    /** Whether what a session was taken for is what it was. */
    public boolean rightly(String readAs) {
        return readAs.equals(format.equals(NOTHING_SENT) ? Tally.NO_FORMAT : format);
    }

    public FormatCard plus(FormatCard other) {
        return new FormatCard(format, decoder.plus(other.decoder), sum(plain, other.plain), sum(told, other.told));
    }

    private static Optional<Counts> sum(Optional<Counts> one, Optional<Counts> other) {
        return one.isPresent() && other.isPresent() ? Optional.of(one.get().plus(other.get())) : one.or(() -> other);
    }
}
