package telltally.trainer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ScoreCommandTest {
    private static final String SEEDS = Path.of("..", "seeds").toString();
    private static final String CLEAN =
            Path.of("..", "seeds", "messages-clean.json").toString();

    @TempDir
    private Path folder;

    private static CommandRun score(String... more) {
        String[] args = new String[more.length + 6];
        List<String> first = List.of("score", "--decoder", "plain", "--alone", "--sessions", "200");
        for (int i = 0; i < args.length; i++) {
            args[i] = i < first.size() ? first.get(i) : more[i - first.size()];
        }
        return CommandRun.of(args);
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void the_card_says_first_how_much_was_right() {
        CommandRun run = score("--seeds", CLEAN);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .startsWith("Score card of plain\n200 sessions of 1 seed set,")
                .containsPattern("all right +95 % between +lists")
                .containsPattern("messages-clean  lamp +100 +100\\.0");
    }

    @Test
    void the_seed_sets_that_ship_are_found_without_their_folder_and_chosen_by_name() {
        CommandRun run = score("--set", "messages-clean", "--json");
        assertThat(run.status()).isZero();
        JsonNode card = JsonMapper.shared().readTree(run.out());
        assertThat(card.at("/sets")).hasSize(1);
        assertThat(card.at("/sets/0/id").asString()).isEqualTo("messages-clean");
    }

    @Test
    void shards_merge_to_the_same_bytes_whatever_the_threads() {
        CommandRun whole = score("--seeds", CLEAN, "--json", "--threads", "1");
        for (int i = 1; i <= 2; i++) {
            CommandRun shard = score("--seeds", CLEAN, "--shard", i + "/2", "--save", file(i + ".json"));
            assertThat(shard.out()).contains("shard " + i + " of 2").contains("judged when all shards are merged");
        }
        CommandRun merged = CommandRun.of("score", "--json", "--merge", file("2.json"), file("1.json"));
        assertThat(merged.err()).isEmpty();
        assertThat(merged.out()).isEqualTo(whole.out());
        assertThat(merged.status()).isZero();
    }

    @Test
    void a_decoder_below_its_floor_exits_with_1_and_says_where() {
        CommandRun run = CommandRun.of("score", "--run", "exit 1", "--alone", "--threads", "1", "--seeds", CLEAN);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.errorLines())
                .containsExactly(
                        "--run: ended with status 1",
                        "outside failed every session that was tried first, and is not asked again; the last: "
                                + "ended with status 1");
        assertThat(run.out())
                .contains("Falls short:\n  messages-clean, lamp: 0 of ")
                .contains("No answer, or none that could be understood:\n")
                .contains("telltally score --run 'exit 1' --seeds");
    }

    @Test
    void a_moved_digest_exits_with_1_and_names_the_block() throws IOException {
        String text = Files.readString(Path.of(CLEAN));
        int at = text.indexOf("\"sha256\": [");
        int sum = text.indexOf('"', at + 11) + 1;
        Path set = Files.writeString(
                folder.resolve("set.json"), text.substring(0, sum) + "0".repeat(64) + text.substring(sum + 64));
        CommandRun run = CommandRun.of("score", "--decoder", "plain", "--alone", "--seeds", set.toString());
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out())
                .contains("messages-clean: block 1, seeds ")
                .contains("generated output changed: raise the generator version or undo");
    }

    @Test
    void a_program_that_hangs_costs_no_more_patience_than_it_is_given() {
        CommandRun run =
                CommandRun.of("score", "--run", "sleep 1000", "--patience", "0.2", "--alone", "--seeds", CLEAN);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).startsWith("--run: no answer within 200 ms; each line of its output has to be flushed\n");
        assertThat(run.out()).containsPattern("hung +800").contains("--run 'sleep 1000' --patience 0.2 --seeds");
    }

    @Nested
    class Against_a_saved_card {
        @Test
        void the_same_decoder_comes_out_as_before() {
            score("--seeds", CLEAN, "--save", file("old.json"));
            CommandRun run = score("--seeds", CLEAN, "--against", file("old.json"));
            assertThat(run.out()).endsWith("old.json: every case came out as before.\n");
            assertThat(run.status()).isZero();
        }

        @Test
        void a_decoder_that_never_answers_is_worse() {
            score("--seeds", CLEAN, "--save", file("old.json"));
            CommandRun run = CommandRun.of(
                    "score",
                    "--run",
                    "exit 1",
                    "--alone",
                    "--sessions",
                    "200",
                    "--seeds",
                    CLEAN,
                    "--against",
                    file("old.json"));
            assertThat(run.out())
                    .contains("the card of plain: worse on 2 of 2, beyond chance.")
                    .containsPattern("messages-clean  lamp +100 +100 +0 +0 +100 +below 0.001  worse");
        }
    }

    @Nested
    class One_case {
        @Test
        void is_shown_by_the_command_that_the_card_prints() {
            CommandRun run = CommandRun.of(
                    "score",
                    "--decoder",
                    "plain",
                    "--set",
                    "messages-clock-jitter-bounce",
                    "--seed",
                    "50227",
                    "--line",
                    "lamp");
            assertThat(run.err()).isEmpty();
            assertThat(run.status()).isZero();
            assertThat(run.out())
                    .startsWith("messages-clock-jitter-bounce, seed 50227, random message, on the lamp, read by plain")
                    .contains("\n  sent  in pair-loop: codes 12\n");
        }

        @Test
        void can_be_written_as_files_that_decode_reads() {
            CommandRun run = CommandRun.of(
                    "score",
                    "--decoder",
                    "plain",
                    "--seeds",
                    SEEDS,
                    "--set",
                    "lessons",
                    "--seed",
                    "3",
                    "--lesson",
                    "present-and-stored",
                    "--out",
                    folder.toString());
            assertThat(run.status()).isZero();
            assertThat(run.out()).contains("on the lamp").contains("on the pin").contains("all right");
            assertThat(folder)
                    .isDirectoryContaining("glob:**/truth.json")
                    .isDirectoryContaining("glob:**/reading.json")
                    .isDirectoryContaining("glob:**/timeline.svg");
            CommandRun decoded = CommandRun.of("decode", file("lamp.csv"), "--format", "pair-even");
            assertThat(decoded.status()).isZero();
        }
    }

    @Test
    void floors_rise_in_the_file_to_what_was_reached_and_say_so() throws IOException {
        String low = Files.readString(Path.of(CLEAN)).replaceFirst("\"lists_right\": [0-9.]+", "\"lists_right\": 0.5");
        Path set = Files.writeString(folder.resolve("set.json"), low);
        String[] command = {
            "score", "--decoder", "plain", "--alone", "--raise-floors", "--seeds", set.toString(),
        };
        CommandRun run = CommandRun.of(command);
        assertThat(run.err()).isEqualTo(set + ": plain: lists_right from 0.5 to 1.0\n");
        assertThat(Files.readString(set)).isEqualTo(Files.readString(Path.of(CLEAN)));
        assertThat(CommandRun.of(command).err()).isEmpty();
    }

    @Test
    void a_page_is_written_beside_the_card() throws IOException {
        CommandRun run = score("--seeds", CLEAN, "--html", file("card.html"));
        assertThat(run.status()).isZero();
        assertThat(Files.readString(folder.resolve("card.html")))
                .startsWith("<!DOCTYPE html>")
                .contains("Score card of plain")
                .endsWith("</html>\n");
    }

    @Test
    void progress_is_one_line_that_is_taken_away_again() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        long[] now = {0};
        Streams streams = new Streams(
                InputStream.nullInputStream(),
                new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false,
                true);
        ScoreProgress progress = new ScoreProgress(streams, () -> now[0]);
        progress.sessions(1, 400);
        now[0] = 2_000_000_000;
        progress.sessions(100, 400);
        progress.end();
        String line = "100 of 400 sessions, 25 %, about 7 s to go";
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualTo("\r" + line + "\r" + " ".repeat(line.length()) + "\r");
    }

    @Nested
    class What_cannot_be_done {
        private void refused(String expected, String... args) {
            CommandRun run = CommandRun.of(args);
            assertThat(run.errorLines()).hasSize(1);
            assertThat(run.err()).contains(expected);
            assertThat(run.out()).isEmpty();
            assertThat(run.status()).isEqualTo(2);
        }

        @Test
        void is_told_in_a_line_of_its_own() {
            refused("--decoder: nothing is called \"planes\"; expected", "score", "--decoder", "planes");
            refused("--run: and --decoder name two decoders", "score", "--decoder", "plain", "--run", "x");
            refused("--set: nothing is called \"x\"; expected one of", "score", "--set", "x", "--seeds", SEEDS);
            refused("--line: is \"wire\"; expected lamp or pin", "score", "--line", "wire", "--seeds", CLEAN);
            refused("--shard: is \"0/2\"; expected K/N", "score", "--shard", "0/2", "--seeds", CLEAN);
            refused("--shard: is \"2\"; expected K/N", "score", "--shard", "2", "--seeds", CLEAN);
            refused("--threads: is 0", "score", "--threads", "0", "--seeds", CLEAN);
            refused("--times: is -1", "score", "--times", "-1", "--seeds", CLEAN);
            refused("--sessions: and --times", "score", "--times", "2", "--sessions", "9", "--seeds", CLEAN);
            refused("--raise-floors: needs --seeds", "score", "--raise-floors");
            refused("--raise-floors: goes with neither", "score", "--raise-floors", "--seeds", CLEAN, "--line", "pin");
            refused("--seed: needs exactly one --set", "score", "--seed", "3");
            refused("--lesson: is missing; expected one of", "score", "--set", "lessons", "--seed", "3");
            refused("no such file", "score", "--seeds", file("nowhere.json"));
            refused("--patience: is for the program of --run", "score", "--patience", "1");
            refused("--patience: is 0.0; expected 0.1 to 3600", "score", "--run", "x", "--patience", "0");
            refused("--patience: is NaN; expected 0.1 to 3600", "score", "--run", "x", "--patience", "NaN");
            refused("nowhere/a.html: cannot be written", "score", "--html", file("nowhere/a.html"));
            refused(": cannot be written; expected a file", "score", "--save", folder.toString());
            refused("holds no seed set", "score", "--seeds", folder.toString());
        }

        @Test
        void cards_that_do_not_belong_together_are_not_merged() {
            score("--seeds", CLEAN, "--shard", "1/2", "--save", file("1.json"));
            refused("hold the same shard", "score", "--merge", file("1.json"), file("1.json"));
        }
    }
}
