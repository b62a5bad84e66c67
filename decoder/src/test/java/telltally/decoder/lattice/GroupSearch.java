package telltally.decoder.lattice;

import java.util.List;
import telltally.simulator.format.FlashFormat;

/** What was found in one recording, and the paths in which it was found. */
record GroupSearch(FormatModel model, Pass pass, GroupFinder finder) {
    /** Two digits of 1 to 3 in flashes of 0.5 s; gaps of 0.5, 2 and 4 s, and of 5.5 s before the list comes again. */
    static final FlashFormat PAIR = Recordings.format("pair", """
            "flashes_s": {"flash": 0.5},
            "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 3}]},
            "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0, "before_repeat_s": 5.5},
            "list": {"list_times": 2, "most_codes": 3}
            """);

    /** The same with a separator 7.5 s apart from codes, cylinder flashes and balance results. */
    static final FlashFormat SESSIONS = Recordings.format("sessions", """
            "flashes_s": {"flash": 0.5},
            "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 3}]},
            "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0},
            "list": {"list_times": 2, "most_codes": 3},
            "nothing_to_report": {"code": "11"},
            "sessions": {"separator_flashes": 1, "around_separator_s": 7.5, "flash": "flash",
                         "running_test_s": 90.0, "most_balance_flashes": 4}
            """);

    /** Gaps of 0.5 and 0.8 s may be taken for each other, those of 8 s between codes for nothing else. */
    static final FlashFormat CLOSE = Recordings.format("close", """
            "flashes_s": {"flash": 0.5},
            "code": {"places": [{"flash": "flash", "from": 1, "to": 6}, {"flash": "flash", "from": 1, "to": 6}]},
            "gaps": {"within_digit_s": 0.5, "between_digits_s": 0.8, "between_codes_s": 8.0},
            "list": {"list_times": 2}
            """);

    static final FlashFormat LETTERS = Recordings.format("letters", """
            "flashes_s": {".": 0.2, "-": 0.6},
            "code": {"signs": {"A": ".-", "N": "-.", "E": "."}, "most_signs": 3},
            "gaps": {"within_digit_s": 0.2, "between_digits_s": 0.6, "between_codes_s": 1.4},
            "list": {"list_times": 2}
            """);

    static final Channel CLEAR = new Channel(1, 0, 0.04, 0.02, 0.02, 0.02);
    static final Channel NOISY = new Channel(1, 0, 0.1, 0.05, 0.05, 0.02);

    static GroupSearch of(FlashFormat format, Channel channel, String darkAndLitSeconds) {
        FormatModel model = new FormatModel(format);
        Densities densities = new Densities(model.grammar.automaton);
        Flashes flashes = Recordings.flashes(darkAndLitSeconds);
        Pass pass = FreePass.run(densities, flashes, channel, new Lattice());
        GroupFinder finder = new GroupFinder(model, pass);
        finder.find();
        return new GroupSearch(model, pass, finder);
    }

    List<Found> groups() {
        return finder.groups;
    }
}
