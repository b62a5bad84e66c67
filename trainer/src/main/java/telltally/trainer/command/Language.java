package telltally.trainer.command;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.trainer.text.Texts;

/** A language as an option names it. */
final class Language {
    private Language() {}

    /**
     * @param option its short name; null where the option was not given
     * @throws ProblemException if the program does not speak it
     */
    static Optional<Locale> named(@Nullable String option) throws ProblemException {
        if (option == null) {
            return Optional.empty();
        }
        List<String> known = Texts.LANGUAGES.stream().map(Locale::getLanguage).toList();
        if (!known.contains(option)) {
            throw new ProblemException(Problem.of(
                    "--language", "is " + Problem.quoted(option) + "; expected " + String.join(" or ", known)));
        }
        return Optional.of(Locale.forLanguageTag(option));
    }
}
