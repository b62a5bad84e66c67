package telltally.simulator.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.codelist.CodeListReader;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatReader;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;

/** Reads a lesson from its file and checks that its format can send what it asks for. */
public final class ScenarioReader {
    public static final String SCHEMA = "telltally/scenario/1";

    private static final int MOST_CYLINDERS = 12;
    private static final int MOST_LOOPS = 20;

    private final FormatCatalog formats;
    private final CodeListCatalog codeLists;

    public ScenarioReader(FormatCatalog formats, CodeListCatalog codeLists) {
        this.formats = formats;
        this.codeLists = codeLists;
    }

    /** Reads with the formats and code lists that ship with Telltally. */
    public static ScenarioReader shipped() {
        return new ScenarioReader(FormatCatalog.shipped(), CodeListCatalog.shipped());
    }

    /** @throws ProblemException with every problem of the file, and of a format or code list that it names as a file */
    public Scenario read(Path path) throws ProblemException {
        Path folder = path.toAbsolutePath().getParent();
        return read(TextFile.read(path, TextFile.DOCUMENT_BYTES), Optional.ofNullable(folder));
    }

    /**
     * @param folder where files that the scenario names are looked for
     * @throws ProblemException with every problem of the file
     */
    public Scenario read(TextFile source, Optional<Path> folder) throws ProblemException {
        Problems problems = new Problems(source.name());
        Fields file = Fields.of(source, problems);
        file.schema(SCHEMA);
        String id = file.id("id");
        String title = file.text("title");
        List<String> briefing =
                file.texts("briefing").stream().map(PlacedText::text).toList();
        String task = file.text("task");
        Display display =
                file.has("shown_by") ? file.choice("shown_by", List.of(Display.values()), Display::key) : Display.LAMP;
        Optional<FlashFormat> format = format(file, folder);
        Optional<CodeList> codeList = codeList(file, folder);
        int cylinders = file.whole("cylinders", 2, MOST_CYLINDERS, 0);
        boolean prompt = file.flag("prompt", false);
        int loops = file.whole("loops", 1, MOST_LOOPS, 2);
        Optional<Message> message = file.object("codes")
                .flatMap(codes -> format.flatMap(
                        known -> new MessageFields(codes, known, codeList, cylinders, prompt).message(file)));
        file.close();
        problems.throwIfAny();
        return new Scenario(
                id, title, briefing, task, format.orElseThrow(), codeList, message.orElseThrow(), display, loops);
    }

    private Optional<FlashFormat> format(Fields file, Optional<Path> folder) throws ProblemException {
        String named = file.text("format");
        if (named.isBlank()) {
            return Optional.empty();
        }
        if (named.endsWith(".json")) {
            return Optional.of(FormatReader.read(besides(folder, named)));
        }
        Optional<FlashFormat> format = formats.find(named);
        if (format.isEmpty()) {
            file.problem(
                    "format",
                    "no format is called " + Problem.quoted(named) + "; expected " + String.join(", ", formats.ids())
                            + " or a file ending in .json");
        }
        return format;
    }

    private Optional<CodeList> codeList(Fields file, Optional<Path> folder) throws ProblemException {
        Optional<String> named = file.optionalText("code_list");
        if (named.isEmpty() || named.get().isBlank()) {
            return Optional.empty();
        }
        if (named.get().endsWith(".json")) {
            return Optional.of(CodeListReader.read(besides(folder, named.get())));
        }
        Optional<CodeList> codeList = codeLists.find(named.get());
        if (codeList.isEmpty()) {
            file.problem(
                    "code_list",
                    "no code list is called " + Problem.quoted(named.get()) + "; expected "
                            + String.join(", ", codeLists.ids()) + " or a file ending in .json");
        }
        return codeList;
    }

    private static TextFile besides(Optional<Path> folder, String named) throws ProblemException {
        Path path = folder.map(each -> each.resolve(named)).orElse(Path.of(named));
        return TextFile.read(path.normalize(), TextFile.DOCUMENT_BYTES);
    }

    /** The codes by segment, as the file gives them. */
    private record MessageFields(
            Fields codes, FlashFormat format, Optional<CodeList> codeList, int cylinders, boolean prompt) {

        Optional<Message> message(Fields file) {
            List<String> sessions = new ArrayList<>();
            boolean keyOn = codes.has(Segment.PRESENT.key()) || codes.has(Segment.STORED.key());
            if (keyOn) {
                sessions.add("present and stored");
            }
            for (Segment segment : List.of(Segment.RUNNING, Segment.BALANCE, Segment.CODES)) {
                if (codes.has(segment.key())) {
                    sessions.add(segment.key());
                }
            }
            if (sessions.size() != 1) {
                codes.problem("holds " + (sessions.isEmpty() ? "no segment" : String.join(", ", sessions))
                        + "; expected the codes of one test: present and stored, or running, or balance, or codes");
                codes.names();
                return Optional.empty();
            }
            Problems problems = codes.problems();
            int before = problems.count();
            Message message = keyOn ? keyOn() : other(file);
            codes.close();
            if (problems.count() > before) {
                return Optional.empty();
            }
            message.refusal(format).ifPresent(codes::problem);
            return Optional.of(message);
        }

        private Message keyOn() {
            return new Message.KeyOn(list(Segment.PRESENT), list(Segment.STORED));
        }

        private Message other(Fields file) {
            if (codes.has(Segment.RUNNING.key())) {
                if (cylinders == 0) {
                    file.problem("cylinders", "is missing; a running test opens with half the number of cylinders");
                }
                return new Message.Running(cylinders, prompt, list(Segment.RUNNING));
            }
            return codes.has(Segment.BALANCE.key()) ? balance() : new Message.Codes(list(Segment.CODES));
        }

        /** A balance result is a count; its last zero, where it is written, sends no flash. */
        private Message balance() {
            List<PlacedText> found = codes.texts(Segment.BALANCE.key());
            String text = found.size() == 1 ? found.get(0).text() : "";
            if (!text.matches("[1-9]0?")) {
                codes.problem(
                        Segment.BALANCE.key(),
                        "expected one result: the flashes 1 to 9, with or without the zero that is written after them");
                return new Message.Balance(1);
            }
            return new Message.Balance(text.charAt(0) - '0');
        }

        private List<String> list(Segment segment) {
            List<String> list = new ArrayList<>();
            for (PlacedText code : codes.optionalTexts(segment.key())) {
                Problems problems = codes.problems();
                String quoted = Problem.quoted(code.text());
                Optional<String> refusal = format.refusal(code.text());
                if (refusal.isPresent()) {
                    problems.add(code.place(), code.pointer(), quoted + " " + refusal.get());
                } else if (codeList.isPresent()
                        && codeList.get().meaning(code.text()).isEmpty()) {
                    problems.add(
                            code.place(),
                            code.pointer(),
                            quoted + " is not in the code list "
                                    + codeList.get().id());
                } else if (list.contains(code.text())) {
                    problems.add(code.place(), code.pointer(), quoted + " stands twice; a list has each code once");
                }
                list.add(code.text());
            }
            return list;
        }
    }
}
