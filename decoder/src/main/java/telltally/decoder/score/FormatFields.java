package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatReader;

/** Reads the formats of a seed set: by id, or as files that lie relative to the set. */
final class FormatFields {
    private static final String FILE = ".json";

    private final FormatCatalog catalog;
    private final NamedFiles files;

    FormatFields(FormatCatalog catalog, NamedFiles files) {
        this.catalog = catalog;
        this.files = files;
    }

    /** The candidates among which messages are drawn: {@code "formats": ["pair-even", "my-format.json"]}. */
    List<FlashFormat> candidates(Fields messages) {
        int before = messages.problems().count();
        List<PlacedText> names = messages.texts("formats");
        if (names.isEmpty() && messages.problems().count() == before) {
            messages.problem("formats", "is empty; at least one was expected");
        }
        List<FlashFormat> found = new ArrayList<>();
        for (PlacedText named : names) {
            Optional<FlashFormat> format = named(named);
            if (format.isPresent()
                    && found.stream()
                            .anyMatch(each -> each.id().equals(format.get().id()))) {
                files.tell(named, Problem.quoted(named.text()) + " stands twice; each format was expected once");
            }
            format.ifPresent(found::add);
        }
        return found;
    }

    private Optional<FlashFormat> named(PlacedText named) {
        if (named.text().endsWith(FILE)) {
            return files.read(named, TextFile.DOCUMENT_BYTES, (source, path) -> FormatReader.read(source));
        }
        Optional<FlashFormat> format = catalog.find(named.text());
        if (format.isEmpty()) {
            files.tell(
                    named,
                    "no format is called " + Problem.quoted(named.text()) + "; expected "
                            + String.join(", ", catalog.ids()) + " or a file ending in " + FILE);
        }
        return format;
    }

    /** The format of a decoy, as an object or a file: one that is not among the candidates. */
    List<FlashFormat> foreign(Fields decoy) {
        Optional<FlashFormat> format = decoy.isObject("format")
                ? decoy.object("format").map(FormatReader::read)
                : files.read(
                        new PlacedText(decoy.text("format"), decoy.place("format"), decoy.pointer("format")),
                        TextFile.DOCUMENT_BYTES,
                        (source, path) -> FormatReader.read(source));
        if (format.flatMap(each -> catalog.find(each.id())).isPresent()) {
            decoy.problem("format", "has the id of a format that ships; one that no decoder is told of was expected");
        }
        return format.map(List::of).orElse(List.of());
    }
}
