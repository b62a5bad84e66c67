package telltally.simulator.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.codelist.CodeListReader;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatReader;
import telltally.simulator.scenario.References.Shelf;

/** Reads a lesson from its file and checks that its format can send what it asks for. */
public final class ScenarioReader {
    public static final String SCHEMA = "telltally/scenario/1";

    private static final int MOST_CYLINDERS = 12;
    private static final int MOST_LOOPS = 20;
    private static final int USUAL_LOOPS = 2;

    private final Shelf<FlashFormat> formats;
    private final Shelf<CodeList> codeLists;

    public ScenarioReader(FormatCatalog formats, CodeListCatalog codeLists) {
        this.formats = new Shelf<>("format", formats::find, formats.ids(), FormatReader::read);
        this.codeLists = new Shelf<>("code list", codeLists::find, codeLists.ids(), CodeListReader::read);
    }

    /** Reads with the formats and code lists that ship with Telltally. */
    public static ScenarioReader shipped() {
        return new ScenarioReader(FormatCatalog.shipped(), CodeListCatalog.shipped());
    }

    /**
     * @throws ProblemException with every problem of the file, and after them those of a format or code list that it
     *     names as a file
     */
    public Scenario read(Path path) throws ProblemException {
        return read(TextFile.read(path, TextFile.DOCUMENT_BYTES), Optional.ofNullable(path.getParent()));
    }

    /**
     * @param folder where files that the scenario names are looked for; the working folder where it is empty
     * @throws ProblemException as {@link #read(Path)}
     */
    public Scenario read(TextFile source, Optional<Path> folder) throws ProblemException {
        Problems problems = new Problems(source.name());
        Fields file = Fields.of(source, problems);
        References references = new References(file, folder);
        file.schema(SCHEMA);
        String id = file.id("id");
        String title = file.text("title");
        List<String> briefing = briefing(file);
        String task = file.text("task");
        Optional<FlashFormat> format = references.find("format", file.text("format"), formats);
        Optional<CodeList> codeList =
                file.optionalText("code_list").flatMap(named -> references.find("code_list", named, codeLists));
        boolean caused = file.has("vehicle");
        int cylinders = caused ? 0 : file.whole("cylinders", 2, MOST_CYLINDERS, 0);
        boolean prompt = file.flag("prompt", false);
        Display display = file.choice("shown_by", List.of(Display.values()), Display::key, Display.LAMP);
        int loops = loops(file, format);
        Optional<? extends Content> content = caused
                ? new CauseReader(file, format, codeList).read(display, prompt)
                : outright(file, format, codeList, cylinders, prompt);
        ChannelRecipe channel = ChannelFields.read(file.optionalObjects("channel"));
        file.close();
        references.throwIfAny(problems);
        return new Scenario(
                id,
                title,
                briefing,
                task,
                format.orElseThrow(),
                codeList,
                content.orElseThrow(),
                display,
                loops,
                channel);
    }

    private static Optional<Content.Outright> outright(
            Fields file, Optional<FlashFormat> format, Optional<CodeList> codeList, int cylinders, boolean prompt) {
        return file.object("codes")
                .flatMap(codes -> new MessageReader(file, codes, format, codeList).read(cylinders, prompt))
                .map(Content.Outright::new);
    }

    private static List<String> briefing(Fields file) {
        int before = file.problems().count();
        List<PlacedText> paragraphs = file.texts("briefing");
        if (paragraphs.isEmpty() && file.problems().count() == before) {
            file.problem("briefing", "is empty; at least one paragraph was expected");
        }
        for (PlacedText paragraph : paragraphs) {
            if (paragraph.text().isBlank()) {
                file.problems().add(paragraph.place(), paragraph.pointer(), "is empty; a paragraph was expected");
            }
        }
        return paragraphs.stream().map(PlacedText::text).toList();
    }

    private static int loops(Fields file, Optional<FlashFormat> format) {
        int loops = file.whole("loops", 1, MOST_LOOPS, USUAL_LOOPS);
        if (file.has("loops") && file.has("vehicle")) {
            file.problem("loops", "has no meaning here; with a vehicle the list loops until the key is off");
        } else if (file.has("loops")
                && format.isPresent()
                && !format.get().repeats().loops()) {
            file.problem(
                    "loops", "has no meaning here; the format " + format.get().id() + " does not loop");
        }
        return loops;
    }
}
