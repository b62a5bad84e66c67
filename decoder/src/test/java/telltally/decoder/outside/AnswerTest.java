package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Alternative;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.score.Outcome.Failed;
import telltally.decoder.score.Outcome.Failure;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** What a program answers, and what it says that it can do. */
class AnswerTest {
    private static final List<FlashFormat> ALL = FormatCatalog.shipped().all();
    private static final List<FlashFormat> ONE = List.of(format("pair-even"));

    private static FlashFormat format(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }

    private static byte[] bytes(String line) {
        return line.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    }

    private static Reading read(String line, List<FlashFormat> candidates) throws Misbehaviour {
        return Answer.read(bytes(line), 7, candidates);
    }

    private static Failed refused(String line) {
        try {
            throw new AssertionError("read as " + read(line, ALL));
        } catch (Misbehaviour e) {
            return e.outcome();
        }
    }

    @Test
    void codes_alone_are_an_answer() throws Misbehaviour {
        Reading reading = read("{'id':7,'codes':{'stored':['11','12'],'present':[]}}", ALL);
        assertThat(reading.codes()).isEqualTo(Map.of(Segment.STORED, List.of("11", "12"), Segment.PRESENT, List.of()));
        assertThat(reading.format()).isEmpty();
        assertThat(reading.groups()).isEmpty();
        assertThat(reading.warnings()).isEmpty();
    }

    @Test
    void who_had_one_format_and_read_something_has_read_that() throws Misbehaviour {
        assertThat(read("{'id':7,'codes':{'codes':['11']}}", ONE).format())
                .contains(new FormatEstimate("pair-even", 1, 1));
        assertThat(read("{'id':7,'codes':{}}", ONE).format()).isEmpty();
        assertThat(read("{'id':7,'codes':{},'format':{'id':'pair-even'}}", ONE).format())
                .contains(new FormatEstimate("pair-even", 1, 1));
    }

    @Test
    void a_format_has_a_probability_and_a_clock_where_they_are_told() throws Misbehaviour {
        assertThat(read("{'id':7,'codes':{},'format':{'id':'pair-loop','probability':0.25,'clock_scale':1.5}}", ALL)
                        .format())
                .contains(new FormatEstimate("pair-loop", 0.25, 1.5));
    }

    @Test
    void groups_and_warnings_are_kept_whole() throws Misbehaviour {
        Reading reading = read(
                "{'id':7,'codes':{},'groups':[{'kind':'balance','segment':'balance','digits':'9','probability':0.5,"
                        + "'start_s':1.5,'end_s':1.5,'alternatives':[{'digits':'8','probability':0.25},"
                        + "{'digits':'7','probability':0.125}]},{'kind':'code','segment':'stored','digits':'11',"
                        + "'start_s':2,'end_s':3}],'warnings':[{'time_s':2.5,'kind':'extra-flash','text':''}]}",
                ALL);
        assertThat(reading.groups())
                .containsExactly(
                        new Group(
                                GroupKind.BALANCE,
                                Segment.BALANCE,
                                "9",
                                0.5,
                                1_500_000_000,
                                1_500_000_000,
                                List.of(new Alternative("8", 0.25), new Alternative("7", 0.125))),
                        new Group(GroupKind.CODE, Segment.STORED, "11", 1, 2_000_000_000, 3_000_000_000L, List.of()));
        assertThat(reading.warnings()).containsExactly(new Warning(2_500_000_000L, WarningKind.EXTRA_FLASH, ""));
    }

    @Test
    void an_answer_to_another_request_is_out_of_order() {
        assertThat(refused("{'id':6,'codes':{}}"))
                .isEqualTo(new Failed(Failure.OUT_OF_ORDER, "wrote a line that nobody had asked for"));
        assertThat(refused("{'id':8,'codes':{}}"))
                .isEqualTo(new Failed(Failure.OUT_OF_ORDER, "answered the request 8 when asked the request 7"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{'codes':{}} | /id",
                "{'id':'7','codes':{}} | /id",
                "{'id':7} | /codes",
                "{'id':7,'codes':[]} | /codes",
                "{'id':7,'codes':{'tomorrow':[]}} | is no segment; expected present, stored, running, balance or codes",
                "{'id':7,'codes':{'stored':[11]}} | /codes/stored/0",
                "{'id':7,'codes':{},'format':{'id':'nobody'}} | /format/id",
                "{'id':7,'codes':{},'format':{'id':'pair-even','probability':1.1}} | /format/probability",
                "{'id':7,'codes':{},'format':{'id':'pair-even','clock_scale':-1}} | /format/clock_scale",
                "{'id':7,'codes':{},'groups':[{'kind':'code','segment':'stored','digits':'1','start_s':2,'end_s':1}]}"
                        + " | /groups/0/end_s",
                "{'id':7,'codes':{},'groups':[{'kind':'lode','segment':'stored','digits':'1','start_s':2,'end_s':3}]}"
                        + " | /groups/0/kind",
                "{'id':7,'codes':{},'warnings':[{'time_s':-1,'kind':'extra-flash','text':''}]} | /warnings/0/time_s",
                "{'id':7,'codes':{} | is not JSON",
                "[] | answer",
            })
    void what_is_no_reading_is_rubbish_and_told_at_its_place(String line, String detail) {
        Failed failed = refused(line);
        assertThat(failed.failure()).isEqualTo(Failure.RUBBISH);
        assertThat(failed.detail()).startsWith("answer").contains(detail);
    }

    private static Capabilities able(String more) throws Misbehaviour {
        return Capabilities.read(bytes("{'schema':'telltally/capabilities/1','id':'abacus'" + more + "}"));
    }

    @Test
    void who_says_nothing_more_reads_any_format_and_wants_nothing() throws Misbehaviour {
        Capabilities able = able("");
        assertThat(able).isEqualTo(new Capabilities("abacus", Optional.empty(), false, false, false));
        assertThat(ALL).allMatch(able::reads);
    }

    @Test
    void who_names_formats_reads_those() throws Misbehaviour {
        Capabilities able = able(",'formats':['pair-even','pair-loop'],'format_told':true");
        assertThat(able.formats()).contains(Set.of("pair-even", "pair-loop"));
        assertThat(able.formatTold()).isTrue();
        assertThat(able.reads(format("pair-loop"))).isTrue();
        assertThat(able.reads(format("count-loop"))).isFalse();
        assertThat(able(",'probabilities':true").probabilities()).isTrue();
        assertThat(able(",'definitions':true").definitions()).isTrue();
    }

    @Test
    void who_speaks_another_way_is_refused() {
        assertThatThrownBy(() -> Capabilities.read(bytes("{'id':'abacus'}"))).hasMessageContaining("/schema");
        assertThatThrownBy(() -> able(",'probabilities':'many'")).hasMessageContaining("/probabilities");
        assertThatThrownBy(() -> Capabilities.read(new byte[] {(byte) 0xff}))
                .hasMessage("capabilities:1:1: is not UTF-8 text");
    }
}
