package telltally.trainer.command;

import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.trainer.logbook.CsvExport;
import telltally.trainer.logbook.DrillEntry;
import telltally.trainer.logbook.Learner;
import telltally.trainer.logbook.LessonEntry;
import telltally.trainer.logbook.Logbook;
import telltally.trainer.logbook.LogbookException;
import telltally.trainer.logbook.XapiExport;
import tools.jackson.core.exc.JacksonIOException;

@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Writes every answer to a file: comma-separated values, xAPI statements, or both.")
final class ExportCommand implements Callable<Integer> {
    private final Streams streams;
    private final LogbookCommand logbook;

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--csv", paramLabel = "FILE", description = "Comma-separated values (RFC 4180); - for the screen.")
    private @Nullable String csv;

    @Option(names = "--xapi", paramLabel = "FILE", description = "xAPI statements (JSON); - for the screen.")
    private @Nullable String xapi;

    @Option(
            names = "--learner",
            paramLabel = "NAME",
            description = "Only this learner's answers; may be given more than once.")
    private List<String> names = new ArrayList<>();

    @Option(
            names = "--home-page",
            paramLabel = "URL",
            description = "For xAPI: where learners have their accounts, such as your school's address"
                    + " (default: ${DEFAULT-VALUE}).")
    private String homePage = "https://telltally.invalid";

    ExportCommand(Streams streams, LogbookCommand logbook) {
        this.streams = streams;
        this.logbook = logbook;
    }

    /** Writes answers to where they belong. */
    private interface Export {
        void to(Writer writer) throws IOException, LogbookException;
    }

    @Override
    public Integer call() throws ProblemException {
        if (csv == null && xapi == null) {
            throw new CommandLine.ParameterException(
                    Objects.requireNonNull(spec).commandLine(), "expected --csv FILE, --xapi FILE or both");
        }
        URI home = home();
        return logbook.open(open -> {
            List<Learner> learners = chosen(open);
            if (csv != null) {
                written(csv, writer -> csv(open, learners, writer));
            }
            if (xapi != null) {
                written(xapi, writer -> xapi(open, learners, home, writer));
            }
            return ExitStatus.DONE;
        });
    }

    private static void csv(Logbook open, List<Learner> learners, Writer writer) throws IOException, LogbookException {
        CsvExport export = new CsvExport(writer);
        export.header();
        for (Learner learner : learners) {
            for (DrillEntry drill : open.drills(learner)) {
                export.drill(learner, drill);
            }
            for (LessonEntry lesson : open.lessons(learner)) {
                export.lesson(learner, lesson);
            }
        }
    }

    private static void xapi(Logbook open, List<Learner> learners, URI home, Writer writer) throws LogbookException {
        try (XapiExport export = new XapiExport(home, writer)) {
            for (Learner learner : learners) {
                for (DrillEntry drill : open.drills(learner)) {
                    export.drill(learner, drill);
                }
                for (LessonEntry lesson : open.lessons(learner)) {
                    export.lesson(learner, lesson);
                }
            }
        }
    }

    private List<Learner> chosen(Logbook open) throws LogbookException, ProblemException {
        if (names.isEmpty()) {
            return open.learners();
        }
        List<Learner> chosen = new ArrayList<>();
        for (String name : names) {
            chosen.add(LogbookCommand.known(open, name));
        }
        return chosen.stream().distinct().toList();
    }

    private URI home() throws ProblemException {
        try {
            URI address = new URI(homePage);
            if (XapiExport.isHomePage(address)) {
                return address;
            }
        } catch (URISyntaxException e) {
            // Told below, like every other address that cannot be one.
        }
        throw new ProblemException(Problem.of(
                "--home-page", "is " + Problem.quoted(homePage) + "; expected an address like https://school.example"));
    }

    private void written(String name, Export export) throws ProblemException, LogbookException {
        try {
            if (name.equals("-")) {
                StringWriter text = new StringWriter();
                export.to(text);
                streams.out().print(text);
            } else {
                try (Writer writer = Files.newBufferedWriter(Path.of(name))) {
                    export.to(writer);
                }
            }
        } catch (IOException | JacksonIOException e) {
            throw new ProblemException(
                    Problem.of(name, "cannot be written: " + e.getClass().getSimpleName() + " " + e.getMessage()));
        }
    }
}
