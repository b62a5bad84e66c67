package telltally.simulator.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.CameraFrames;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.channel.ClockDrift;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.ContactBounce;
import telltally.simulator.channel.EarlyStop;
import telltally.simulator.channel.Finger;
import telltally.simulator.channel.GhostFlashes;
import telltally.simulator.channel.Glare;
import telltally.simulator.channel.Impairment;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.LateStart;
import telltally.simulator.channel.Led;
import telltally.simulator.channel.LooseContact;
import telltally.simulator.channel.MeterNeedle;
import telltally.simulator.channel.MissedFlashes;
import telltally.simulator.channel.ShortTaps;
import telltally.simulator.channel.TapAlong;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;

class ChannelFieldsTest {
    private final Problems problems = new Problems("c.json");

    private ChannelRecipe read(String impairments) throws ProblemException {
        TextFile file = new TextFile("c.json", "{\"channel\":[" + impairments + "]}");
        return ChannelFields.read(Fields.of(file, problems).objects("channel"));
    }

    private List<Impairment> drawn(String impairments) throws ProblemException {
        ChannelRecipe recipe = read(impairments);
        assertThat(problems.all()).isEmpty();
        return recipe.drawnFrom(Chance.of(7)).impairments();
    }

    @Test
    void every_kind_is_read_with_its_strengths_in_the_order_of_the_file() throws ProblemException {
        assertThat(drawn("""
                {"kind": "clock-scale", "factor": 1.1}, {"kind": "jitter", "share": 0.06},
                {"kind": "contact-bounce", "longest_s": 0.015, "most_contacts": 5}""")).containsExactly(new ClockScale(1.1), new Jitter(0.06), new ContactBounce(15_000_000, 5));
    }

    @Test
    void what_observers_and_instruments_do_is_read_as_well() throws ProblemException {
        assertThat(drawn("""
                {"kind": "clock-drift", "share_per_minute": 0.01}, {"kind": "missed-flashes", "probability": 0.1},
                {"kind": "ghost-flashes", "probability": 0.2}, {"kind": "late-start", "lost_s": 3},
                {"kind": "early-stop", "lost_s": 4}, {"kind": "loose-contact", "per_second": 0.5, "mean_s": 0.05},
                {"kind": "glare", "length_s": 2}, {"kind": "camera-frames", "frames_per_second": 25},
                {"kind": "tap-along", "lag_s": 0.2, "spread_s": 0.03, "missed": 0.01, "doubled": 0.02},
                {"kind": "short-taps", "lag_s": 0.2, "spread_s": 0.03, "missed": 0, "doubled": 0},
                {"kind": "led", "supply_v": 9}, {"kind": "meter-needle"}"""))
                .containsExactly(
                        new ClockDrift(0.01),
                        new MissedFlashes(0.1),
                        GhostFlashes.ofReflections(0.2),
                        new LateStart(3_000_000_000L),
                        new EarlyStop(4_000_000_000L),
                        new LooseContact(0.5, 50_000_000),
                        new Glare(2_000_000_000L),
                        new CameraFrames(25, 20_000_000, 0.5),
                        new TapAlong(new Finger(200_000_000, 30_000_000, 0.01, 0.02)),
                        ShortTaps.of(new Finger(200_000_000, 30_000_000, 0, 0)),
                        Led.at(9),
                        MeterNeedle.standard());
        assertThat(drawn("{\"kind\": \"filament-lamp\", \"supply_v\": 9.5}")
                        .get(0)
                        .kind())
                .isEqualTo("filament-lamp");
    }

    @Test
    void an_empty_channel_spoils_nothing() throws ProblemException {
        assertThat(drawn("")).isEmpty();
    }

    @Test
    void a_strength_may_be_a_range() throws ProblemException {
        List<Impairment> drawn = drawn("""
                {"kind": "clock-scale", "factor": {"from": 0.85, "to": 1.18}},
                {"kind": "contact-bounce", "longest_s": {"from": 0.001, "to": 0.015}, "most_contacts": 5}""");
        assertThat(((ClockScale) drawn.get(0)).factor()).isBetween(0.85, 1.18);
        assertThat(((ContactBounce) drawn.get(1)).longestNanos()).isBetween(1_000_000L, 15_000_000L);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"kind":"hum"}|1:21: /channel/0/kind: is "hum"; expected "clock-scale" or "jitter" or "contact-bounce" or "clock-drift" or "missed-flashes" or "ghost-flashes" or "late-start" or "early-stop" or "loose-contact" or "glare" or "camera-frames" or "tap-along" or "short-taps" or "filament-lamp" or "led" or "meter-needle"
            {"share":0.1}|1:13: /channel/0/kind: is missing; expected a text
            {"kind":"jitter"}|1:13: /channel/0/share: is missing; expected a number
            {"kind":"jitter","share":"0.1"}|1:38: /channel/0/share: is a text; expected a number
            {"kind":"jitter","share":1.1}|1:38: /channel/0/share: is 1.1; expected a number from 0 to 1
            {"kind":"jitter","share":0.1,"s":1}|1:42: /channel/0/s: is not known here; expected one of kind, share
            {"kind":"clock-scale","factor":0}|1:44: /channel/0/factor: is 0; expected a number from 0.1 to 10
            {"kind":"clock-scale","factor":{"from":1.2,"to":1.1}}|1:61: /channel/0/factor/to: is smaller than "from"; a range was expected, its smaller end first
            {"kind":"clock-scale","factor":{"from":1.2}}|1:44: /channel/0/factor/to: is missing; expected a number
            {"kind":"clock-scale","factor":{"from":1,"to":2,"by":1}}|1:61: /channel/0/factor/by: is not known here; expected one of from, to
            {"kind":"contact-bounce","longest_s":-1,"most_contacts":5}|1:50: /channel/0/longest_s: is -1; expected seconds from 0.0 to 3600.0
            {"kind":"contact-bounce","longest_s":1,"most_contacts":51}|1:68: /channel/0/most_contacts: is 51; expected a whole number from 0 to 50
            """)
    void a_mistake_is_told_at_its_place(String impairment, String line) throws ProblemException {
        read(impairment);
        assertThat(problems.all()).extracting(Problem::toString).containsExactly("c.json:" + line);
    }

    @Test
    void all_mistakes_are_told_in_one_run() throws ProblemException {
        read("{\"kind\":\"jitter\",\"share\":2},{\"kind\":\"hum\"},{\"kind\":\"clock-scale\",\"factor\":{}}");
        assertThat(problems.all())
                .extracting(Problem::field)
                .containsExactly(
                        "/channel/0/share", "/channel/1/kind", "/channel/2/factor/from", "/channel/2/factor/to");
    }
}
