package telltally.decoder.card;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import telltally.decoder.score.CurvePoint;
import telltally.decoder.score.Floors;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;

/** Reads a score card from its file. Shares and intervals are passed over: they follow from the counts. */
public final class CardReader {
    private static final int MOST = Integer.MAX_VALUE;

    private final Fields file;
    private final Problems problems;

    private CardReader(Fields file) {
        this.file = file;
        this.problems = file.problems();
    }

    /** @throws ProblemException with every problem of the file */
    public static ScoreCard read(Path path) throws ProblemException {
        return read(TextFile.read(path, TextFile.RECORDING_BYTES));
    }

    /** @throws ProblemException with every problem of the text */
    public static ScoreCard read(TextFile source) throws ProblemException {
        return new CardReader(Fields.of(source, new Problems(source.name()))).card();
    }

    private ScoreCard card() throws ProblemException {
        file.schema(CardJson.SCHEMA);
        String decoder = file.text("decoder");
        int generator = file.whole("generator", 1, MOST);
        List<String> arguments = texts(file, "arguments");
        boolean told = file.flag("told_format", false);
        Part part = file.optionalObject("shard").map(this::part).orElse(Part.WHOLE);
        file.skip("summary");
        List<SetCard> sets = new ArrayList<>();
        for (Fields set : file.objects("sets")) {
            sets.add(set(set));
        }
        file.close();
        problems.throwIfAny();
        return new ScoreCard(decoder, generator, arguments, told, part, sets);
    }

    private static List<String> texts(Fields fields, String name) {
        return fields.texts(name).stream().map(PlacedText::text).toList();
    }

    private Part part(Fields part) {
        int before = problems.count();
        int of = part.whole("of", 1, MOST);
        List<Integer> parts =
                part.numbers("parts", 1, of).stream().map(Double::intValue).toList();
        part.close();
        if (parts.isEmpty() && problems.count() == before) {
            part.problem("parts", "is empty; at least one was expected");
        }
        return problems.any() ? Part.WHOLE : new Part(of, parts);
    }

    private SetCard set(Fields set) {
        SetCard.Title title = title(set);
        Optional<Floors> floors = set.optionalObject("floors").map(CardReader::floors);
        List<SetCard.Flaw> flaws = new ArrayList<>();
        for (Fields flaw : set.objects("flaws")) {
            flaws.add(new SetCard.Flaw(flaw.whole("block", 1, MOST), flaw.text("text")));
            flaw.close();
        }
        List<LineCard> lines = new ArrayList<>();
        for (Fields line : set.objects("lines")) {
            lines.add(line(line, title.cases()));
        }
        set.close();
        return new SetCard(title, floors, flaws, lines);
    }

    private static SetCard.Title title(Fields set) {
        Optional<CurvePoint> curve = set.optionalObject("curve").map(CardReader::curve);
        return new SetCard.Title(
                set.id("id"),
                set.text("why"),
                curve,
                texts(set, "channel"),
                set.wholeLong("first_seed"),
                set.whole("seeds", 1, MOST),
                set.whole("cases", 1, MOST),
                set.text("fingerprint"));
    }

    private static CurvePoint curve(Fields curve) {
        CurvePoint point = new CurvePoint(curve.id("family"), curve.number("strength", 0, MOST), curve.text("unit"));
        curve.close();
        return point;
    }

    private static Floors floors(Fields floors) {
        Floors read = new Floors(
                floors.number("lists_right", 0, 1),
                floors.number("codes_right", 0, 1),
                floors.whole("invented_codes", 0, MOST));
        floors.close();
        return read;
    }

    private LineCard line(Fields fields, int cases) {
        Line line = fields.choice("line", List.of(Line.values()), Line::key);
        fields.skip("below_floor", "lists_right", "codes_right");
        List<FormatCard> formats = new ArrayList<>();
        for (Fields format : fields.objects("formats")) {
            formats.add(format(format));
        }
        List<WorstCase> worst = new ArrayList<>();
        for (Fields each : fields.objects("worst")) {
            worst.add(worst(each));
        }
        RightCases right = right(fields, cases);
        fields.close();
        return new LineCard(line, formats, right, worst);
    }

    private static RightCases right(Fields line, int cases) {
        try {
            return RightCases.of(cases, texts(line, "right"));
        } catch (IllegalArgumentException e) {
            line.problem("right", "is no Base64 of " + cases + " bits: " + e.getMessage());
            return RightCases.of(0, List.of());
        }
    }

    private static FormatCard format(Fields format) {
        String id = format.text("format");
        Counts counts = format.object("decoder").map(CardReader::counts).orElse(Counts.NOTHING);
        Optional<Counts> plain = format.optionalObject("plain").map(CardReader::counts);
        Optional<Counts> told = format.optionalObject("lattice_told").map(CardReader::counts);
        TreeMap<String, Long> readAs = new TreeMap<>();
        format.object("read_as").ifPresent(each -> each.names().forEach(name -> readAs.put(name, count(each, name))));
        Map<Failure, Long> failures = new EnumMap<>(Failure.class);
        format.object("failures").ifPresent(each -> failures(each, failures));
        Calibration calibration = calibration(format.objects("calibration"));
        format.close();
        return new FormatCard(id, new Tally(counts, readAs, failures, calibration), plain, told);
    }

    private static void failures(Fields fields, Map<Failure, Long> failures) {
        for (Failure kind : Failure.values()) {
            if (fields.has(CardJson.word(kind))) {
                failures.put(kind, count(fields, CardJson.word(kind)));
            }
        }
        fields.close();
    }

    private static Counts counts(Fields counts) {
        Counts read = new Counts(
                count(counts, "sessions"),
                count(counts, "sessions_right"),
                count(counts, "lists"),
                count(counts, "lists_right"),
                count(counts, "codes"),
                count(counts, "codes_right"),
                count(counts, "codes_wrong"),
                count(counts, "codes_invented"));
        counts.skip("codes_lost");
        counts.close();
        boolean impossible =
                read.sessionsRight() > read.sessions() || read.listsRight() > read.lists() || read.codesLost() < 0;
        if (impossible) {
            counts.problem("counts more right than there are");
        }
        return read;
    }

    private static long count(Fields fields, String name) {
        int before = fields.problems().count();
        long count = fields.wholeLong(name);
        if (count < 0 && fields.problems().count() == before) {
            fields.problem(name, "is " + count + "; a count is 0 or more");
        }
        return count;
    }

    private static Calibration calibration(List<Fields> bins) {
        List<Calibration.Bin> read =
                new ArrayList<>(Collections.nCopies(Calibration.BINS, new Calibration.Bin(0, 0, 0)));
        for (Fields bin : bins) {
            int index = bin.whole("bin", 0, Calibration.BINS - 1);
            read.set(index, new Calibration.Bin(count(bin, "codes"), count(bin, "right"), count(bin, "millionths")));
            bin.close();
        }
        return new Calibration(read);
    }

    private static WorstCase worst(Fields worst) {
        Optional<Failure> failure = worst.optionalText("failure").isPresent()
                ? Optional.of(worst.choice("failure", List.of(Failure.values()), CardJson::word))
                : Optional.empty();
        WorstCase read = new WorstCase(
                worst.whole("case", 0, MOST),
                worst.wholeLong("seed"),
                worst.text("origin"),
                worst.text("format"),
                count(worst, "errors"),
                worst.text("sent"),
                worst.text("read"),
                failure);
        worst.close();
        return read;
    }
}
