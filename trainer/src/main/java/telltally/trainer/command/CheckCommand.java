package telltally.trainer.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import telltally.decoder.score.SeedSetReader;
import telltally.simulator.codelist.CodeListReader;
import telltally.simulator.document.Json;
import telltally.simulator.document.JsonDocument;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FormatReader;
import telltally.simulator.recording.TruthJson;
import telltally.simulator.recording.TruthReader;
import telltally.simulator.scenario.ScenarioReader;
import telltally.trainer.lesson.Translation;

@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Checks scenarios, flash formats, code lists, translations, seed sets and truths.",
            "Tells every problem with file, line, column and field; exit status 2 where there is one."
        })
final class CheckCommand implements Callable<Integer> {
    /** How a kind of file is checked. */
    private interface Check {
        void run(Path path) throws ProblemException;
    }

    private final Streams streams;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "JSON files; each says in \"schema\" what it is.")
    private List<Path> files = List.of();

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        Map<String, Check> checks = checks();
        int status = ExitStatus.DONE;
        for (Path file : files) {
            try {
                String schema = schema(file, checks);
                Check check = checks.get(schema);
                if (check != null) {
                    check.run(file);
                }
                streams.line(file + ": nothing to correct");
            } catch (ProblemException e) {
                streams.out().flush();
                streams.problems(e.problems());
                status = ExitStatus.BAD_INPUT;
            }
        }
        return status;
    }

    private static Map<String, Check> checks() {
        ScenarioReader scenarios = ScenarioReader.shipped();
        Map<String, Check> checks = new LinkedHashMap<>();
        checks.put(ScenarioReader.SCHEMA, scenarios::read);
        checks.put(FormatReader.SCHEMA, path -> FormatReader.read(TextFile.read(path, TextFile.DOCUMENT_BYTES)));
        checks.put(CodeListReader.SCHEMA, path -> CodeListReader.read(TextFile.read(path, TextFile.DOCUMENT_BYTES)));
        checks.put(Translation.SCHEMA, path -> Translation.read(TextFile.read(path, TextFile.DOCUMENT_BYTES)));
        checks.put(SeedSetReader.SCHEMA, SeedSetReader::read);
        checks.put(TruthJson.SCHEMA, path -> TruthReader.read(TextFile.read(path, TextFile.DOCUMENT_BYTES)));
        return checks;
    }

    private static String schema(Path file, Map<String, Check> checks) throws ProblemException {
        TextFile source = TextFile.read(file, TextFile.DOCUMENT_BYTES);
        Json json = JsonDocument.parse(source);
        String expected = "expected one of " + String.join(", ", checks.keySet());
        if (!(json instanceof Json.JsonObject object)) {
            throw new ProblemException(
                    new Problem(source.name(), json.place(), "", "holds " + json.kind() + "; an object was expected"));
        }
        Json schema = object.members().get("schema");
        if (schema == null) {
            throw new ProblemException(new Problem(source.name(), json.place(), "/schema", "is missing; " + expected));
        }
        if (!(schema instanceof Json.JsonText text)) {
            throw new ProblemException(
                    new Problem(source.name(), schema.place(), "/schema", "is " + schema.kind() + "; " + expected));
        }
        if (!checks.containsKey(text.text())) {
            throw new ProblemException(new Problem(
                    source.name(), text.place(), "/schema", "is " + Problem.quoted(text.text()) + "; " + expected));
        }
        return text.text();
    }
}
