package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.decoder.score.SeedSource.Frozen;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.recording.Truth;
import telltally.simulator.recording.TruthReader;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.EdgeCsv;

/** Reads the frozen recordings of a seed set, each with its truth beside. */
final class RecordingFields {
    private final NamedFiles files;
    private final FormatCatalog catalog;

    RecordingFields(FormatCatalog catalog, NamedFiles files) {
        this.catalog = catalog;
        this.files = files;
    }

    SeedSource.Recordings read(Fields set) {
        int before = set.problems().count();
        List<Fields> entries = set.objects("recordings");
        if (entries.isEmpty() && set.problems().count() == before) {
            set.problem("recordings", "is empty; at least one was expected");
        }
        List<Frozen> frozen = new ArrayList<>();
        for (Fields each : entries) {
            one(each).ifPresent(frozen::add);
            each.close();
        }
        return new SeedSource.Recordings(frozen);
    }

    private Optional<Frozen> one(Fields entry) {
        PlacedText edges = placed(entry, "edges");
        Optional<PulseTrain> train = named(edges, TextFile.RECORDING_BYTES, (source, path) -> EdgeCsv.read(source));
        Optional<Truth> truth =
                named(placed(entry, "truth"), TextFile.DOCUMENT_BYTES, (source, path) -> TruthReader.read(source));
        String why = entry.text("why");
        if (train.isEmpty() || truth.isEmpty()) {
            return Optional.empty();
        }
        String id = truth.get().formatId();
        Optional<FlashFormat> format = catalog.find(id);
        if (format.isEmpty() && !id.equals(Truth.NO_FORMAT)) {
            entry.problem(
                    "truth",
                    "is of the format " + Problem.quoted(id) + "; expected " + String.join(", ", catalog.ids()) + " or "
                            + Truth.NO_FORMAT);
        }
        return Optional.of(new Frozen(edges.text(), train.get(), format, truth.get(), why));
    }

    /** A blank name was told of before. */
    private <T> Optional<T> named(PlacedText file, int atMostBytes, NamedFiles.Reading<T> reading) {
        return file.text().isBlank() ? Optional.empty() : files.read(file, atMostBytes, reading);
    }

    private static PlacedText placed(Fields entry, String name) {
        return new PlacedText(entry.text(name), entry.place(name), entry.pointer(name));
    }
}
