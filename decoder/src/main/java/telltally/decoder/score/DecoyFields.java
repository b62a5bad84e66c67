package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.channel.Strength;
import telltally.simulator.document.Fields;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.scenario.StrengthFields;

/** Reads the decoys of a seed set: an array of objects, each with its {@code kind}. */
final class DecoyFields {
    private static final long MILLISECOND_NANOS = 1_000_000L;
    private static final long HOUR_NANOS = 3_600_000_000_000L;

    private enum Kind {
        STEADY("steady"),
        RANDOM_EDGES("random-edges"),
        FOREIGN("foreign");

        private final String key;

        Kind(String key) {
            this.key = key;
        }
    }

    private DecoyFields() {}

    static SeedSource.Decoys read(Fields set, FormatFields formats) {
        int before = set.problems().count();
        List<Fields> entries = set.objects("decoys");
        if (entries.isEmpty() && set.problems().count() == before) {
            set.problem("decoys", "is empty; at least one was expected");
        }
        List<Decoy> kinds = new ArrayList<>();
        for (Fields each : entries) {
            one(each, formats).ifPresent(kinds::add);
            each.close();
        }
        return new SeedSource.Decoys(kinds);
    }

    private static Optional<Decoy> one(Fields entry, FormatFields formats) {
        int before = entry.problems().count();
        Kind kind = entry.choice("kind", List.of(Kind.values()), each -> each.key);
        if (entry.problems().count() > before) {
            entry.names();
            return Optional.empty();
        }
        return switch (kind) {
            case STEADY -> Optional.of(new Decoy.Steady(entry.whole("level", 0, 1) == 1, nanos(entry, "length_s")));
            case RANDOM_EDGES -> Optional.of(new Decoy.RandomEdges(nanos(entry, "mean_s"), nanos(entry, "length_s")));
            case FOREIGN -> foreign(entry, formats);
        };
    }

    private static Strength nanos(Fields entry, String name) {
        return StrengthFields.nanos(entry, name, MILLISECOND_NANOS, HOUR_NANOS);
    }

    /** What else the recipe says is not looked at while its format is wrong. */
    private static Optional<Decoy> foreign(Fields entry, FormatFields formats) {
        List<FlashFormat> format = formats.foreign(entry);
        if (format.isEmpty() || entry.problems().any()) {
            entry.names();
            return Optional.empty();
        }
        return Optional.of(new Decoy.Foreign(new MessageFields(entry).read(format)));
    }
}
