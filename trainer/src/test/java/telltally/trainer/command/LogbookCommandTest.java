package telltally.trainer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import telltally.trainer.logbook.Logbook;
import telltally.trainer.logbook.LogbookException;
import telltally.trainer.logbook.SampleLogbook;

class LogbookCommandTest {
    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void somebody_has_practised() throws LogbookException {
        SampleLogbook.in(folder);
    }

    private CommandRun run(String input, String... arguments) {
        String[] all = new String[arguments.length + 3];
        all[0] = "logbook";
        all[1] = "--data";
        all[2] = folder.toString();
        System.arraycopy(arguments, 0, all, 3, arguments.length);
        return CommandRun.fed(input, all);
    }

    private void refused(CommandRun run, String expected) {
        assertThat(run.errorLines()).singleElement().asString().contains(expected);
        assertThat(run.status()).isEqualTo(2);
    }

    @Test
    void learners_are_listed_with_what_they_did() {
        CommandRun run = run("", "learners");

        assertThat(run.outLines()).hasSize(2);
        assertThat(run.outLines().get(0)).startsWith("Mira Öberg\t2026-03-0").endsWith("\t3 drills\t1 lesson");
        assertThat(run.outLines().get(1)).endsWith("\t0 drills\t0 lessons");
        assertThat(run.status()).isZero();
    }

    @Test
    void the_folder_may_be_named_behind_the_subcommand_too() {
        CommandRun run = CommandRun.of("logbook", "learners", "--data", folder.toString());

        assertThat(run.outLines()).hasSize(2);
    }

    @Test
    void both_exports_are_written_in_one_run() throws IOException {
        Path csv = folder.resolve("answers.csv");
        Path xapi = folder.resolve("answers.json");
        CommandRun run = run("", "export", "--csv", csv.toString(), "--xapi", xapi.toString());

        assertThat(run.status()).isZero();
        assertThat(Files.readAllLines(csv)).hasSize(5);
        assertThat(Files.readString(xapi)).startsWith("[").contains("telltally.invalid/telltally/drill/count-a-digit");
    }

    @Test
    void an_export_may_be_of_one_learner_and_go_to_the_screen() {
        CommandRun all = run("", "export", "--csv", "-", "--learner", "MIRA ÖBERG");
        assertThat(all.outLines()).hasSize(5);
        assertThat(run("", "export", "--csv", "-", "--learner", "Jon").outLines())
                .hasSize(1);
        refused(run("", "export", "--csv", "-", "--learner", "Eve"), "has no learner called \"Eve\"");
    }

    @Test
    void an_export_wants_to_know_what_and_where_to() {
        refused(run("", "export"), "expected --csv FILE, --xapi FILE or both");
        refused(run("", "export", "--xapi", "-", "--home-page", "school"), "expected an address like");
        refused(run("", "export", "--csv", folder.resolve("no/such/folder.csv").toString()), "cannot be written");
        refused(run(""), "expected learners, export or forget");
    }

    @Test
    void a_learner_is_deleted_only_when_the_name_is_typed_again() throws IOException {
        CommandRun kept = run("yes\n", "forget", "mira öberg");
        assertThat(kept.status()).isEqualTo(1);
        assertThat(kept.outLines()).last().asString().endsWith("Nothing was deleted.");

        CommandRun gone = run("Mira Öberg\n", "forget", "mira öberg");
        assertThat(gone.status()).isZero();
        assertThat(gone.outLines()).last().asString().endsWith("Deleted: Mira Öberg and 4 answers.");
        assertThat(run("", "learners").outLines()).singleElement().asString().startsWith("Jon");
    }

    @Test
    void a_script_may_delete_without_being_asked() {
        assertThat(run("", "forget", "Jon", "--yes").status()).isZero();
        refused(run("", "forget", "Jon", "--yes"), "has no learner called \"Jon\"");
    }

    @Test
    void a_folder_without_a_logbook_is_told_and_left_as_it_is() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        CommandRun run = CommandRun.of("logbook", "learners", "--data", empty.toString());

        refused(run, "is not there; nobody has kept records in this folder");
        assertThat(empty).isEmptyDirectory();
    }

    @Test
    void a_damaged_logbook_is_told_in_one_line() throws IOException {
        Path file = Logbook.fileIn(folder);
        Files.writeString(file, "scribble ".repeat(500));
        CommandRun run = run("", "learners");

        refused(run, "is damaged or no logbook; it was left as it is");
        assertThat(run.errorLines().get(0)).startsWith(file.toString());
        assertThat(Files.readString(file)).startsWith("scribble");
    }

    @Test
    void every_subcommand_explains_itself() {
        for (String each : List.of("learners", "export", "forget")) {
            CommandRun help = CommandRun.of("logbook", each, "--help");
            assertThat(help.status()).isZero();
            assertThat(help.outLines()).anyMatch(line -> line.contains("--data"));
        }
    }

    @Test
    void the_terminal_drill_keeps_answers_for_whoever_gives_a_name() {
        CommandRun drill = CommandRun.fed(
                "99\nq\n",
                "drill",
                "--lesson",
                "two-digits",
                "--text",
                "--learner",
                "Eve",
                "--data",
                folder.toString());

        assertThat(drill.status()).as(drill.err()).isZero();
        assertThat(run("", "learners").outLines())
                .anyMatch(line -> line.startsWith("Eve\t") && line.endsWith("\t1 lesson"));
        assertThat(run("", "export", "--csv", "-", "--learner", "Eve")
                        .outLines()
                        .get(1))
                .contains(",strip,");
    }

    @Test
    void a_name_that_is_none_is_refused_before_the_first_flash() {
        CommandRun drill = CommandRun.fed("", "drill", "--text", "--learner", " ", "--data", folder.toString());

        refused(drill, "--learner: is empty; expected a name");
        assertThat(drill.out()).isEmpty();
    }
}
