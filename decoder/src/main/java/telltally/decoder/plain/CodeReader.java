package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** Reads flashes as codes of one format. */
final class CodeReader {
    private final FlashFormat format;
    private final Lengths lengths;
    private final SignTable signs;
    private final Parser parser;

    CodeReader(FlashFormat format, Lengths lengths) {
        this.format = format;
        this.lengths = lengths;
        this.signs = new SignTable(format.shape(), lengths);
        this.parser = new Parser(format, lengths, signs);
    }

    /** The best reading over the likely scales of the clock; empty where no code can be read. */
    Optional<Attempt> read(Flashes flashes) {
        Attempt best = null;
        for (double rough : new Clock(flashes, lengths).scales()) {
            Parse first = parser.parse(new Runs(flashes, lengths, rough));
            Residuals off = Residuals.of(lengths, first);
            double scale = Clock.refined(rough + off.mean(), off.count());
            Parse parse = parser.parse(new Runs(flashes, lengths, scale));
            Optional<Attempt> attempt = attempt(flashes, parse, scale);
            if (attempt.isPresent() && (best == null || attempt.get().gain() > best.gain())) {
                best = attempt.get();
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Attempt> attempt(Flashes flashes, Parse parse, double scale) {
        List<Word> words = Words.of(format, lengths, parser, parse);
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        List<Segment> differing = new ArrayList<>();
        int broken = brokenFrames(words);
        for (Segment segment : format.segments()) {
            Sendings sendings = new Sendings(stretches(words, segment), format.repeats());
            broken += sendings.broken();
            if (sendings.broken() > 0) {
                differing.add(segment);
            }
            if (!sendings.codes().isEmpty()) {
                codes.put(segment, sendings.codes());
            }
        }
        for (Word word : words) {
            if (word.kind() == GroupKind.BALANCE) {
                codes.put(word.segment(), List.of(word.digits()));
            } else if (framing(word)) {
                codes.putIfAbsent(word.segment(), List.of());
            }
        }
        if (codes.isEmpty()) {
            return Optional.empty();
        }
        double gain = Cost.CHANCE * (2 * flashes.count() - 1)
                + Residuals.of(lengths, parse).gain()
                - parse.cost()
                - Clock.cost(scale)
                - broken * Cost.RULE_BROKEN
                - cost(codes);
        return Optional.of(new Attempt(
                format,
                flashes,
                gain,
                scale,
                codes,
                () -> new Transcriber(parser, lengths, flashes, parse).transcript(words, differing)));
    }

    /** What it costs to say these codes and no others: of formats that explain a train alike, the simpler message wins. */
    private double cost(Map<Segment, List<String>> codes) {
        double cost = 0;
        for (Map.Entry<Segment, List<String>> each : codes.entrySet()) {
            if (each.getKey() == Segment.BALANCE) {
                cost += StrictMath.log(format.sessions().orElseThrow().mostBalanceFlashes());
            } else {
                cost += each.getValue().stream()
                        .mapToDouble(code -> signs.cost(code.length()))
                        .sum();
            }
        }
        return cost;
    }

    /** A list that should be framed and is not breaks two rules; each frame of another length than it should be, one. */
    private int brokenFrames(List<Word> words) {
        if (format.framingCode().isEmpty()) {
            return 0;
        }
        boolean framed = false;
        int uneven = 0;
        int inRow = 0;
        for (Word word : words) {
            framed |= framing(word);
            uneven += !framing(word) && inRow % format.repeats().eachCodeTimes() != 0 ? 1 : 0;
            inRow = framing(word) ? inRow + 1 : 0;
        }
        uneven += inRow % format.repeats().eachCodeTimes() != 0 ? 1 : 0;
        return framed ? uneven : 2;
    }

    private boolean framing(Word word) {
        return word.kind() == GroupKind.SEPARATOR && format.framingCode().isPresent();
    }

    /** The words of a segment's list, apart where the framing code stood. */
    private static List<List<Word>> stretches(List<Word> words, Segment segment) {
        List<List<Word>> stretches = new ArrayList<>();
        stretches.add(new ArrayList<>());
        for (Word word : words) {
            if (word.segment() == segment && word.listed()) {
                stretches.get(stretches.size() - 1).add(word);
            } else if (word.segment() == segment && word.kind() == GroupKind.SEPARATOR) {
                stretches.add(new ArrayList<>());
            }
        }
        return stretches;
    }
}
