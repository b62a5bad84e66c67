package telltally.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Recording;
import telltally.simulator.recording.TruthJson;
import telltally.simulator.scenario.Content;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.signal.Seconds;

class SimulationTest {
    private static final FormatCatalog FORMATS = FormatCatalog.shipped();
    private static final long SECOND = 1_000_000_000L;

    private static Scenario scenario(String formatId, Message message, int loops) {
        FlashFormat format = FORMATS.find(formatId).orElseThrow();
        return new Scenario(
                "yard-van",
                "Yard van",
                List.of("It coughs."),
                "Count.",
                format,
                Optional.empty(),
                new Content.Outright(message),
                Display.LAMP,
                loops);
    }

    private static Scenario keyOn() {
        return scenario("pair-even", new Message.KeyOn(List.of("34", "42"), List.of()), 2);
    }

    @Test
    void a_channel_spoils_the_lamp_and_leaves_the_wire_and_the_truth_as_they_were() {
        Scenario clear = keyOn();
        Scenario spoiled = new Scenario(
                clear.id(),
                clear.title(),
                clear.briefing(),
                clear.task(),
                clear.format(),
                clear.codeList(),
                clear.content(),
                clear.display(),
                clear.loops(),
                new ChannelRecipe(List.of(new ChannelRecipe.Step("clock-scale", draw -> new ClockScale(2)))));
        Recording before = Simulation.run(clear, 7);
        Recording after = Simulation.run(spoiled, 7);
        assertThat(after.lamp().endNanos()).isEqualTo(2 * before.lamp().endNanos());
        assertThat(after.pin()).isEqualTo(before.pin());
        assertThat(after.truth()).isEqualTo(before.truth());
    }

    /** Everything a recording holds, as text. */
    private static String text(Recording recording) {
        StringBuilder text = new StringBuilder(TruthJson.text(recording));
        for (var train : List.of(recording.lamp(), recording.pin())) {
            train.intervals()
                    .forEach(interval -> text.append(interval.lit() ? '1' : '0')
                            .append(' ')
                            .append(Seconds.text(interval.endNanos()))
                            .append('\n'));
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, Long.MIN_VALUE, Long.MAX_VALUE})
    void the_same_seed_gives_the_same_bytes_twice(long seed) {
        assertThat(text(Simulation.run(keyOn(), seed))).isEqualTo(text(Simulation.run(keyOn(), seed)));
    }

    @ParameterizedTest
    @CsvSource({"ar-EG-u-nu-arab, Asia/Kathmandu", "tr-TR, Pacific/Kiritimati", "th-TH-u-nu-thai, America/St_Johns"})
    void the_same_seed_gives_the_same_bytes_in_another_locale_and_time_zone(String language, String zone) {
        String expected = text(Simulation.run(keyOn(), 42));
        Locale locale = Locale.getDefault();
        TimeZone timeZone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            assertThat(text(Simulation.run(keyOn(), 42))).isEqualTo(expected);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(timeZone);
        }
    }

    @Test
    void the_first_flash_comes_at_a_time_that_only_the_seed_knows() {
        Scenario scenario = scenario("count-loop", new Message.Codes(List.of("4")), 1);
        List<Long> leads = LongStream.range(0, 300)
                .map(seed -> Simulation.run(scenario, seed).lamp().edgeNanos(0))
                .boxed()
                .toList();
        assertThat(leads).allMatch(lead -> lead >= 2 * SECOND && lead < 5 * SECOND);
        // Of 300 draws from 3000 equally likely waits about 285 differ.
        assertThat(leads.stream().distinct().count()).isGreaterThan(250);
        assertThat(leads).anyMatch(lead -> lead < 2.1 * SECOND).anyMatch(lead -> lead > 4.9 * SECOND);
    }

    @Test
    void two_lessons_with_the_same_seed_do_not_share_their_chance() {
        Scenario one = keyOn();
        Scenario other = new Scenario(
                "barn-van",
                one.title(),
                one.briefing(),
                one.task(),
                one.format(),
                one.codeList(),
                one.content(),
                one.display(),
                one.loops());
        assertThat(LongStream.range(0, 10))
                .anyMatch(seed -> Simulation.run(one, seed).lamp().edgeNanos(0)
                        != Simulation.run(other, seed).lamp().edgeNanos(0));
    }

    @Test
    void a_recording_says_what_it_was_made_from() {
        Recording recording = Simulation.run(keyOn(), 42);
        assertThat(recording.scenarioId()).isEqualTo("yard-van");
        assertThat(recording.seed()).isEqualTo(42);
        assertThat(recording.generatorVersion()).isEqualTo(Simulation.GENERATOR_VERSION);
        assertThat(recording.truth().formatId()).isEqualTo("pair-even");
        assertThat(recording.truth().codes())
                .containsEntry(Segment.PRESENT, List.of("34", "42"))
                .containsEntry(Segment.STORED, List.of("11"));
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "2, 4", "5, 10", "20, 40"})
    void a_looping_list_of_two_codes_is_sent_as_often_as_the_lesson_says(int loops, int codesSent) {
        Scenario scenario = scenario("long-short", new Message.Codes(List.of("34", "42")), loops);
        assertThat(codeGroups(scenario)).isEqualTo(codesSent);
    }

    /** Each loop sends a code three times; the frame stands once around all loops. */
    @ParameterizedTest
    @CsvSource({"1, 6", "3, 18"})
    void a_looping_list_with_each_code_three_times_is_sent_as_often_as_the_lesson_says(int loops, int codesSent) {
        Scenario scenario = scenario("pair-thrice", new Message.Codes(List.of("34", "42")), loops);
        assertThat(codeGroups(scenario)).isEqualTo(codesSent);
    }

    @Test
    void even_blinking_lasts_longer_with_more_loops() {
        long one = lengthNanos(scenario("pair-loop", new Message.Codes(List.of()), 1));
        long three = lengthNanos(scenario("pair-loop", new Message.Codes(List.of()), 3));
        assertThat(three).isGreaterThan(one);
    }

    @Test
    void an_empty_list_of_a_format_that_says_nothing_then_is_a_dark_recording() {
        Recording recording = Simulation.run(scenario("long-short", new Message.Codes(List.of()), 2), 42);
        assertThat(recording.lamp().edgeCount()).isZero();
        assertThat(recording.lamp().litAtStart()).isFalse();
        assertThat(recording.truth().codes()).containsEntry(Segment.CODES, List.of());
        assertThat(recording.truth().groups()).isEmpty();
    }

    private static long codeGroups(Scenario scenario) {
        return Simulation.run(scenario, 42).truth().groups().stream()
                .filter(group -> group.kind() == GroupKind.CODE)
                .count();
    }

    private static long lengthNanos(Scenario scenario) {
        return Simulation.run(scenario, 42).lamp().endNanos();
    }
}
