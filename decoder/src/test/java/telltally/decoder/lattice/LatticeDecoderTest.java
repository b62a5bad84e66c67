package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.lattice.PracticeSessions.Session;
import telltally.decoder.lattice.PracticeSessions.Spoiler;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.chance.Chance;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatReader;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

class LatticeDecoderTest {
    private static final int SESSIONS = 40;

    private final List<FlashFormat> formats = FormatCatalog.shipped().all();
    private final LatticeDecoder decoder = new LatticeDecoder();

    /** Floors in sessions of all formats together, read wholly right without being told the format. */
    @ParameterizedTest
    @CsvSource({
        "CLEAN, 280",
        "CLOCK, 277",
        "BOUNCE, 280",
        "FRAMES, 280",
        "JITTER, 279",
        "TAPS, 278",
        "ROUGH, 274",
        "MISSED, 273",
        "GHOSTS, 279",
        "MIXED, 276",
        "WIRE, 280"
    })
    void nearly_every_session_is_read_wholly_right_without_being_told_its_format(Spoiler spoiler, int floor) {
        int right = 0;
        for (FlashFormat format : formats) {
            for (int seed = 0; seed < SESSIONS; seed++) {
                Session session = PracticeSessions.session(format, spoiler, 7000 + seed);
                right += decoder.decode(session.train(), formats).codes().equals(session.codes()) ? 1 : 0;
            }
        }
        assertThat(right).isGreaterThanOrEqualTo(floor);
    }

    @Test
    void from_midway_a_list_that_is_still_seen_whole_is_read_whole() {
        int right = 0;
        int repeated = 0;
        for (FlashFormat format : formats) {
            for (int seed = 0; seed < SESSIONS; seed++) {
                Session session = PracticeSessions.session(format, Spoiler.MIDWAY, 7000 + seed);
                if (session.repeated()) {
                    repeated++;
                    right += decoder.decode(session.train(), formats).codes().equals(session.codes()) ? 1 : 0;
                }
            }
        }
        assertThat(repeated).isGreaterThan(150);
        assertThat(right).isGreaterThanOrEqualTo(repeated * 97 / 100);
    }

    @Test
    void a_probability_can_be_trusted() {
        double claimed = 0;
        int right = 0;
        int told = 0;
        for (FlashFormat format : formats) {
            for (Spoiler spoiler : List.of(Spoiler.MISSED, Spoiler.MIXED, Spoiler.ROUGH)) {
                for (int seed = 0; seed < SESSIONS; seed++) {
                    Session session = PracticeSessions.session(format, spoiler, 9000 + seed);
                    Reading reading = decoder.decode(session.train(), List.of(format));
                    for (Segment segment : reading.codes().keySet()) {
                        for (String code : reading.codes().get(segment)) {
                            claimed += LatticeReport.probability(reading, segment, code);
                            right += session.codes()
                                            .getOrDefault(segment, List.of())
                                            .contains(code)
                                    ? 1
                                    : 0;
                            told++;
                        }
                    }
                }
            }
        }
        assertThat(Math.abs(claimed - right) / told).isLessThan(0.01);
    }

    @Test
    void a_dark_gap_of_a_second_and_a_half_inside_a_digit_is_a_missed_flash_and_says_so() {
        FlashFormat format = FormatCatalog.shipped().find("pair-even").orElseThrow();
        PulseTrain whole = new Encoder(format)
                .encode(new Message.KeyOn(List.of("34"), List.of()), Pacing.usual())
                .lamp();
        PulseTrain.Builder seen = PulseTrain.builder();
        int flash = 0;
        for (Interval interval : whole.intervals()) {
            // The second of the first three flashes.
            boolean lit = interval.lit() && ++flash != 2;
            seen.stay(lit, interval.lengthNanos());
        }
        Reading reading = decoder.decode(seen.build(), formats);
        assertThat(reading.codes()).isEqualTo(Map.of(Segment.PRESENT, List.of("34"), Segment.STORED, List.of("11")));
        assertThat(reading.warnings()).extracting(Warning::kind).contains(WarningKind.MISSED_FLASH);
        assertThat(reading.warnings().stream()
                        .filter(warning -> warning.kind() == WarningKind.MISSED_FLASH)
                        .map(Warning::text)
                        .toList())
                .containsExactly("a dark gap of 1.5 s inside a digit: one flash was probably not seen");
    }

    @Test
    void a_result_sent_once_whose_end_was_not_seen_says_so_by_its_probability() {
        FlashFormat format = FormatCatalog.shipped().find("count-loop").orElseThrow();
        PulseTrain.Builder once = PulseTrain.builder();
        once.dark(3_000_000_000L);
        for (int i = 0; i < 5; i++) {
            once.lit(300_000_000L);
            once.dark(300_000_000L);
        }
        Reading reading = decoder.decode(once.build(), List.of(format));
        assertThat(reading.groups().get(0).probability()).isLessThan(0.999);
        assertThat(reading.groups().get(0).alternatives()).isNotEmpty();
    }

    /** Found by babble in formats of one's own: no way led to the end of such a recording, and the decoder broke off. */
    @Test
    void a_recording_that_goes_on_after_half_a_digit_is_read_up_to_it() {
        FlashFormat format = Recordings.format("high", """
                "flashes_s": {"flash": 0.5},
                "code": {"places": [{"flash": "flash", "from": 6, "to": 9}, {"flash": "flash", "from": 6, "to": 9}]},
                "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0},
                "list": {"list_times": 2}
                """);
        String six = "0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5";
        PulseTrain train = Recordings.train("3 " + six + " 2 " + six + " 4 0.5 0.5 0.5 20");
        Reading reading = decoder.decode(train, List.of(format));
        assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("66")));
        assertThat(reading.groups())
                .extracting(Reading.Group::kind)
                .containsExactly(GroupKind.CODE, GroupKind.UNREADABLE);
        assertThat(reading.warnings())
                .containsExactly(new Warning(
                        20_000_000_000L, WarningKind.UNREADABLE_GROUP, "a group that is no whole code of the format"));
    }

    @Test
    void a_list_that_goes_on_for_longer_than_the_format_allows_is_read_all_the_same() {
        // 12 and 22 by turns, in the lengths of pair-even, which sends a hundred codes twice at most.
        PulseTrain endless = Recordings.train("3" + " 0.5 2 0.5 0.5 0.5 4 0.5 0.5 0.5 2 0.5 0.5 0.5 4".repeat(101));
        Reading reading = decoder.decode(endless, formats);
        assertThat(reading.codes().values()).containsExactly(List.of("12", "22"));
    }

    @Test
    void lengths_of_chance_are_said_to_fit_no_format() {
        List<FlashFormat> formats = FormatCatalog.shipped().all();
        int nothing = 0;
        int recordings = 100;
        for (int seed = 0; seed < recordings; seed++) {
            Chance chance = Chance.of(seed);
            PulseTrain.Builder pulses = PulseTrain.builder();
            for (int i = 0; i < 60; i++) {
                pulses.dark((long) (1e9 * (0.05 - 0.7 * StrictMath.log(1 - chance.between(0, 1)))));
                pulses.lit((long) (1e9 * (0.05 - 0.7 * StrictMath.log(1 - chance.between(0, 1)))));
            }
            Reading reading = decoder.decode(pulses.dark(5_000_000_000L).build(), formats);
            nothing += reading.format().isEmpty() && reading.codes().isEmpty() ? 1 : 0;
        }
        assertThat(nothing).isGreaterThanOrEqualTo(95);
    }

    /** Telegraphy timing of Recommendation ITU-R M.1677-1: dash 3 dots, gaps 1, 3 and 7. */
    @Test
    void a_format_of_ones_own_is_read_like_those_that_ship() throws ProblemException {
        String file = """
                {"schema": "telltally/format/1", "id": "telegraph", "title": "Dots and dashes",
                 "flashes_s": {".": 0.12, "-": 0.36},
                 "code": {"signs": {"S": "...", "O": "---", "T": "-", "E": ".", "R": ".-.", "N": "-."}, "most_signs": 5},
                 "gaps": {"within_digit_s": 0.12, "between_digits_s": 0.36, "between_codes_s": 0.84},
                 "list": {"list_times": 2}}
                """;
        FlashFormat telegraph = FormatReader.read(new TextFile("telegraph.json", file));
        List<FlashFormat> all = new ArrayList<>(formats);
        all.add(telegraph);
        PulseTrain train = new Encoder(telegraph)
                .encode(new Message.Codes(List.of("SOS", "TEN", "ROSE")), Pacing.usual())
                .lamp();
        Reading reading = decoder.decode(train, all);
        assertThat(reading.format().orElseThrow().id()).isEqualTo("telegraph");
        assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("SOS", "TEN", "ROSE")));
    }
}
