package telltally.simulator.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.simulator.Simulation;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;
import telltally.simulator.recording.Recording;
import telltally.simulator.recording.TruthJson;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * The same file, seed and generator version give the same bytes on every JDK and processor. A digest that moved names
 * its lesson; where it moved on purpose, the generator version is raised and the lines that the failure shows are copied.
 */
class LessonDigestsTest {
    private static final long SEED = 42;

    @Test
    void no_lesson_gives_other_bytes_than_before() throws Exception {
        List<String> found = new ArrayList<>();
        for (TextFile file : new ResourceFolder("telltally/scenarios/lessons").read()) {
            Recording recording = Simulation.run(read(file), SEED);
            found.add(recording.scenarioId() + " " + digest(recording));
        }
        assertThat(found).containsExactlyElementsOf(held());
    }

    private static Scenario read(TextFile file) throws ProblemException {
        return ScenarioReader.shipped().read(file, Optional.empty());
    }

    private static List<String> held() throws IOException {
        try (InputStream in = LessonDigestsTest.class.getResourceAsStream("lesson-digests.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    /** SHA-256 of lamp, output, speed to the last bit, and the text of the truth. */
    private static String digest(Recording recording) throws IOException, NoSuchAlgorithmException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        write(recording.lamp(), out);
        write(recording.pin(), out);
        if (recording.speedRpm().isPresent()) {
            write(recording.speedRpm().get(), out);
        }
        out.write(TruthJson.text(recording).getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes.toByteArray()));
    }

    private static void write(PulseTrain train, DataOutputStream out) throws IOException {
        out.writeBoolean(train.litAtStart());
        for (int i = 0; i < train.edgeCount(); i++) {
            out.writeLong(train.edgeNanos(i));
        }
        out.writeLong(train.endNanos());
    }

    private static void write(SampledSignal signal, DataOutputStream out) throws IOException {
        for (int i = 0; i < signal.size(); i++) {
            out.writeLong(signal.atNanos(i));
            out.writeLong(Double.doubleToLongBits(signal.value(i)));
        }
    }
}
