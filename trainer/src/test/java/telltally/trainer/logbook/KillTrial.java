package telltally.trainer.logbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Starts programs that answer drills, two at a time on one logbook, and kills them at random moments (SIGKILL where there
 * are signals): some while they start, most while they write. After each pair of kills the file has to be sound and to
 * hold every answer whose program was told that it is written. Arguments: how many kills (1000), seed (1).
 */
final class KillTrial {
    private static final int AT_ONCE = 2;

    /** A new folder now and then, so that making the file is among what is interrupted. */
    private static final int KILLS_PER_FOLDER = 40;

    private static final double KILLED_WHILE_STARTING = 0.25;
    private static final int STARTING_MILLIS = 900;
    private static final int WRITING_MILLIS = 120;

    private final SplittableRandom chance;

    KillTrial(long seed) {
        this.chance = new SplittableRandom(seed);
    }

    /**
     * What was found.
     *
     * @param announced answers that a program was told are written
     * @param lost those of them that are not there
     * @param unannounced answers that are there and whose program was killed before it could say so
     * @param unsound what SQLite found wrong
     */
    record Findings(int kills, int announced, int lost, int unannounced, List<String> unsound) {
        Findings plus(Findings more) {
            List<String> all = new ArrayList<>(unsound);
            all.addAll(more.unsound);
            return new Findings(
                    kills + more.kills,
                    announced + more.announced,
                    lost + more.lost,
                    unannounced + more.unannounced,
                    all);
        }

        static Findings none() {
            return new Findings(0, 0, 0, 0, List.of());
        }
    }

    public static void main(String[] arguments) throws Exception {
        int kills = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        long start = System.nanoTime();
        Findings findings = new KillTrial(seed).kill(kills);
        System.out.printf(
                "%d kills (seed %d) in %d s: %d answers announced, %d of them lost; %d more were saved and not yet"
                        + " announced; %d faults in the file%n",
                findings.kills(),
                seed,
                (System.nanoTime() - start) / 1_000_000_000L,
                findings.announced(),
                findings.lost(),
                findings.unannounced(),
                findings.unsound().size());
        findings.unsound().forEach(System.out::println);
        System.exit(findings.lost() == 0 && findings.unsound().isEmpty() ? 0 : 1);
    }

    Findings kill(int kills) throws Exception {
        Findings all = Findings.none();
        while (all.kills() < kills) {
            Path folder = Files.createTempDirectory("telltally-kills-");
            try {
                all = all.plus(inOneFolder(folder, Math.min(KILLS_PER_FOLDER, kills - all.kills())));
            } finally {
                delete(folder);
            }
        }
        return all;
    }

    private Findings inOneFolder(Path folder, int kills) throws Exception {
        Findings all = Findings.none();
        Set<String> announced = new HashSet<>();
        List<String> unsound = new ArrayList<>();
        int killed = 0;
        while (killed < kills) {
            List<Victim> victims = new ArrayList<>();
            for (int i = 0; i < Math.min(AT_ONCE, kills - killed); i++) {
                victims.add(new Victim(folder, "Learner " + (i + 1)));
            }
            List<CompletableFuture<Void>> ends = new ArrayList<>();
            for (Victim victim : victims) {
                boolean early = chance.nextDouble() < KILLED_WHILE_STARTING;
                long millis = chance.nextInt(early ? STARTING_MILLIS : WRITING_MILLIS);
                ends.add(CompletableFuture.runAsync(() -> victim.killAfter(early, millis)));
            }
            ends.forEach(CompletableFuture::join);
            for (Victim victim : victims) {
                announced.addAll(victim.announced());
                unsound.addAll(victim.complaints());
            }
            killed += victims.size();
            all = all.plus(new Findings(victims.size(), 0, 0, 0, List.of()));
            unsound.addAll(missing(folder, announced).unsound());
        }
        Findings end = missing(folder, announced);
        return all.plus(new Findings(0, announced.size(), end.lost(), end.unannounced(), unsound));
    }

    /** Opens the file as the next start of the program does, and looks. */
    private static Findings missing(Path folder, Set<String> announced) throws LogbookException {
        try (Logbook logbook = Logbook.open(folder)) {
            Set<String> saved = new HashSet<>();
            for (Learner learner : logbook.learners()) {
                logbook.drills(learner).forEach(drill -> saved.add(drill.id().toString()));
            }
            int lost =
                    (int) announced.stream().filter(id -> !saved.contains(id)).count();
            List<String> unsound = new ArrayList<>(logbook.faults());
            if (lost > 0) {
                unsound.add(lost + " answers lost in " + folder);
            }
            return new Findings(0, announced.size(), lost, saved.size() - (announced.size() - lost), unsound);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    /** A program that answers drills. */
    private static final class Victim {
        private final Process process;
        private final BufferedReader out;
        private final Path complaints;
        private final List<String> announced = new ArrayList<>();

        Victim(Path folder, String learner) throws IOException {
            complaints = Files.createTempFile(folder, "complaints-", ".txt");
            process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-Xshare:auto",
                            // The driver unpacks its library anew for each program and cannot remove it when killed.
                            "-Dorg.sqlite.tmpdir=" + folder,
                            "-cp",
                            System.getProperty("java.class.path"),
                            AnsweringProgram.class.getName(),
                            folder.toString(),
                            learner)
                    .redirectError(complaints.toFile())
                    .start();
            out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII));
        }

        /** @param early counted from the start of the program rather than from its first answer */
        void killAfter(boolean early, long millis) {
            try {
                if (!early) {
                    announce(out.readLine());
                }
                TimeUnit.MILLISECONDS.sleep(millis);
                // By its handle: killed by the process itself, what it has already said could not be read any more.
                process.toHandle().destroyForcibly();
                process.waitFor();
                for (String line = out.readLine(); line != null; line = out.readLine()) {
                    announce(line);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        /** The last line may be cut off; its answer was written nevertheless, but whoever was killed did not say so. */
        private void announce(@Nullable String line) {
            if (line != null && line.length() == 36) {
                announced.add(line);
            }
        }

        List<String> announced() {
            return announced;
        }

        /** What the program itself had to say, which should be nothing. */
        List<String> complaints() throws IOException {
            return Files.readAllLines(complaints);
        }
    }
}
