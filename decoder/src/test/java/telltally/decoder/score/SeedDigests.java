package telltally.decoder.score;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import telltally.simulator.Simulation;
import telltally.simulator.document.ProblemException;

/**
 * Prints the digests that seed sets have with this generator, ready to be put into their files by hand, and says which
 * blocks moved. To be used when the generator version was raised on purpose, a lesson or a format was changed on
 * purpose, or a set is new; from the top folder:
 *
 * <pre>mvn -q -Pdigests -pl decoder -am process-test-classes</pre>
 *
 * No decoder has a say in this: what must be read is what was sent.
 */
final class SeedDigests {
    private final PrintStream out;

    private SeedDigests(PrintStream out) {
        this.out = out;
    }

    /** @param args seed sets, or folders of them */
    public static void main(String[] args) throws IOException {
        SeedDigests digests = new SeedDigests(new PrintStream(System.out, true, StandardCharsets.UTF_8));
        for (String each : args) {
            for (Path file : SeedFiles.in(Path.of(each))) {
                try {
                    digests.print(file);
                } catch (ProblemException e) {
                    e.problems().forEach(System.err::println);
                }
            }
        }
    }

    private void print(Path file) throws ProblemException {
        SeedSet set = SeedSetReader.readUndrawn(file);
        List<String> frozen = set.digests().sha256();
        List<String> drawn = new ArrayList<>();
        List<String> moved = new ArrayList<>();
        for (SeedBlock block : set.blocks()) {
            String digest = CaseDigest.of(set, block);
            if (drawn.size() >= frozen.size() || !digest.equals(frozen.get(drawn.size()))) {
                moved.add(block.toString());
            }
            drawn.add(digest);
        }
        out.println(file.getFileName() + ": " + moved.size() + " of " + drawn.size() + " blocks moved");
        moved.forEach(block -> out.println("  " + block));
        if (!(set.source() instanceof SeedSource.Recordings)) {
            out.println("  \"generator\": " + Simulation.GENERATOR_VERSION + ",");
        }
        out.println("  \"digests\": {");
        out.println("    \"per\": " + set.digests().per() + ",");
        out.println("    \"sha256\": [");
        out.println(drawn.stream().map(each -> "      \"" + each + "\"").collect(Collectors.joining(",\n")));
        out.println("    ]");
        out.println("  },");
    }
}
