package telltally.simulator.format;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;

/** Formats of published codes and rhythms, which lie beside the tests, and formats written in a test. */
final class TestFormats {
    private TestFormats() {}

    static FlashFormat read(String id) {
        return parse(file(id));
    }

    static TextFile file(String id) {
        String name = id + ".json";
        try (InputStream in = Objects.requireNonNull(TestFormats.class.getResourceAsStream(name), name)) {
            return TextFile.read(name, in, TextFile.DOCUMENT_BYTES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ProblemException e) {
            throw new AssertionError(e);
        }
    }

    static FlashFormat parse(TextFile file) {
        try {
            return FormatReader.read(file);
        } catch (ProblemException e) {
            throw new AssertionError(e.problems().toString(), e);
        }
    }

    static FlashFormat parse(String json) {
        return parse(new TextFile("test.json", json));
    }

    static List<TextFile> files() {
        return new ResourceFolder("telltally/simulator/format").read();
    }

    static FlashFormat shipped(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }
}
