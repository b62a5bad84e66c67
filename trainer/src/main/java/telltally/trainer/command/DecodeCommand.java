package telltally.trainer.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.ReadingJson;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.timeline.TimelineSvg;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.codelist.CodeListReader;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatReader;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.command.RecordingInput.Channel;
import telltally.trainer.command.RecordingInput.Heard;

@Command(
        name = "decode",
        mixinStandardHelpOptions = true,
        description = {
            "Reads codes from recordings, and says how sure it is.",
            "A recording is edge CSV (time_s,level), sample CSV (time_s,value), a value change dump,",
            "a sound recording (WAV) or a clip of the lamp (MP4 or MOV, H.264).",
            "Exit status 1 where a recording holds nothing that can be decoded."
        })
final class DecodeCommand implements Callable<Integer> {
    private final Streams streams;
    private final Decoder decoder = new LatticeDecoder();

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Recordings; - reads standard input.")
    private List<String> files = List.of();

    @Option(
            names = "--format",
            paramLabel = "ID",
            description = "Flash format: an id, a format file ending in .json, or auto (default: ${DEFAULT-VALUE}).")
    private String format = "auto";

    @Option(
            names = "--channel",
            paramLabel = "KIND",
            description =
                    "What the recordings are: edges, samples, or auto to go by their content (default: ${DEFAULT-VALUE}).")
    private String channel = "auto";

    @Option(names = "--wire", paramLabel = "NAME", description = "Which wire of a value change dump.")
    private @Nullable String wire;

    @Option(
            names = "--code-list",
            paramLabel = "ID",
            description = "Code list for the meanings: an id, or a file ending in .json.")
    private @Nullable String codeList;

    @Option(names = "--json", description = "One reading a line, as JSON.")
    private boolean json;

    @Option(
            names = "--timeline",
            paramLabel = "FILE",
            description = "Also draws flashes, gaps and groups as SVG; with one recording only.")
    private @Nullable Path timeline;

    DecodeCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws ProblemException {
        List<FlashFormat> candidates = candidates();
        Optional<CodeList> meanings = meanings();
        ReadingJson asJson = new ReadingJson();
        WorkSheetText asText = new WorkSheetText(meanings);
        Channel expected = channel();
        int status = ExitStatus.DONE;
        if (timeline != null && files.size() > 1) {
            throw new ProblemException(
                    Problem.of("--timeline", "draws one recording; " + files.size() + " were named"));
        }
        for (String file : files) {
            try {
                Heard heard = RecordingInput.open(file, streams.in()).read(Optional.ofNullable(wire), expected);
                Reading reading = reading(heard, candidates, file);
                if (!json) {
                    heard.remarks().forEach(remark -> streams.line(file + ": " + remark));
                }
                streams.out().print(json ? asJson.text(reading, file) + "\n" : asText.text(reading, file));
                if (!reading.decoded()) {
                    status = Math.max(status, ExitStatus.FELL_SHORT);
                }
            } catch (ProblemException e) {
                streams.out().flush();
                streams.problems(e.problems());
                status = ExitStatus.BAD_INPUT;
            }
        }
        return status;
    }

    private Reading reading(Heard heard, List<FlashFormat> candidates, String file) throws ProblemException {
        if (heard.train().isEmpty()) {
            String why = heard.remarks().isEmpty()
                    ? "no blinking was found"
                    : heard.remarks().get(0);
            return Reading.nothing(new Warning(0, WarningKind.NO_FLASHES, why));
        }
        Reading reading = decoder.decode(heard.train().get(), candidates);
        draw(heard.train().get(), reading, file);
        return reading;
    }

    private Channel channel() throws ProblemException {
        return Arrays.stream(Channel.values())
                .filter(each -> each.word().equals(channel))
                .findFirst()
                .orElseThrow(() -> new ProblemException(Problem.of(
                        "--channel", "is " + Problem.quoted(channel) + "; expected auto or edges or samples")));
    }

    private void draw(PulseTrain train, Reading reading, String source) throws ProblemException {
        Path file = timeline;
        if (file != null) {
            try {
                Files.writeString(file, TimelineSvg.text(train, reading, source));
            } catch (IOException e) {
                throw new ProblemException(Problem.of(
                        file.toString(), "cannot be written: " + e.getClass().getSimpleName() + " " + e.getMessage()));
            }
        }
    }

    private List<FlashFormat> candidates() throws ProblemException {
        FormatCatalog catalog = FormatCatalog.shipped();
        return format.equals("auto")
                ? catalog.all()
                : List.of(
                        named("--format", format, catalog::find, "auto, " + words(catalog.ids()), FormatReader::read));
    }

    private Optional<CodeList> meanings() throws ProblemException {
        String wanted = codeList;
        if (wanted == null) {
            return Optional.empty();
        }
        CodeListCatalog catalog = CodeListCatalog.shipped();
        return Optional.of(named("--code-list", wanted, catalog::find, words(catalog.ids()), CodeListReader::read));
    }

    /** How a file of some kind is read. */
    private interface Reader<T> {
        T read(TextFile file) throws ProblemException;
    }

    /** What an option names: a file of the user's own, or something that ships. */
    private static <T> T named(
            String option, String given, Function<String, Optional<T>> shipped, String expected, Reader<T> reader)
            throws ProblemException {
        if (given.endsWith(".json")) {
            return reader.read(TextFile.read(Path.of(given), TextFile.DOCUMENT_BYTES));
        }
        return shipped.apply(given)
                .orElseThrow(() -> new ProblemException(Problem.of(
                        option,
                        "nothing is called " + Problem.quoted(given) + "; expected " + expected
                                + " or a file ending in .json")));
    }

    private static String words(List<String> ids) {
        return String.join(", ", ids);
    }
}
