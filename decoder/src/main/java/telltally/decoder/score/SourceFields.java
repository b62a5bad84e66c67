package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.document.Fields;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;

/** Reads what the cases of a seed set are recordings of: one of four members says it. */
final class SourceFields {
    static final String RECORDINGS = "recordings";

    private static final List<String> NAMES = List.of("scenarios", "messages", "decoys", RECORDINGS);

    private final Fields set;
    private final NamedFiles files;
    private final FormatCatalog catalog = FormatCatalog.shipped();

    SourceFields(Fields set, NamedFiles files) {
        this.set = set;
        this.files = files;
    }

    /** Only to be used if there was no problem. */
    SeedSource read() {
        if (NAMES.stream().filter(set::has).count() != 1) {
            set.problem("one of \"scenarios\" (lessons), \"messages\" (a recipe of random ones), \"decoys\" (trains"
                    + " without codes) and \"recordings\" (frozen pulse trains) was expected");
        }
        List<SeedSource> found = new ArrayList<>();
        for (String name : NAMES) {
            if (set.has(name)) {
                found.add(read(name));
            }
        }
        set.skip(NAMES.toArray(String[]::new));
        return found.isEmpty() ? new SeedSource.Scenarios(List.of()) : found.get(0);
    }

    private SeedSource read(String name) {
        return switch (name) {
            case "scenarios" -> ScenarioFields.read(set, files);
            case "messages" -> new SeedSource.Messages(messages());
            case "decoys" -> DecoyFields.read(set, new FormatFields(catalog, files));
            default -> new RecordingFields(catalog, files).read(set);
        };
    }

    private MessageRecipe messages() {
        Optional<Fields> recipe = set.object("messages");
        if (recipe.isEmpty()) {
            return MessageRecipe.NONE;
        }
        MessageFields fields = new MessageFields(recipe.get());
        List<FlashFormat> formats = new FormatFields(catalog, files).candidates(recipe.get());
        return fields.read(formats);
    }
}
