package telltally.decoder.outside;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import telltally.decoder.score.Outcome.Failure;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;

/**
 * What a program says that it can do.
 *
 * @param id by which score cards name it
 * @param formats the ids of those that it reads; empty where it reads any
 * @param formatTold whether it has to be told the format
 * @param probabilities whether it gives any
 * @param definitions whether it wants the rules of the formats, not only their ids
 */
record Capabilities(
        String id, Optional<Set<String>> formats, boolean formatTold, boolean probabilities, boolean definitions) {
    static final String SCHEMA = "telltally/capabilities/1";

    /** @throws Misbehaviour if the line is nothing of the kind */
    static Capabilities read(byte[] line) throws Misbehaviour {
        try {
            TextFile source = TextFile.decode("capabilities", line);
            Problems problems = new Problems(source.name());
            Fields fields = Fields.of(source, problems);
            fields.schema(SCHEMA);
            Capabilities read = new Capabilities(
                    fields.id("id"),
                    fields.has("formats") ? Optional.of(ids(fields.texts("formats"))) : Optional.empty(),
                    fields.flag("format_told", false),
                    fields.flag("probabilities", false),
                    fields.flag("definitions", false));
            problems.throwIfAny();
            return read;
        } catch (ProblemException e) {
            throw new Misbehaviour(Failure.RUBBISH, e.problems().get(0).toString());
        }
    }

    private static Set<String> ids(List<PlacedText> texts) {
        return texts.stream().map(PlacedText::text).collect(Collectors.toUnmodifiableSet());
    }

    boolean reads(FlashFormat format) {
        return formats.isEmpty() || formats.get().contains(format.id());
    }
}
