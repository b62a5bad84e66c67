package telltally.trainer.logbook;

import java.text.Normalizer;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/**
 * Somebody who practises, by the name they chose.
 *
 * @param id within one logbook
 */
public record Learner(long id, String name, Instant since) {
    public static final int LONGEST_NAME = 60;

    /** What a name must not be. */
    public enum NameFault {
        EMPTY("is empty; expected a name"),
        TOO_LONG("is longer than " + LONGEST_NAME + " characters"),
        UNPRINTABLE("has characters in it that cannot be seen"),
        /** Upper and lower case make no difference. */
        TAKEN("is taken by another learner");

        private final String sentence;

        NameFault(String sentence) {
            this.sentence = sentence;
        }

        public String sentence() {
            return sentence;
        }
    }

    /** A name as it is kept: no blanks around it, one blank where several were, letters composed. */
    public static String tidied(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).strip().replaceAll("\\s+", " ");
    }

    /** What is wrong with a name, apart from being taken. */
    public static Optional<NameFault> fault(String name) {
        String tidy = tidied(name);
        if (tidy.isEmpty()) {
            return Optional.of(NameFault.EMPTY);
        }
        if (tidy.codePointCount(0, tidy.length()) > LONGEST_NAME) {
            return Optional.of(NameFault.TOO_LONG);
        }
        return tidy.codePoints().anyMatch(Learner::unprintable) ? Optional.of(NameFault.UNPRINTABLE) : Optional.empty();
    }

    /** Names with the same key are the same name. */
    static String key(String name) {
        return Normalizer.normalize(tidied(name), Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    }

    private static boolean unprintable(int letter) {
        int type = Character.getType(letter);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.UNASSIGNED
                || type == Character.PRIVATE_USE;
    }
}
