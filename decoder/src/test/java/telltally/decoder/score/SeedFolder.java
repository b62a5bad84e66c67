package telltally.decoder.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The seed sets of a folder. */
final class SeedFolder {
    /** Where those of the project lie, seen from the module. */
    static final Path SHIPPED = Path.of("..", "seeds");

    private SeedFolder() {}

    /** The file itself, or every JSON file that lies directly in the folder, by name. */
    static List<Path> filesIn(Path place) throws IOException {
        if (!Files.isDirectory(place)) {
            return List.of(place);
        }
        try (Stream<Path> files = Files.list(place)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
