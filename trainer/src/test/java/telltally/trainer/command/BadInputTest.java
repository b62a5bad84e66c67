package telltally.trainer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bad input of each kind gets one clear line and exit status 2. */
class BadInputTest {
    private static final String LESSON = """
            {"schema": "telltally/scenario/1",
             "id": "yard",
             "title": "Yard",
             "briefing": ["The van stands in the yard."],
             "task": "Count.",
             "format": "pair-even",
             "code_list": "plank",
             "codes": {"present": ["41"], "stored": []}}
            """;

    @TempDir
    private Path folder = Path.of("");

    private Path file(String name, String content) throws IOException {
        return Files.writeString(folder.resolve(name), content);
    }

    /** One line, and what it says after the file's name. */
    private static void refused(CommandRun run, Path file, String expected) {
        assertThat(run.errorLines()).containsExactly(file + expected);
        assertThat(run.status()).isEqualTo(2);
    }

    @Nested
    class Scenarios {
        private void refusedLesson(String replace, String by, String expected) throws IOException {
            Path file = file("yard.json", LESSON.replace(replace, by));
            refused(CommandRun.of("check", file.toString()), file, expected);
            refused(
                    CommandRun.of(
                            "simulate",
                            file.toString(),
                            "--out",
                            folder.resolve("out").toString()),
                    file,
                    expected);
            assertThat(folder.resolve("out")).doesNotExist();
        }

        @Test
        void a_missing_field() throws IOException {
            refusedLesson("\"title\": \"Yard\",", "", ":1:1: /title: is missing; expected a text");
        }

        @Test
        void a_wrong_type() throws IOException {
            refusedLesson("\"title\": \"Yard\"", "\"title\": 7", ":3:11: /title: is a number; expected a text");
        }

        @Test
        void an_unknown_code() throws IOException {
            refusedLesson("\"41\"", "\"99\"", ":8:24: /codes/present/0: \"99\" is not in the code list plank");
        }

        @Test
        void a_code_that_the_format_cannot_send() throws IOException {
            CommandRun run = CommandRun.of(
                    "check",
                    file("yard.json", LESSON.replace("\"41\"", "\"40\"")).toString());
            assertThat(run.errorLines())
                    .singleElement()
                    .asString()
                    .contains("yard.json:8:24: /codes/present/0: \"40\"")
                    .contains("this format sends 1 2 3 4 5 6 7 8 9");
            assertThat(run.status()).isEqualTo(2);
        }

        @Test
        void every_problem_is_told_in_one_run() throws IOException {
            Path file =
                    file("yard.json", LESSON.replace("\"yard\"", "\"Yard!\"").replace("pair-even", "pair-odd"));
            CommandRun run = CommandRun.of("check", file.toString());
            assertThat(run.errorLines()).hasSize(2).allMatch(line -> line.startsWith(file + ":"));
            assertThat(run.status()).isEqualTo(2);
        }

        @Test
        void broken_json() throws IOException {
            Path file = file("yard.json", "{\"schema\": \"telltally/scenario/1\",\n \"id\" \"yard\"}");
            CommandRun run = CommandRun.of("check", file.toString());
            assertThat(run.errorLines())
                    .singleElement()
                    .asString()
                    .startsWith(file + ":2:")
                    .contains("is not JSON");
            assertThat(run.status()).isEqualTo(2);
        }

        @Test
        void json_of_no_known_kind() throws IOException {
            Path file = file("other.json", "{\"schema\": \"something/else\"}");
            CommandRun run = CommandRun.of("check", file.toString());
            assertThat(run.errorLines())
                    .singleElement()
                    .asString()
                    .startsWith(file + ":1:12: /schema: is \"something/else\"; expected one of telltally/scenario/1");
            assertThat(run.status()).isEqualTo(2);
        }
    }

    @Nested
    class Recordings {
        @Test
        void broken_csv() throws IOException {
            Path file = file("yard.csv", "time_s,level\n0.0,0\n1.0,2\n2.0,0\n");
            CommandRun run = CommandRun.of("decode", file.toString());
            assertThat(run.errorLines()).singleElement().asString().startsWith(file + ":3:5: level: ");
            assertThat(run.status()).isEqualTo(2);
        }

        @Test
        void a_broken_value_change_dump() throws IOException {
            Path file =
                    file("yard.vcd", "$timescale 1 ms $end\n$var wire 1 ! lamp $end\n$enddefinitions $end\n#0\n1?\n");
            CommandRun run = CommandRun.of("decode", file.toString());
            assertThat(run.errorLines()).singleElement().asString().startsWith(file + ":5:");
            assertThat(run.status()).isEqualTo(2);
        }

        @Test
        void something_else_entirely() throws IOException {
            for (String content : List.of("{\"a\": 1}", "<html/>", "\u0000\u0001\u0002")) {
                CommandRun run =
                        CommandRun.of("decode", file("yard.bin", content).toString());
                assertThat(run.errorLines()).as(content).hasSize(1);
                assertThat(run.status()).isEqualTo(2);
            }
        }

        @Test
        void one_bad_file_does_not_lose_the_others() throws IOException {
            Path bad = file("bad.csv", "nonsense");
            Path good = folder.resolve("out");
            assertThat(CommandRun.of("simulate", lesson(), "--out", good.toString())
                            .status())
                    .isZero();
            CommandRun run = CommandRun.of(
                    "decode",
                    "--json",
                    good.resolve("lamp.csv").toString(),
                    bad.toString(),
                    good.resolve("pin.csv").toString());
            assertThat(run.status()).isEqualTo(2);
            assertThat(run.errorLines()).hasSize(1);
            assertThat(run.out().lines())
                    .hasSize(2)
                    .allMatch(line -> line.startsWith("{\"schema\":\"telltally/reading/1\""));
        }
    }

    @Nested
    class Files_and_folders {
        private void refusedEverywhere(Path file, String expected) {
            refused(CommandRun.of("check", file.toString()), file, expected);
            refused(CommandRun.of("decode", file.toString()), file, expected);
            refused(CommandRun.of("simulate", file.toString(), "--out", folder.toString()), file, expected);
        }

        @Test
        void no_such_file() {
            refusedEverywhere(folder.resolve("nowhere.json"), ": no such file");
        }

        @Test
        void a_directory_instead_of_a_file() {
            refusedEverywhere(folder, ": is a directory; a file was expected");
        }

        @Test
        void an_empty_file() throws IOException {
            refusedEverywhere(file("empty.json", ""), ": is empty");
        }

        @Test
        void a_file_of_100_megabytes() throws IOException {
            Path file = folder.resolve("huge.csv");
            try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
                huge.setLength(100_000_000);
            }
            refused(CommandRun.of("decode", file.toString()), file, ": is larger than 64 MiB, the most that is read");
            refused(CommandRun.of("check", file.toString()), file, ": is larger than 1 MiB, the most that is read");
        }

        @Test
        void a_file_where_a_folder_belongs() throws IOException {
            Path out = file("out", "x");
            refused(
                    CommandRun.of("simulate", lesson(), "--out", out.toString()),
                    out,
                    ": is a file; a folder was expected");
        }

        @Test
        void nothing_on_standard_input() {
            CommandRun run = CommandRun.of("decode", "-");
            assertThat(run.errorLines()).containsExactly("-: standard input is empty");
            assertThat(run.status()).isEqualTo(2);
        }
    }

    @Nested
    class Usage {
        private void refusedUsage(String expected, String... args) {
            CommandRun run = CommandRun.of(args);
            assertThat(run.errorLines()).singleElement().asString().contains(expected);
            assertThat(run.status()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
        }

        @Test
        void an_unknown_command() {
            refusedUsage("'nonsense' (see telltally --help)", "nonsense");
        }

        @Test
        void an_unknown_option() {
            refusedUsage("--loud", "decode", "--loud", "x.csv");
        }

        @Test
        void a_missing_argument() {
            refusedUsage("FILE", "decode");
            refusedUsage("--out=DIR", "simulate", "x.json");
        }

        @Test
        void a_seed_that_is_no_number() {
            refusedUsage("--seed", "simulate", "x.json", "--seed", "many", "--out", "y");
        }

        @Test
        void an_unknown_format_or_code_list_or_lesson() {
            refusedUsage(
                    "nothing is called \"pair-odd\"; expected auto, count-loop",
                    "decode",
                    "--format",
                    "pair-odd",
                    "x.csv");
            refusedUsage("nothing is called \"oak\"; expected burner", "decode", "--code-list", "oak", "x.csv");
            refusedUsage("no lesson is called \"oak\"; expected ", "drill", "--lesson", "oak");
            refusedUsage("no lesson is called \"oak\"; expected ", "--lesson", "oak");
        }
    }

    private static String lesson() {
        return Path.of("..", "scenarios", "lessons", "10-present-and-stored.json")
                .toString();
    }
}
