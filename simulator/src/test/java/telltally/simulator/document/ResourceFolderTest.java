package telltally.simulator.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResourceFolderTest {
    @TempDir
    private Path folder;

    @Test
    void files_of_an_unpacked_program_are_read_by_name() throws IOException {
        write("lessons/b.json", "{}");
        write("lessons/a.json", "{\"who\": \"Zoë\"}");
        write("lessons/readme.txt", "no JSON");
        write("lessons/deeper/c.json", "{}");

        try (URLClassLoader loader = loader(folder)) {
            assertThat(new ResourceFolder("lessons", loader).read())
                    .containsExactly(new TextFile("a.json", "{\"who\": \"Zoë\"}"), new TextFile("b.json", "{}"));
        }
    }

    @Test
    void files_inside_a_jar_are_read_alike() throws IOException {
        try (URLClassLoader loader = loader(jar())) {
            assertThat(new ResourceFolder("lessons", loader).read())
                    .containsExactly(new TextFile("a.json", "{\"who\": \"Zoë\"}"), new TextFile("b.json", "{}"));
        }
    }

    @Test
    void a_jar_may_lie_where_the_path_has_a_blank_and_be_read_while_it_is_open_elsewhere() throws IOException {
        Path jar = Files.move(jar(), folder.resolve("a program.jar"));
        try (URLClassLoader loader = loader(jar);
                FileSystem elsewhere = FileSystems.newFileSystem(URI.create("jar:" + jar.toUri()), Map.of())) {
            assertThat(new ResourceFolder("lessons", loader).read()).hasSize(2);
            assertThat(elsewhere.isOpen()).isTrue();
        }
    }

    @Test
    void a_folder_that_was_forgotten_is_told_by_name() {
        assertThatThrownBy(() -> new ResourceFolder("telltally/nowhere").read())
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the program was built without telltally/nowhere");
    }

    @Test
    void a_file_that_is_no_text_is_told_by_name() throws IOException {
        Files.createDirectories(folder.resolve("lessons"));
        Files.write(folder.resolve("lessons/bad.json"), new byte[] {'{', (byte) 0xff});

        try (URLClassLoader loader = loader(folder)) {
            assertThatThrownBy(() -> new ResourceFolder("lessons", loader).read())
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessage("bad.json:1:2: is not UTF-8 text");
        }
    }

    private static URLClassLoader loader(Path root) throws IOException {
        return new URLClassLoader(new URL[] {root.toUri().toURL()}, null);
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private Path jar() throws IOException {
        Path jar = folder.resolve("program.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out)) {
            entries.putNextEntry(new JarEntry("lessons/"));
            for (String name : List.of("lessons/b.json", "lessons/a.json", "lessons/readme.txt")) {
                entries.putNextEntry(new JarEntry(name));
                String text = name.endsWith("a.json") ? "{\"who\": \"Zoë\"}" : "{}";
                entries.write(text.getBytes(StandardCharsets.UTF_8));
            }
        }
        return jar;
    }
}
