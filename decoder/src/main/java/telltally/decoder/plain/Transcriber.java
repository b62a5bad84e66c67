package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.decoder.plain.Parse.Part;
import telltally.decoder.plain.Role.Sort;
import telltally.decoder.reading.Reading.Alternative;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** Writes words down as the groups of a reading, with what is doubtful about them. */
final class Transcriber {
    /** A gap less sure than this is told. */
    private static final double DOUBTFUL = 0.8;

    /** Where a flash was put in that nobody saw, so sure at most: common sense, no source. */
    private static final double RESTORED = 0.8;

    private final Parser parser;
    private final Flashes flashes;
    private final Parse parse;
    private final Confidence confidence;
    private final List<Group> groups = new ArrayList<>();
    private final List<Warning> warnings = new ArrayList<>();

    Transcriber(Parser parser, Lengths lengths, Flashes flashes, Parse parse) {
        this.parser = parser;
        this.flashes = flashes;
        this.parse = parse;
        this.confidence = new Confidence(lengths, parse);
    }

    /** @param differing the segments whose list was not sent alike every time */
    Transcript transcript(List<Word> words, List<Segment> differing) {
        words.forEach(this::add);
        differing.forEach(this::repeatsDiffer);
        startAndEnd(words);
        return new Transcript(groups, warnings);
    }

    private void add(Word word) {
        word.parts().forEach(this::gaps);
        boolean restored = word.parts().stream().anyMatch(Part::hidesFlash);
        double read = word.kind() == GroupKind.UNREADABLE ? 0 : confidence.of(word.firstRun(), word.lastRun());
        double probability = restored ? read * RESTORED : read;
        long startNanos = startNanos(word);
        groups.add(new Group(
                word.kind(),
                word.segment(),
                word.digits(),
                probability,
                startNanos,
                endNanos(word),
                restored ? asSeen(word, (1 - probability) / 2) : List.of()));
        if (word.kind() == GroupKind.UNREADABLE) {
            warn(startNanos, WarningKind.UNREADABLE_GROUP, "a group of flashes that is no code of this format");
        }
    }

    private void gaps(Part part) {
        for (int run = Math.max(1, part.firstRun()); run <= part.lastRun(); run++) {
            int flash = parse.runs().first(run);
            long atNanos = flashes.endNanos(flash - 1);
            String gap = "a dark gap of " + Transcript.text(flashes.gapNanos(flash));
            if (run > part.firstRun()) {
                warn(atNanos, WarningKind.MISSED_FLASH, gap + " inside a digit: one flash was probably not seen");
            } else if (part.role().sort() != Sort.LOST && confidence.ofGapBefore(run) < DOUBTFUL) {
                warn(atNanos, WarningKind.DOUBTFUL_GAP, gap + " lies between two kinds of gap");
            }
        }
    }

    /** The word without the flashes that nobody saw, if that is one. */
    private List<Alternative> asSeen(Word word, double probability) {
        StringBuilder text = new StringBuilder();
        for (Part part : word.parts()) {
            String digit = parser.digitSeen(part.role(), parse.runs(), part.firstRun(), part.lastRun());
            if (digit.isEmpty()) {
                return List.of();
            }
            text.append(digit);
        }
        return List.of(new Alternative(text.toString(), probability));
    }

    private void repeatsDiffer(Segment segment) {
        Optional<Group> first =
                groups.stream().filter(group -> group.segment() == segment).findFirst();
        warn(
                first.map(Group::startNanos).orElse(0L),
                WarningKind.REPEATS_DIFFER,
                "the sendings of the list of " + segment.key()
                        + " codes differ, or are not as many as this format makes");
    }

    private void startAndEnd(List<Word> words) {
        Word first = words.get(0);
        Word last = words.get(words.size() - 1);
        if (first.kind() == GroupKind.UNREADABLE || (startNanos(first) == 0 && first.kind() != GroupKind.STEADY)) {
            warn(0, WarningKind.STARTS_MIDWAY, "the recording begins within a group of flashes");
        }
        if (parse.stopsEarly() || (flashes.endsLit() && last.kind() != GroupKind.STEADY)) {
            warn(endNanos(last), WarningKind.STOPS_EARLY, "by the rules of this format more should follow here");
        }
    }

    private long startNanos(Word word) {
        return flashes.startNanos(parse.runs().first(word.firstRun()));
    }

    private long endNanos(Word word) {
        return flashes.endNanos(parse.runs().last(word.lastRun()));
    }

    private void warn(long atNanos, WarningKind kind, String text) {
        warnings.add(new Warning(atNanos, kind, text));
    }
}
