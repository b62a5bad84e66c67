package telltally.trainer.logbook;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where a program keeps what belongs to its user, as each platform has it: the XDG base directory specification 0.8
 * ({@code $XDG_DATA_HOME}, else {@code ~/.local/share}), {@code ~/Library/Application Support} on macOS,
 * {@code %APPDATA%} on Windows.
 *
 * @param environment the process's environment variables
 * @param system the platform's name, as {@code os.name} has it
 * @param home the user's home folder
 */
public record DataFolder(Map<String, String> environment, String system, Path home) {
    public DataFolder {
        environment = Map.copyOf(environment);
    }

    public static DataFolder ofThisMachine() {
        return new DataFolder(
                System.getenv(), System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")));
    }

    /** The folder for Telltally; it need not be there yet. */
    public Path path() {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return folder("APPDATA")
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("Telltally");
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Telltally");
        }
        return folder("XDG_DATA_HOME")
                .orElse(home.resolve(".local").resolve("share"))
                .resolve("telltally");
    }

    /** A relative path in the variable is to be ignored, the specification says. */
    private Optional<Path> folder(String variable) {
        return Optional.ofNullable(environment.get(variable))
                .filter(text -> !text.isEmpty())
                .map(Path::of)
                .filter(Path::isAbsolute);
    }
}
