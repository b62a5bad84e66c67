package telltally.simulator.recording;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.trace.EdgeCsv;
import telltally.simulator.trace.SampleCsv;
import telltally.simulator.trace.VcdWriter;

/** A recording as files in a folder. The same recording gives the same bytes. */
public final class RecordingFiles {
    private static final int SPEED_PLACES = 2;

    private RecordingFiles() {}

    /**
     * Writes {@code lamp.csv} and {@code pin.csv} (edge CSV), {@code recording.vcd} (both as wires), {@code speed.csv}
     * (sample CSV) where an engine ran, {@code truth.json}, and what instruments would have recorded; files of those
     * names are replaced, others left alone.
     *
     * @param folder made where it is not there
     * @param also the instruments' files that are wanted
     * @return what was written, in order
     */
    public static List<Path> write(Recording recording, Path folder, List<ObserverFile> also) throws IOException {
        Files.createDirectories(folder);
        List<Path> written = new ArrayList<>();
        written.add(edges(recording.lamp(), folder.resolve("lamp.csv")));
        written.add(edges(recording.pin(), folder.resolve("pin.csv")));
        written.add(dump(recording, folder.resolve("recording.vcd")));
        if (recording.speedRpm().isPresent()) {
            written.add(speed(recording.speedRpm().get(), folder.resolve("speed.csv")));
        }
        written.add(Files.writeString(folder.resolve("truth.json"), TruthJson.text(recording), StandardCharsets.UTF_8));
        for (ObserverFile each : also) {
            Path file = folder.resolve(each.fileName());
            each.write(recording, file);
            written.add(file);
        }
        return written;
    }

    private static Path edges(PulseTrain train, Path file) throws IOException {
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            EdgeCsv.write(train, out);
        }
        return file;
    }

    /** Revolutions per minute, a mean for each cycle. */
    private static Path speed(SampledSignal rpm, Path file) throws IOException {
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            SampleCsv.write(rpm, SPEED_PLACES, out);
        }
        return file;
    }

    private static Path dump(Recording recording, Path file) throws IOException {
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            new VcdWriter("telltally")
                    .wire("lamp", recording.lamp())
                    .wire("pin", recording.pin())
                    .write(out);
        }
        return file;
    }
}
