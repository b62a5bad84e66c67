package telltally.decoder.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import telltally.simulator.document.Json;
import telltally.simulator.document.JsonDocument;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;

/** The seed sets of a folder and of the folders in it. */
public final class SeedFiles {
    private static final String OURS = "telltally/";
    private static final String SETS = "telltally/seeds/";

    private SeedFiles() {}

    /**
     * The file itself, or every JSON file in the folder and below, by name. Files that say in {@code schema} that they
     * are something else of Telltally's, such as the truth beside a recording, are passed over; whatever else there is
     * stays, so that reading it tells what is wrong with it.
     */
    public static List<Path> in(Path place) throws IOException {
        if (!Files.isDirectory(place)) {
            return List.of(place);
        }
        try (Stream<Path> files = Files.walk(place)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> Files.isRegularFile(file) && !isOtherKind(file))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isOtherKind(Path file) {
        try {
            return JsonDocument.parse(TextFile.read(file, TextFile.DOCUMENT_BYTES)) instanceof Json.JsonObject object
                    && object.members().get("schema") instanceof Json.JsonText schema
                    && schema.text().startsWith(OURS)
                    && !schema.text().startsWith(SETS);
        } catch (ProblemException e) {
            return false;
        }
    }
}
