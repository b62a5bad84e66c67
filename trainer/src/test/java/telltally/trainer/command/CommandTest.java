package telltally.trainer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CommandTest {
    private static final Path LESSONS = Path.of("..", "scenarios", "lessons");
    private static final JsonMapper JSON = JsonMapper.shared();

    @TempDir
    private Path folder = Path.of("");

    private Path simulated(Path lesson) {
        Path out = folder.resolve(lesson.getFileName().toString().replace(".json", ""));
        CommandRun run = CommandRun.of("simulate", lesson.toString(), "--seed", "7", "--out", out.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        return out;
    }

    @Nested
    class Simulating_and_decoding {
        @Test
        void every_lesson_that_gives_codes_outright_comes_back_from_lamp_and_wire_and_dump() throws IOException {
            int seen = 0;
            for (Path lesson : lessons()) {
                if (!Files.readString(lesson).contains("\"codes\"")) {
                    continue;
                }
                seen++;
                Path out = simulated(lesson);
                JsonNode truth = JSON.readTree(Files.readString(out.resolve("truth.json")));
                for (List<String> recording : List.of(
                        List.of(out.resolve("lamp.csv").toString()),
                        List.of(out.resolve("pin.csv").toString()),
                        List.of(out.resolve("recording.vcd").toString(), "--wire", "lamp"),
                        List.of(out.resolve("recording.vcd").toString(), "--wire", "pin"))) {
                    Stream<String> args = Stream.concat(Stream.of("decode", "--json"), recording.stream());
                    CommandRun run = CommandRun.of(args.toArray(String[]::new));
                    JsonNode reading = JSON.readTree(run.out());
                    assertThat(reading.at("/codes")).as(recording.toString()).isEqualTo(truth.at("/codes"));
                    assertThat(reading.at("/format/id").asString())
                            .isEqualTo(truth.at("/format").asString());
                    assertThat(run.status()).isZero();
                }
            }
            assertThat(seen).isGreaterThanOrEqualTo(18);
        }

        @Test
        void the_same_seed_gives_the_same_bytes_and_another_seed_another_wait() throws IOException {
            Path lesson = LESSONS.resolve("11-full-key-on-test.json");
            Path first = simulated(lesson);
            Path again = folder.resolve("again");
            Path other = folder.resolve("other");
            CommandRun.of("simulate", lesson.toString(), "--seed", "7", "--out", again.toString());
            CommandRun.of("simulate", lesson.toString(), "--seed", "8", "--out", other.toString());
            for (String file : List.of("lamp.csv", "pin.csv", "recording.vcd", "truth.json")) {
                assertThat(Files.readAllBytes(again.resolve(file))).isEqualTo(Files.readAllBytes(first.resolve(file)));
            }
            assertThat(Files.readString(other.resolve("lamp.csv")))
                    .isNotEqualTo(Files.readString(first.resolve("lamp.csv")));
        }

        @Test
        void a_story_with_an_engine_writes_its_speed_and_what_should_be_found() throws IOException {
            Path out = simulated(LESSONS.resolve("28-one-of-four.json"));
            assertThat(Files.readString(out.resolve("speed.csv"))).startsWith("time_s,value");
            JsonNode truth = JSON.readTree(Files.readString(out.resolve("truth.json")));
            assertThat(truth.at("/expected/weak_cylinders").size()).isPositive();
            assertThat(truth.at("/bench/0/kind").asString()).isNotEmpty();
        }

        @Test
        void instruments_files_come_when_they_are_asked_for() throws IOException {
            Path out = folder.resolve("instruments");
            CommandRun run = CommandRun.of(
                    "simulate",
                    LESSONS.resolve("01-one-digit.json").toString(),
                    "--out",
                    out.toString(),
                    "--also",
                    "light,needle,sounder,wire");
            assertThat(run.status()).isZero();
            assertThat(Files.readString(out.resolve("light.csv"))).startsWith("time_s,value");
            assertThat(Files.readString(out.resolve("needle.csv"))).startsWith("time_s,value");
            assertThat(Files.readAllBytes(out.resolve("sounder.wav"))).startsWith('R', 'I', 'F', 'F');
            assertThat(Files.readAllBytes(out.resolve("wire.wav"))).startsWith('R', 'I', 'F', 'F');
            CommandRun unknown = CommandRun.of(
                    "simulate",
                    LESSONS.resolve("01-one-digit.json").toString(),
                    "--out",
                    out.toString(),
                    "--also",
                    "smoke");
            assertThat(unknown.errorLines()).singleElement().asString().contains("nothing is called \"smoke\"");
            assertThat(unknown.status()).isEqualTo(2);
        }

        @Test
        void what_instruments_recorded_is_decoded_like_the_lamp_itself() throws IOException {
            Path out = folder.resolve("heard");
            String lesson = LESSONS.resolve("10-present-and-stored.json").toString();
            CommandRun.of("simulate", lesson, "--out", out.toString(), "--also", "light,needle,sounder,wire");
            JsonNode truth = JSON.readTree(Files.readString(out.resolve("truth.json")));
            for (String file : List.of("light.csv", "needle.csv", "sounder.wav", "wire.wav")) {
                String recording = out.resolve(file).toString();
                CommandRun run = CommandRun.of("decode", "--json", "--channel", "samples", recording);
                assertThat(run.err()).isEmpty();
                assertThat(JSON.readTree(run.out()).at("/codes")).as(file).isEqualTo(truth.at("/codes"));
                assertThat(run.status()).isZero();
            }
            CommandRun edges = CommandRun.of(
                    "decode", "--channel", "edges", out.resolve("light.csv").toString());
            assertThat(edges.errorLines()).singleElement().asString().contains("holds samples; edges were expected");
            assertThat(edges.status()).isEqualTo(2);
            CommandRun samples = CommandRun.of(
                    "decode", "--channel", "samples", out.resolve("lamp.csv").toString());
            assertThat(samples.errorLines()).singleElement().asString().contains("holds edges; samples were expected");
            CommandRun unknown = CommandRun.of(
                    "decode", "--channel", "smell", out.resolve("lamp.csv").toString());
            assertThat(unknown.errorLines()).singleElement().asString().contains("expected auto or edges or samples");
            assertThat(unknown.status()).isEqualTo(2);
        }

        @Test
        void a_recording_without_blinking_says_so() throws IOException {
            StringBuilder flat = new StringBuilder("time_s,value\n");
            for (int i = 0; i < 500; i++) {
                flat.append(i).append(".0,5.0\n");
            }
            CommandRun run = CommandRun.of(
                    "decode",
                    "--json",
                    Files.writeString(folder.resolve("flat.csv"), flat).toString());
            assertThat(run.status()).isEqualTo(1);
            assertThat(JSON.readTree(run.out()).at("/warnings/0/kind").asString())
                    .isEqualTo("no-flashes");
        }

        @Test
        void standard_input_is_read_and_named_as_it_was_asked_for() throws IOException {
            Path out = simulated(LESSONS.resolve("03-two-digits.json"));
            CommandRun run = CommandRun.fed(Files.readString(out.resolve("lamp.csv")), "decode", "-", "--json");
            assertThat(JSON.readTree(run.out()).at("/source").asString()).isEqualTo("-");
            assertThat(run.status()).isZero();
        }

        @Test
        void a_lamp_that_never_blinks_is_told_and_exits_with_1() throws IOException {
            Path dark = Files.writeString(folder.resolve("dark.csv"), "time_s,level\n0.0,0\n60.0,0\n");
            CommandRun run = CommandRun.of("decode", dark.toString(), "--json");
            JsonNode reading = JSON.readTree(run.out());
            assertThat(run.status()).isEqualTo(1);
            assertThat(reading.at("/codes").isEmpty()).isTrue();
            assertThat(reading.at("/warnings/0/kind").asString()).isEqualTo("no-flashes");
        }

        @Test
        void without_json_the_answer_reads_like_a_work_sheet() {
            Path out = simulated(LESSONS.resolve("10-present-and-stored.json"));
            CommandRun run = CommandRun.of("decode", out.resolve("lamp.csv").toString(), "--code-list", "plank");
            assertThat(run.out())
                    .contains("format pair-even")
                    .contains("present, engine off:\n    41  Coolant temperature sensor: circuit open")
                    .contains("stored:\n    24  ");
        }
    }

    @Test
    void formats_lists_the_seven_that_ship() {
        List<String> ids = List.of(
                "count-loop", "long-short", "pair-even", "pair-loop", "pair-thrice", "quad-lead", "triple-even");
        assertThat(CommandRun.of("formats").out().lines().map(line -> line.split(" ", 2)[0]))
                .containsExactlyElementsOf(ids);
        JsonNode json = JSON.readTree(CommandRun.of("formats", "--json").out());
        assertThat(json).extracting(format -> format.at("/id").asString()).containsExactlyElementsOf(ids);
    }

    @Test
    void check_finds_nothing_to_correct_in_anything_that_ships() throws IOException {
        List<String> files;
        try (Stream<Path> found = Files.walk(Path.of("..", "scenarios"))) {
            files = found.filter(path -> path.toString().endsWith(".json")
                            && !path.toString().contains("schemas"))
                    .sorted()
                    .map(Path::toString)
                    .toList();
        }
        CommandRun run =
                CommandRun.of(Stream.concat(Stream.of("check"), files.stream()).toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines()).hasSameSizeAs(files).hasSizeGreaterThanOrEqualTo(29);
        assertThat(run.status()).isZero();
    }

    @Test
    void every_command_explains_itself() {
        for (String command : List.of("simulate", "decode", "check", "formats", "drill")) {
            CommandRun run = CommandRun.of(command, "--help");
            assertThat(run.out()).startsWith("Usage: telltally " + command);
            assertThat(run.status()).isZero();
        }
        assertThat(CommandRun.of("--help").out()).contains("Exit status: 0 done");
        assertThat(CommandRun.of("--version").out()).startsWith("telltally ");
    }

    @Nested
    class Drilling {
        @Test
        void the_warning_comes_before_the_first_flash_and_the_answer_is_marked() {
            CommandRun run =
                    CommandRun.fed("41\n24\nq\n", "drill", "--language", "en", "--lesson", "present-and-stored");
            assertThat(run.out()).startsWith("Flashing light can trigger seizures");
            assertThat(run.out()).contains("..##..##..##..##...").contains("All right.");
            assertThat(run.status()).isZero();
        }

        @Test
        void it_speaks_the_language_that_is_asked_for() {
            CommandRun run = CommandRun.fed("42\n\nq\n", "drill", "--language", "de", "--lesson", "present-and-stored");
            assertThat(run.out())
                    .startsWith("Blinkendes Licht kann bei Menschen mit fotosensibler Epilepsie")
                    .contains("Was hast du gezählt, ")
                    .contains("  gesendet     41")
                    .contains("0 von 2 Codes richtig.");
            assertThat(CommandRun.of("drill", "--language", "xx").errorLines())
                    .singleElement()
                    .asString()
                    .contains("--language");
        }

        @Test
        void an_error_is_named() {
            CommandRun run = CommandRun.fed("42\n\nq\n", "drill", "--language", "en", "--lesson", "present-and-stored");
            assertThat(run.out())
                    .contains("miscounted digit: 41: the second digit was 1 flash; you wrote 2, one too many.")
                    .contains("lost code: 24")
                    .contains("0 of 2 codes right.");
        }

        @Test
        void the_end_of_the_input_ends_it_politely_wherever_it_comes() {
            for (String input : List.of("", "x\n", "3\n", "3\n21\n", "3\n21\n\n", "q\n")) {
                CommandRun run = CommandRun.fed(input, "drill");
                assertThat(run.err()).isEmpty();
                assertThat(run.status()).isZero();
            }
        }
    }

    private static List<Path> lessons() throws IOException {
        try (Stream<Path> found = Files.list(LESSONS)) {
            return found.filter(path -> path.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
