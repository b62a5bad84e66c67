package telltally.trainer.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import telltally.simulator.document.Place;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.EdgeCsv;
import telltally.simulator.trace.Vcd;

/** A file that may hold a pulse train, of a kind that its content tells. */
final class RecordingInput {
    private final String name;
    private final byte[] bytes;

    private RecordingInput(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    /**
     * @param file a path, or {@code -} for standard input
     * @throws ProblemException if it is not there, is no file, is empty or too large
     */
    static RecordingInput open(String file, InputStream standardInput) throws ProblemException {
        if (!file.equals("-")) {
            return new RecordingInput(file, TextFile.bytes(Path.of(file), TextFile.RECORDING_BYTES));
        }
        try {
            byte[] bytes = standardInput.readNBytes(TextFile.RECORDING_BYTES + 1);
            if (bytes.length == 0) {
                throw new ProblemException(Problem.of("-", "standard input is empty"));
            }
            if (bytes.length > TextFile.RECORDING_BYTES) {
                throw new ProblemException(
                        Problem.of("-", "standard input is larger than 64 MiB, the most that is read"));
            }
            return new RecordingInput(file, bytes);
        } catch (IOException e) {
            throw new ProblemException(Problem.of("-", "standard input cannot be read: " + e.getMessage()));
        }
    }

    /**
     * @param wire which wire of a value change dump; empty for the only one that can be meant
     * @throws ProblemException if the content is of no kind that is read, or broken
     */
    PulseTrain train(Optional<String> wire) throws ProblemException {
        if (bytes.length > 4 && bytes[0] == 'R' && bytes[1] == 'I' && bytes[2] == 'F' && bytes[3] == 'F') {
            throw new ProblemException(Problem.of(name, "is a sound recording; this kind is not read yet"));
        }
        TextFile file = TextFile.decode(name, bytes);
        String head = file.text().stripLeading();
        if (head.startsWith("$")) {
            return Vcd.read(file).train(wire);
        }
        if (wire.isPresent()) {
            throw new ProblemException(
                    Problem.of(name, "has no wires to choose from; --wire goes with value change dumps"));
        }
        String header = head.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        if (header.replace("\"", "").equals("time_s,value")) {
            throw new ProblemException(Problem.of(name, "holds samples; this kind is not read yet"));
        }
        if (header.startsWith("{") || header.startsWith("<")) {
            throw new ProblemException(new Problem(
                    name, Place.START, "", "is no recording; expected edge CSV (time_s,level) or a value change dump"));
        }
        return EdgeCsv.read(file);
    }
}
