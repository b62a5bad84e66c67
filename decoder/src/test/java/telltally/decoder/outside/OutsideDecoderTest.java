package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Entrant.Traits;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Read;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatJson;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the programs are scripts for sh")
class OutsideDecoderTest {
    private static final PulseTrain TRAIN = PulseTrain.of(false, 9_000_000_000L, 3_000_000_000L, 3_500_000_001L);
    private static final FlashFormat EVEN = format("pair-even");
    private static final FlashFormat LOOP = format("pair-loop");

    @TempDir
    private Path folder;

    private static FlashFormat format(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }

    /** A program that notes what it is sent, and answers with what is given to it here. */
    private OutsideDecoder scripted(String capabilities, String... answers) throws IOException {
        Path said =
                Files.writeString(folder.resolve("answers"), capabilities + "\n" + String.join("\n", answers) + "\n");
        // Each line of the answers is written when a line has come in.
        String script = "exec 3<'" + said + "'; while read -r line; do printf '%s\\n' \"$line\" >>'" + noted()
                + "'; read -r answer <&3 && printf '%s\\n' \"$answer\"; done";
        return OutsideDecoder.command(script);
    }

    private Path noted() {
        return folder.resolve("noted");
    }

    private static String able(String more) {
        return "{\"schema\":\"telltally/capabilities/1\",\"id\":\"scripted\"" + more + "}";
    }

    private static Reading read(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Read.class);
        return ((Read) outcome).reading();
    }

    @Test
    void a_request_holds_the_levels_and_the_candidates_on_one_line_and_nothing_of_the_truth() throws IOException {
        OutsideDecoder decoder = scripted(able(""), "{\"id\":1,\"codes\":{}}");
        try (Entrant.Reader reader = decoder.open()) {
            assertThat(read(reader.read(TRAIN, List.of(EVEN, LOOP))).decoded()).isFalse();
        }
        assertThat(noted())
                .hasContent("{\"schema\":\"telltally/greeting/1\"}\n"
                        + "{\"schema\":\"telltally/request/1\",\"id\":1,\"formats\":[\"pair-even\",\"pair-loop\"],"
                        + "\"lit_at_start\":false,\"edges_s\":[3.0,3.500000001],\"end_s\":9.0}\n");
    }

    @Test
    void the_keys_of_a_reading_are_understood_as_decode_prints_them() throws IOException {
        String answer = "{\"id\":1,\"schema\":\"telltally/reading/1\",\"source\":\"yard.csv\","
                + "\"format\":{\"id\":\"pair-even\",\"probability\":0.9998,\"clock_scale\":1.02},"
                + "\"codes\":{\"present\":[\"34\",\"42\"],\"stored\":[\"11\"]},"
                + "\"groups\":[{\"kind\":\"code\",\"segment\":\"present\",\"digits\":\"34\",\"probability\":0.9991,"
                + "\"start_s\":6.0,\"end_s\":15.5,\"alternatives\":[{\"digits\":\"35\",\"probability\":0.0006}]},"
                + "{\"kind\":\"steady\",\"segment\":\"present\",\"digits\":\"\",\"start_s\":1.0,\"end_s\":2.0}],"
                + "\"warnings\":[{\"time_s\":12.5,\"kind\":\"missed-flash\",\"text\":\"a dark gap of 1.5 s\"}]}";
        OutsideDecoder decoder = scripted(able(",\"probabilities\":true"), answer);
        try (Entrant.Reader reader = decoder.open()) {
            Reading reading = read(reader.read(TRAIN, List.of(EVEN, LOOP)));
            assertThat(reading.format()).contains(new FormatEstimate("pair-even", 0.9998, 1.02));
            assertThat(reading.codes())
                    .isEqualTo(Map.of(Segment.PRESENT, List.of("34", "42"), Segment.STORED, List.of("11")));
            Reading.Group code = reading.groups().get(0);
            assertThat(code.kind()).isEqualTo(GroupKind.CODE);
            assertThat(code.probability()).isEqualTo(0.9991);
            assertThat(code.endNanos()).isEqualTo(15_500_000_000L);
            assertThat(code.alternatives()).containsExactly(new Reading.Alternative("35", 0.0006));
            assertThat(reading.groups().get(1).digits()).isEmpty();
            assertThat(reading.warnings())
                    .containsExactly(
                            new Reading.Warning(12_500_000_000L, WarningKind.MISSED_FLASH, "a dark gap of 1.5 s"));
        }
    }

    @Test
    void what_a_program_says_of_itself_is_known_before_it_is_asked() throws IOException {
        OutsideDecoder decoder = scripted(able(",\"format_told\":true"));
        assertThat(decoder.id()).isEqualTo("scripted");
        assertThat(decoder.traits()).isEqualTo(new Traits(true, false));
        assertThat(decoder.refusal()).isEmpty();
    }

    @Test
    void a_program_is_given_only_formats_that_it_reads_and_else_is_not_asked() throws IOException {
        OutsideDecoder decoder = scripted(able(",\"formats\":[\"pair-even\"]"), "{\"id\":1,\"codes\":{}}");
        try (Entrant.Reader reader = decoder.open()) {
            assertThat(read(reader.read(TRAIN, List.of(LOOP))).warnings())
                    .extracting(Reading.Warning::kind)
                    .containsExactly(WarningKind.NO_FORMAT);
            read(reader.read(TRAIN, List.of(EVEN, LOOP)));
        }
        assertThat(noted()).content().contains("\"id\":1,\"formats\":[\"pair-even\"],");
        assertThat(Files.readAllLines(noted())).hasSize(2);
    }

    @Test
    void the_rules_of_a_format_are_told_once_to_who_wants_them() throws IOException {
        OutsideDecoder decoder = scripted(
                able(",\"definitions\":true"),
                "{\"id\":1,\"codes\":{}}",
                "{\"id\":2,\"codes\":{}}",
                "{\"id\":3,\"codes\":{}}");
        try (Entrant.Reader reader = decoder.open()) {
            read(reader.read(TRAIN, List.of(EVEN)));
            read(reader.read(TRAIN, List.of(EVEN, LOOP)));
            read(reader.read(TRAIN, List.of(EVEN, LOOP)));
        }
        List<String> lines = Files.readAllLines(noted());
        assertThat(lines.get(1)).contains("\"definitions\":[" + FormatJson.text(EVEN) + "]");
        assertThat(lines.get(2)).contains("\"definitions\":[" + FormatJson.text(LOOP) + "]");
        assertThat(lines.get(3)).doesNotContain("definitions");
    }

    @Test
    void who_was_told_the_format_and_read_codes_has_read_that_format() throws IOException {
        OutsideDecoder decoder = scripted(
                able(",\"format_told\":true"),
                "{\"id\":1,\"codes\":{\"present\":[\"34\"]}}",
                "{\"id\":2,\"codes\":{}}");
        try (Entrant.Reader reader = decoder.open()) {
            assertThat(read(reader.read(TRAIN, List.of(EVEN))).format())
                    .contains(new FormatEstimate("pair-even", 1, 1));
            assertThat(read(reader.read(TRAIN, List.of(EVEN))).format()).isEmpty();
        }
    }

    @Test
    void a_program_ends_with_the_reader_that_it_was_started_for() throws Exception {
        // Answers with its own number, then waits for what never comes.
        String script = "read -r line; echo '" + able("") + "'; read -r line; "
                + "echo '{\"id\":1,\"codes\":{\"codes\":[\"'$$'\"]}}'; while read -r line; do :; done; sleep 60";
        ProcessHandle program;
        try (Entrant.Reader reader = OutsideDecoder.command(script).open()) {
            String number = read(reader.read(TRAIN, List.of(EVEN)))
                    .codes()
                    .get(Segment.CODES)
                    .get(0);
            program = ProcessHandle.of(Long.parseLong(number)).orElseThrow();
            assertThat(program.isAlive()).isTrue();
        }
        program.onExit().get(30, TimeUnit.SECONDS);
        assertThat(program.isAlive()).isFalse();
    }

    @Test
    void one_program_answers_many_sessions_however_long() throws IOException {
        String[] answers = new String[50];
        for (int i = 0; i < answers.length; i++) {
            answers[i] = "{\"id\":" + (i + 1) + ",\"codes\":{}}";
        }
        // Far more than a pipe holds at once.
        PulseTrain.Builder train = PulseTrain.builder();
        for (int i = 0; i < 20_000; i++) {
            train.dark(500_000_001L).lit(500_000_001L);
        }
        PulseTrain hours = train.build();
        try (Entrant.Reader reader = scripted(able(""), answers).open()) {
            for (int i = 0; i < answers.length; i++) {
                read(reader.read(i == 0 ? hours : TRAIN, List.of(EVEN)));
            }
        }
        assertThat(Files.readAllLines(noted())).hasSize(51);
    }
}
