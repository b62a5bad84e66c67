package telltally.trainer.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import telltally.decoder.capture.CaptureResult;
import telltally.decoder.capture.ClipCapture;
import telltally.decoder.capture.Polarity;
import telltally.decoder.capture.SampleCapture;
import telltally.decoder.capture.SoundCapture;
import telltally.decoder.capture.SoundKind;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.EdgeCsv;
import telltally.simulator.trace.SampleCsv;
import telltally.simulator.trace.Vcd;
import telltally.simulator.trace.Wav;

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

    /** What a recording may be. */
    enum Channel {
        AUTO("auto"),
        EDGES("edges"),
        SAMPLES("samples");

        private final String word;

        Channel(String word) {
            this.word = word;
        }

        /** As an option says it. */
        String word() {
            return word;
        }
    }

    /**
     * What a recording holds.
     *
     * @param train empty where samples have no blinking in them
     * @param remarks what was chosen or assumed on the way, or why there is no train
     */
    record Heard(Optional<PulseTrain> train, List<String> remarks) {}

    /**
     * @param wire which wire of a value change dump; empty for the only one that can be meant
     * @param channel what the recording is expected to be
     * @throws ProblemException if the content is of no kind that is read, or of the other kind, or broken
     */
    Heard read(Optional<String> wire, Channel channel) throws ProblemException {
        Optional<CaptureResult> captured = samples();
        if (captured.isPresent()) {
            refuse(channel == Channel.EDGES, "holds samples; edges were expected (--channel edges)");
            refuse(wire.isPresent(), "has no wires to choose from; --wire goes with value change dumps");
            return heard(captured.get());
        }
        refuse(channel == Channel.SAMPLES, "holds edges; samples were expected (--channel samples)");
        return new Heard(Optional.of(edges(wire)), List.of());
    }

    private void refuse(boolean wrong, String text) throws ProblemException {
        if (wrong) {
            throw new ProblemException(Problem.of(name, text));
        }
    }

    private Heard heard(CaptureResult result) throws ProblemException {
        if (result instanceof CaptureResult.Pulses pulses) {
            return new Heard(Optional.of(pulses.train()), pulses.remarks());
        }
        CaptureResult.NoPulses none = (CaptureResult.NoPulses) result;
        boolean unreadable = switch (none.reason()) {
            case NO_CLIP, UNREADABLE_CODING, DAMAGED_CLIP, TIMES_OUT_OF_RANGE -> true;
            default -> false;
        };
        refuse(unreadable, none.text());
        return new Heard(Optional.empty(), List.of(none.text()));
    }

    /** Samples of whatever kind; empty where the content is none. */
    private Optional<CaptureResult> samples() throws ProblemException {
        if (begins("RIFF", 0)) {
            return Optional.of(SoundCapture.of(Wav.read(name, bytes), SoundKind.AUTO, Polarity.AUTO));
        }
        if (begins("ftyp", 4)) {
            return Optional.of(ClipCapture.of(bytes));
        }
        TextFile file = TextFile.decode(name, bytes);
        return header(file).equals("time_s,value")
                ? Optional.of(SampleCapture.of(SampleCsv.read(file), Polarity.AUTO))
                : Optional.empty();
    }

    private boolean begins(String signature, int from) {
        return bytes.length >= from + signature.length()
                && new String(bytes, from, signature.length(), StandardCharsets.ISO_8859_1).equals(signature);
    }

    private PulseTrain edges(Optional<String> wire) throws ProblemException {
        TextFile file = TextFile.decode(name, bytes);
        if (file.text().stripLeading().startsWith("$")) {
            return Vcd.read(file).train(wire);
        }
        refuse(wire.isPresent(), "has no wires to choose from; --wire goes with value change dumps");
        String header = header(file);
        refuse(
                header.startsWith("{") || header.startsWith("<"),
                "is no recording; expected edge CSV (time_s,level), sample CSV (time_s,value), a value change dump, WAV or"
                        + " MP4");
        return EdgeCsv.read(file);
    }

    private static String header(TextFile file) {
        return file.text()
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("")
                .replace("\"", "");
    }
}
