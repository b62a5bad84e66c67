package telltally.trainer.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import telltally.simulator.Simulation;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.recording.ObserverFile;
import telltally.simulator.recording.Recording;
import telltally.simulator.recording.RecordingFiles;
import telltally.simulator.scenario.ScenarioReader;

@Command(
        name = "simulate",
        mixinStandardHelpOptions = true,
        description = {
            "Plays a scenario and writes what the lamp showed and what the wire did.",
            "Writes lamp.csv, pin.csv, recording.vcd and truth.json. The same scenario and seed give the same bytes."
        })
final class SimulateCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(paramLabel = "SCENARIO", description = "A scenario file.")
    private Path scenario = Path.of("");

    @Option(names = "--seed", paramLabel = "N", description = "Seed of everything random (default: ${DEFAULT-VALUE}).")
    private long seed = 1;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "Folder for the files; made if missing.")
    private Path out = Path.of("");

    @Option(
            names = "--also",
            paramLabel = "KIND",
            split = ",",
            description = "What instruments would record, too: light, needle (sample CSV), sounder, wire (WAV).")
    private List<String> also = List.of();

    SimulateCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws ProblemException {
        Recording recording = Simulation.run(ScenarioReader.shipped().read(scenario), seed);
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new ProblemException(Problem.of(out.toString(), "is a file; a folder was expected"));
        }
        List<ObserverFile> wanted = wanted();
        try {
            for (Path written : RecordingFiles.write(recording, out, wanted)) {
                streams.line(written.toString());
            }
        } catch (IOException e) {
            throw new ProblemException(Problem.of(out.toString(), "cannot be written: " + reason(e)));
        }
        return ExitStatus.DONE;
    }

    private List<ObserverFile> wanted() throws ProblemException {
        List<ObserverFile> wanted = new ArrayList<>();
        for (String word : also) {
            wanted.add(Arrays.stream(ObserverFile.values())
                    .filter(each -> each.word().equals(word))
                    .findFirst()
                    .orElseThrow(() -> new ProblemException(Problem.of(
                            "--also",
                            "nothing is called " + Problem.quoted(word)
                                    + "; expected light, needle, sounder or wire"))));
        }
        return wanted;
    }

    private static String reason(IOException e) {
        return e.getClass().getSimpleName() + " " + e.getMessage();
    }
}
