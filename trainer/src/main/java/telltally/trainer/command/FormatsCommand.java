package telltally.trainer.command;

import java.io.StringWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

@Command(name = "formats", mixinStandardHelpOptions = true, description = "Lists the flash formats that are installed.")
final class FormatsCommand implements Callable<Integer> {
    private final Streams streams;

    @Option(names = "--json", description = "As one JSON array.")
    private boolean json;

    FormatsCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        FormatCatalog catalog = FormatCatalog.shipped();
        if (json) {
            streams.line(asJson(catalog));
        } else {
            int widest = catalog.ids().stream().mapToInt(String::length).max().orElse(0);
            for (FlashFormat format : catalog.all()) {
                streams.line(format.id() + " ".repeat(widest - format.id().length() + 2) + format.title());
            }
        }
        return ExitStatus.DONE;
    }

    private static String asJson(FormatCatalog catalog) {
        StringWriter text = new StringWriter();
        try (JsonGenerator array = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            array.writeStartArray();
            for (FlashFormat format : catalog.all()) {
                array.writeStartObject();
                array.writeStringProperty("id", format.id());
                array.writeStringProperty("title", format.title());
                array.writeArrayPropertyStart("segments");
                format.segments().stream().map(Segment::key).forEach(array::writeString);
                array.writeEndArray();
                array.writeStringProperty("notes", format.notes());
                array.writeEndObject();
            }
            array.writeEndArray();
        }
        return text.toString();
    }
}
