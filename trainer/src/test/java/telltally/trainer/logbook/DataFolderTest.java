package telltally.trainer.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** XDG base directory specification 0.8; the folders of macOS and Windows are common practice of those platforms. */
class DataFolderTest {
    private static final Path HOME = Path.of("/home/mira");

    private static Path folder(String system, Map<String, String> environment) {
        return new DataFolder(environment, system, HOME).path();
    }

    @Test
    void follows_the_base_directory_specification_on_linux_and_its_kin() {
        assertThat(folder("Linux", Map.of())).isEqualTo(HOME.resolve(".local/share/telltally"));
        assertThat(folder("Linux", Map.of("XDG_DATA_HOME", "/srv/data"))).isEqualTo(Path.of("/srv/data/telltally"));
        assertThat(folder("FreeBSD", Map.of("XDG_DATA_HOME", ""))).isEqualTo(HOME.resolve(".local/share/telltally"));
    }

    @Test
    void ignores_a_relative_path_as_the_specification_says() {
        assertThat(folder("Linux", Map.of("XDG_DATA_HOME", "data"))).isEqualTo(HOME.resolve(".local/share/telltally"));
    }

    @Test
    void is_the_usual_one_on_the_other_platforms() {
        assertThat(folder("Mac OS X", Map.of())).isEqualTo(HOME.resolve("Library/Application Support/Telltally"));
        assertThat(folder("Windows 11", Map.of())).isEqualTo(HOME.resolve("AppData/Roaming/Telltally"));
        assertThat(folder("Windows 11", Map.of("APPDATA", "/roaming"))).isEqualTo(Path.of("/roaming/Telltally"));
    }
}
