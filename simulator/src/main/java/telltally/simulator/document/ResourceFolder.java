package telltally.simulator.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The JSON files of a folder that ships inside the program. */
public final class ResourceFolder {
    private final String path;
    private final ClassLoader loader;

    /** @param path from the root of the class path, such as {@code telltally/scenarios/formats} */
    public ResourceFolder(String path) {
        this(path, ResourceFolder.class.getClassLoader());
    }

    ResourceFolder(String path, ClassLoader loader) {
        this.path = path;
        this.loader = loader;
    }

    /**
     * Every JSON file that lies directly in the folder, by name.
     *
     * @throws IllegalStateException if the program was built without it
     * @throws UncheckedIOException if the program's own file cannot be read
     */
    public List<TextFile> read() {
        return within(this::filesIn);
    }

    /** What is done with a folder while it is open. */
    public interface Visit<T, E extends Exception> {
        T to(Path folder) throws IOException, E;
    }

    /**
     * Opens the folder as a path, for files that name others beside them; the path is of no use afterwards.
     *
     * @throws IllegalStateException if the program was built without it
     * @throws UncheckedIOException if the program's own file cannot be read
     * @throws E as the visit does
     */
    public <T, E extends Exception> T within(Visit<T, E> visit) throws E {
        URL url = loader.getResource(path);
        if (url == null) {
            throw new IllegalStateException("the program was built without " + path);
        }
        try {
            if (!(url.openConnection() instanceof JarURLConnection inside)) {
                return visit.to(Path.of(url.toURI()));
            }
            Path jarFile = Path.of(inside.getJarFileURL().toURI());
            // By path, not by address: of file systems by address there can be one only, and others may have it open.
            try (FileSystem jar = FileSystems.newFileSystem(jarFile)) {
                return visit.to(jar.getPath("/" + path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the program lies at no readable place: " + url, e);
        }
    }

    private List<TextFile> filesIn(Path folder) throws IOException {
        List<TextFile> files = new ArrayList<>();
        try (Stream<Path> found = Files.list(folder)) {
            for (Path file : (Iterable<Path>)
                    found.filter(each -> each.toString().endsWith(".json")).sorted()::iterator) {
                String name = String.valueOf(file.getFileName());
                try (InputStream in = Files.newInputStream(file)) {
                    files.add(TextFile.read(name, in, TextFile.DOCUMENT_BYTES));
                } catch (ProblemException e) {
                    throw new IllegalStateException(e.getMessage(), e);
                }
            }
        }
        return files;
    }
}
