package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import telltally.simulator.document.ProblemException;

/** The same bytes in another locale, without the processor's own mathematics, and on a newer JDK. */
class DeterminismTest {
    private static final int BLOCKS = 1;
    private static final List<Path> SETS = List.of(
            SeedFolder.SHIPPED.resolve("messages-clock-jitter-bounce.json"),
            SeedFolder.SHIPPED.resolve("lessons.json"),
            SeedFolder.SHIPPED.resolve("stories.json"),
            SeedFolder.SHIPPED.resolve("noise/mixed-3.json"),
            SeedFolder.SHIPPED.resolve("noise/phone-clip-2.json"),
            SeedFolder.SHIPPED.resolve("noise/needle-watched-2.json"),
            SeedFolder.SHIPPED.resolve("nothing/nothing-random-3.json"));

    private static final String NEWER_JDK = "TELLTALLY_NEWER_JDK";

    /** A locale that writes other figures and other years, and a time zone of odd minutes. */
    private static final List<String> FAR_AWAY = List.of(
            "-Duser.language=th",
            "-Duser.country=TH",
            "-Duser.variant=TH",
            "-Duser.timezone=Asia/Kathmandu",
            "-Dfile.encoding=ISO-8859-1");

    /**
     * Has the machine compute what it would otherwise leave to instructions of the processor. Stands in for another
     * processor: a forgotten {@code Math} where {@code StrictMath} belongs shows.
     */
    private static final List<String> WITHOUT_INTRINSICS = List.of(
            "-XX:+UnlockDiagnosticVMOptions", "-XX:DisableIntrinsic=_dexp,_dlog,_dlog10,_dpow,_dsin,_dcos,_dtan");

    /** What another Java machine said. */
    private record Answer(
            int version, String locale, String zone, long mathBits, long noiseBits, List<String> digests) {}

    private static Answer ask(String javaHome, List<String> flags) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(javaHome, "bin", "java").toString());
        command.addAll(flags);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), DigestsElsewhere.class.getName()));
        command.add(Integer.toString(BLOCKS));
        SETS.forEach(set -> command.add(set.toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        int status = process.waitFor();
        require(!said.contains("Unrecognized VM option"), "this Java machine does not know a flag: " + said);
        assertThat(status).as(said).isZero();
        List<String> lines = said.lines().toList();
        return new Answer(
                Integer.parseInt(lines.get(0)),
                lines.get(1),
                lines.get(2),
                Long.parseLong(lines.get(3)),
                Long.parseLong(lines.get(4)),
                lines.subList(5, lines.size()));
    }

    /**
     * Skips the test, with the reason, where this machine can show nothing; fails it instead where the environment
     * variable TELLTALLY_MAY_SKIP is "no".
     */
    private static void require(boolean met, String reason) {
        if ("no".equals(System.getenv("TELLTALLY_MAY_SKIP"))) {
            assertThat(met).as(reason).isTrue();
        }
        assumeThat(met).as(reason + "; nothing is shown").isTrue();
    }

    private static void assertSame(Answer answer) throws ProblemException {
        assertThat(answer.digests()).isEqualTo(frozen());
        assertThat(answer.noiseBits()).isEqualTo(DigestsElsewhere.noiseBits());
    }

    private static List<String> frozen() throws ProblemException {
        List<String> frozen = new ArrayList<>();
        for (Path file : SETS) {
            frozen.addAll(SeedSetReader.read(file).digests().sha256().subList(0, BLOCKS));
        }
        assertThat(frozen).hasSize(BLOCKS * SETS.size()).doesNotHaveDuplicates();
        return frozen;
    }

    @Test
    void the_same_digests_are_drawn_twice_in_one_process() throws ProblemException {
        for (Path file : SETS) {
            SeedSet set = SeedSetReader.read(file);
            SeedBlock first = set.blocks().get(0);
            String frozen = set.digests().sha256().get(0);
            assertThat(List.of(CaseDigest.of(set, first), CaseDigest.of(set, first)))
                    .containsExactly(frozen, frozen);
        }
    }

    @Test
    void the_same_digests_are_drawn_in_another_locale_and_time_zone() throws Exception {
        Answer answer = ask(System.getProperty("java.home"), FAR_AWAY);
        assertThat(answer.locale()).startsWith("th-TH");
        assertThat(answer.zone()).isEqualTo("Asia/Kathmandu");
        assertSame(answer);
    }

    @Test
    void the_same_digests_are_drawn_without_the_mathematics_of_the_processor() throws Exception {
        Answer answer = ask(System.getProperty("java.home"), WITHOUT_INTRINSICS);
        assertSame(answer);
        require(
                answer.mathBits() != DigestsElsewhere.mathBits(),
                "Math is the same with and without the processor here");
    }

    /** The environment names the home of a JDK that is newer than the one the tests run on. */
    @Test
    @EnabledIfEnvironmentVariable(named = NEWER_JDK, matches = ".+")
    void the_same_digests_are_drawn_on_a_newer_jdk() throws Exception {
        String newer = System.getenv(NEWER_JDK);
        Answer usual = ask(newer, List.of());
        assertThat(usual.version()).isGreaterThan(Runtime.version().feature());
        assertSame(usual);
        assertSame(ask(newer, FAR_AWAY));
        assertSame(ask(newer, WITHOUT_INTRINSICS));
    }
}
