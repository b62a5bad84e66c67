package telltally.trainer.drill;

import java.util.List;
import telltally.trainer.text.Texts;

/**
 * Something to be said to the learner, in whatever language.
 *
 * @param key of a text, {@code area.name}
 * @param arguments what stands in the text's places: numbers, codes, or texts of their own ({@link Said})
 */
public record Said(String key, List<Object> arguments) {
    public Said {
        arguments = List.copyOf(arguments);
    }

    /** In the language of the texts. */
    public String in(Texts texts) {
        return texts.of(
                key,
                arguments.stream()
                        .map(each -> each instanceof Said said ? said.in(texts) : each)
                        .toArray());
    }

    public static Said of(String key, Object... arguments) {
        return new Said(key, List.of(arguments));
    }
}
