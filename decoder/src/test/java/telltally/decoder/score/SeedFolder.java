package telltally.decoder.score;

import java.nio.file.Path;

/** Where the seed sets of the project lie. */
final class SeedFolder {
    /** Seen from the module. */
    static final Path SHIPPED = Path.of("..", "seeds");

    private SeedFolder() {}
}
