package telltally.decoder.outside;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A program and everything that it started. Where the system tells the environment of a process (Linux), those are
 * found too that have lost their parent, or have put themselves out of its reach: all inherit the mark that the program
 * was started with.
 */
final class ProcessTree {
    /** The environment variable that holds the mark. */
    static final String MARK = "TELLTALLY_OUTSIDE";

    private static final Path PROCESSES = Path.of("/proc");
    private static final int MOST_ROUNDS = 10;

    private final Process root;
    private final String mark;

    /** @param mark a text that no other process bears */
    ProcessTree(Process root, String mark) {
        this.root = root;
        this.mark = mark;
    }

    /** Ends all of them at once and without asking. */
    void end() {
        // What starts another while it is looked for is found in the next round.
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<ProcessHandle> found = living();
            if (found.isEmpty()) {
                return;
            }
            found.forEach(ProcessHandle::destroyForcibly);
        }
    }

    private List<ProcessHandle> living() {
        List<ProcessHandle> found = new ArrayList<>();
        found.add(root.toHandle());
        root.descendants().forEach(found::add);
        marked().filter(each -> !found.contains(each)).forEach(found::add);
        found.removeIf(each -> !each.isAlive());
        return found;
    }

    private Stream<ProcessHandle> marked() {
        if (!Files.isDirectory(PROCESSES)) {
            return Stream.empty();
        }
        return ProcessHandle.allProcesses().filter(each -> isMarked(each.pid()));
    }

    private boolean isMarked(long pid) {
        try {
            byte[] environment =
                    Files.readAllBytes(PROCESSES.resolve(Long.toString(pid)).resolve("environ"));
            String text = new String(environment, StandardCharsets.ISO_8859_1);
            return Stream.of(text.split("\0", -1)).anyMatch((MARK + "=" + mark)::equals);
        } catch (IOException e) {
            // Somebody else's process, or one that has just ended.
            return false;
        }
    }

    /** The status that the program ended with; empty where it has not ended after a wait. */
    Optional<Integer> status(long waitMillis) throws InterruptedException {
        return root.waitFor(waitMillis, TimeUnit.MILLISECONDS) ? Optional.of(root.exitValue()) : Optional.empty();
    }
}
