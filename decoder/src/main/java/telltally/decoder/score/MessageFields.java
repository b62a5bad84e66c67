package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.format.FlashFormat;

/** Reads a recipe of random messages. What no format of the recipe has a use for is left out of the file. */
final class MessageFields {
    private static final int MOST_CODES = 50;
    private static final int MOST_CYLINDERS = 12;
    private static final int MOST_LOOPS = 20;

    private final Fields fields;
    private final int problemsBefore;
    private boolean formatsKnown;

    MessageFields(Fields fields) {
        this.fields = fields;
        this.problemsBefore = fields.problems().count();
    }

    /**
     * Only to be used if there was no problem.
     *
     * @param formats read before, one or more unless there was a problem
     */
    MessageRecipe read(List<FlashFormat> formats) {
        formatsKnown = !formats.isEmpty();
        List<SessionKind> sessions =
                sessions(formats.stream().anyMatch(each -> each.sessions().isPresent()));
        WholeRange codes = range("codes", 0, MOST_CODES);
        checkCodes(formats, codes);
        WholeRange cylinders = cylinders(sessions.contains(SessionKind.RUNNING));
        WholeRange loops = optionalRange(
                "loops",
                formats.stream().anyMatch(each -> each.repeats().loops()),
                "none of the formats loops",
                1,
                MOST_LOOPS);
        fields.close();
        return new MessageRecipe(formats, sessions, codes, cylinders, loops);
    }

    private List<SessionKind> sessions(boolean wanted) {
        if (!fields.has("sessions") && !wanted) {
            return List.of();
        }
        List<SessionKind> found = new ArrayList<>();
        for (PlacedText named : filled("sessions")) {
            Optional<SessionKind> kind = Stream.of(SessionKind.values())
                    .filter(each -> each.key().equals(named.text()))
                    .findFirst();
            if (kind.isEmpty()) {
                tell(
                        named,
                        "is " + Problem.quoted(named.text()) + "; expected \"key-on\" or \"running\" or \"balance\"");
            } else if (found.contains(kind.get())) {
                tell(named, Problem.quoted(named.text()) + " stands twice; each session was expected once");
            }
            kind.ifPresent(found::add);
        }
        if (!wanted) {
            tellMeaningless("sessions", "none of the formats has segments");
        }
        return found;
    }

    /** Lists are drawn until they hold different codes, so that a format needs twice as many as a list. */
    private void checkCodes(List<FlashFormat> formats, WholeRange codes) {
        for (FlashFormat format : formats) {
            int listed = Math.min(codes.to(), format.repeats().mostCodes());
            int most = new LegalCodes(format).count() / 2;
            if (listed > most) {
                fields.problem(
                        "codes",
                        "asks for " + codes.to() + " codes in a list; expected at most " + most
                                + ", half of what the format " + format.id() + " can send");
            }
        }
    }

    private WholeRange cylinders(boolean wanted) {
        WholeRange cylinders = optionalRange("cylinders", wanted, "no engine runs", 2, MOST_CYLINDERS);
        if (cylinders.from() % 2 != 0 || cylinders.to() % 2 != 0) {
            fields.problem("cylinders", "holds an odd number; a running test opens with half the number of cylinders");
        }
        return cylinders;
    }

    private WholeRange optionalRange(String name, boolean wanted, String whyNot, int least, int most) {
        if (wanted) {
            return range(name, least, most);
        }
        if (fields.has(name)) {
            tellMeaningless(name, whyNot);
            return range(name, least, most);
        }
        return new WholeRange(least, least);
    }

    /** Only where the rest is right: a format with its name misspelt may have been the one that gave it a meaning. */
    private void tellMeaningless(String name, String why) {
        if (formatsKnown && fields.problems().count() == problemsBefore) {
            fields.problem(name, "has no meaning here; " + why);
        }
    }

    private WholeRange range(String name, int least, int most) {
        Optional<Fields> range = fields.object(name);
        if (range.isEmpty()) {
            return new WholeRange(least, least);
        }
        int before = fields.problems().count();
        int from = range.get().whole("from", least, most);
        int to = range.get().whole("to", least, most);
        range.get().close();
        if (to < from && fields.problems().count() == before) {
            range.get().problem("to", "is " + to + "; expected at least " + from + ", where \"from\" begins");
        }
        return new WholeRange(from, Math.max(from, to));
    }

    private List<PlacedText> filled(String name) {
        int before = fields.problems().count();
        List<PlacedText> texts = fields.texts(name);
        if (texts.isEmpty() && fields.problems().count() == before) {
            fields.problem(name, "is empty; at least one was expected");
        }
        return texts;
    }

    private void tell(PlacedText at, String text) {
        fields.problems().add(at.place(), at.pointer(), text);
    }
}
