package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A program of another project that reads or writes the same files. */
final class OutsideTool {
    private final String program;
    private final Path folder;

    private OutsideTool(String program, Path folder) {
        this.program = program;
        this.folder = folder;
    }

    /**
     * The program, if it is installed. Otherwise the test is skipped and says so, or fails where the environment
     * variable TELLTALLY_MAY_SKIP is "no".
     *
     * @param folder where it is run
     */
    static OutsideTool orSkip(String program, String debianPackage, Path folder) {
        for (String path : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1)) {
            if (Files.isExecutable(Path.of(path, program))) {
                return new OutsideTool(program, folder);
            }
        }
        String missing = program + " is not installed (Debian package " + debianPackage + ")";
        if ("no".equals(System.getenv("TELLTALLY_MAY_SKIP"))) {
            return fail(missing);
        }
        return abort(missing);
    }

    /** Runs it to its end and gives what it printed; fails if it does not end well within a minute. */
    String run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(program));
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile(folder, program, ".out");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        boolean ended = process.waitFor(1, TimeUnit.MINUTES);
        if (!ended) {
            process.destroyForcibly();
        }
        String printed = Files.readString(out);
        assertThat(ended).as("%s ended; it printed %s", program, printed).isTrue();
        assertThat(process.exitValue()).as("%s printed %s", program, printed).isZero();
        return printed;
    }
}
