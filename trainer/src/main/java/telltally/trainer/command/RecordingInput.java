package telltally.trainer.command;

import java.io.InputStream;
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
    private static final String NO_WIRES = "has no wires to choose from; --wire goes with value change dumps";

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
        byte[] bytes = TextFile.bytes(file, standardInput, TextFile.RECORDING_BYTES);
        if (bytes.length == 0) {
            throw new ProblemException(Problem.of(file, "standard input is empty"));
        }
        return new RecordingInput(file, bytes);
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
        Medium medium = Medium.of(bytes);
        Optional<String> refusal = medium.refusal();
        refuse(refusal.isPresent(), refusal.orElse(""));
        Optional<TextFile> text = medium == Medium.TEXT ? Optional.of(TextFile.decode(name, bytes)) : Optional.empty();
        if (text.isPresent() && !header(text.get()).equals("time_s,value")) {
            refuse(channel == Channel.SAMPLES, "holds edges; samples were expected (--channel samples)");
            return new Heard(Optional.of(edges(text.get(), wire)), List.of());
        }
        refuse(channel == Channel.EDGES, "holds samples; edges were expected (--channel edges)");
        refuse(wire.isPresent(), NO_WIRES);
        if (text.isPresent()) {
            return heard(SampleCapture.of(SampleCsv.read(text.get()), Polarity.AUTO));
        }
        return heard(
                medium == Medium.SOUND
                        ? SoundCapture.of(Wav.read(name, bytes), SoundKind.AUTO, Polarity.AUTO)
                        : ClipCapture.of(bytes));
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

    private PulseTrain edges(TextFile file, Optional<String> wire) throws ProblemException {
        if (file.text().stripLeading().startsWith("$")) {
            return Vcd.read(file).train(wire);
        }
        refuse(wire.isPresent(), NO_WIRES);
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
