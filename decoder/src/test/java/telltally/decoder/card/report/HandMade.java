package telltally.decoder.card.report;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.Calibration.Bin;
import telltally.decoder.card.Counts;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.Part;
import telltally.decoder.card.RightCases;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.Tally;
import telltally.decoder.card.WorstCase;
import telltally.decoder.score.CurvePoint;
import telltally.decoder.score.Floors;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;

/** Cards whose every count was written by hand, so that sums and shares can be told beforehand. */
final class HandMade {
    static final Floors LOW_FLOORS = new Floors(0.1, 0.1, 1000);

    /** By hand: 1818 of 1850 lists are 98.3 %, and 30 codes wrong and 9 invented are 39 to a floor. */
    static final Floors HIGH_FLOORS = new Floors(0.99, 0.9, 38);

    private HandMade() {}

    /** Sessions of one list of one code each; what is not right is lost. */
    static Counts counts(long right, long all) {
        return new Counts(all, right, all, right, all, right, 0, 0);
    }

    static FormatCard format(String id, Counts counts) {
        return format(id, counts, Map.of(id, counts.sessions()), Map.of(), Calibration.NOTHING);
    }

    static FormatCard format(
            String id, Counts counts, Map<String, Long> readAs, Map<Failure, Long> failures, Calibration calibration) {
        return new FormatCard(
                id,
                new Tally(counts, new TreeMap<>(readAs), failures, calibration),
                Optional.empty(),
                Optional.empty());
    }

    static FormatCard beside(FormatCard card, Counts plain, Counts told) {
        return new FormatCard(card.format(), card.decoder(), Optional.of(plain), Optional.of(told));
    }

    static Calibration calibration(Map<Integer, Bin> bins) {
        List<Bin> all = new ArrayList<>(Calibration.NOTHING.bins());
        bins.forEach(all::set);
        return new Calibration(all);
    }

    static LineCard line(Line line, FormatCard... formats) {
        return new LineCard(line, List.of(formats), new RightCases(0, new BitSet()), List.of());
    }

    static LineCard worst(LineCard line, WorstCase... worst) {
        return new LineCard(line.line(), line.formats(), line.right(), List.of(worst));
    }

    static SetCard set(String id, LineCard... lines) {
        return new SetCard(title(id, Optional.empty(), List.of()), Optional.empty(), List.of(), List.of(lines));
    }

    static SetCard set(String id, CurvePoint place, LineCard... lines) {
        return new SetCard(title(id, Optional.of(place), List.of()), Optional.empty(), List.of(), List.of(lines));
    }

    static SetCard behind(SetCard set, String... channel) {
        SetCard.Title title = title(set.title().id(), set.title().curve(), List.of(channel));
        return new SetCard(title, set.floors(), set.flaws(), set.lines());
    }

    static SetCard held(SetCard set, Floors floors) {
        return new SetCard(set.title(), Optional.of(floors), set.flaws(), set.lines());
    }

    static SetCard flawed(SetCard set, String flaw) {
        return new SetCard(set.title(), set.floors(), List.of(new SetCard.Flaw(1, flaw)), set.lines());
    }

    private static SetCard.Title title(String id, Optional<CurvePoint> place, List<String> channel) {
        return new SetCard.Title(id, "by hand", place, channel, 1, 1, 1, "none");
    }

    static ScoreCard card(SetCard... sets) {
        return card(Part.WHOLE, sets);
    }

    static ScoreCard card(Part part, SetCard... sets) {
        return new ScoreCard("mine", 3, List.of("--decoder", "mine"), false, part, List.of(sets));
    }

    static ScoreCard told(ScoreCard card) {
        return new ScoreCard(card.decoder(), card.generator(), card.arguments(), true, card.part(), card.sets());
    }

    /** Of both lines, without a channel. On the lamp 1228 of 1250 sessions right, 1818 of 1850 lists. */
    static SetCard calm() {
        FormatCard lamp = format(
                "pair-even",
                new Counts(1200, 1180, 1800, 1770, 3000, 2950, 30, 7),
                Map.of("pair-even", 1199L, "count-loop", 1L),
                Map.of(),
                calibration(Map.of(10, new Bin(200, 100, 105_000_000), 19, new Bin(1000, 960, 980_000_000))));
        FormatCard nothing = format(
                FormatCard.NOTHING_SENT,
                new Counts(50, 48, 50, 48, 0, 0, 0, 2),
                Map.of(Tally.NO_FORMAT, 48L, "pair-even", 2L),
                Map.of(),
                Calibration.NOTHING);
        FormatCard pin = format("pair-even", new Counts(1200, 1200, 1800, 1800, 3000, 3000, 0, 0));
        return set(
                "calm",
                line(
                        Line.LAMP,
                        nothing,
                        beside(lamp, counts(900, 1800), new Counts(1200, 1200, 1800, 1800, 3000, 3000, 0, 0))),
                line(Line.PIN, pin));
    }

    /** Of the lamp only, behind two impairments: 4 of 10 sessions right, 5 of 10 lists. */
    static SetCard storm() {
        FormatCard lamp = format(
                "count-loop",
                new Counts(10, 4, 10, 5, 20, 10, 6, 1),
                Map.of("count-loop", 6L, "pair-even", 2L, Tally.NO_FORMAT, 1L, Tally.NO_ANSWER, 1L),
                Map.of(Failure.OUT_OF_ORDER, 1L),
                Calibration.NOTHING);
        return behind(set("storm", line(Line.LAMP, lamp)), "jitter", "bounce");
    }

    /** Three sets: {@link #calm}, one with a worst case and nothing else to say, {@link #storm}. */
    static ScoreCard weather() {
        LineCard lamp = line(Line.LAMP, format("count-loop", counts(1, 2)));
        return card(calm(), set("gale", worst(lamp, wrong(7, 3))), storm());
    }

    static WorstCase wrong(int index, long errors) {
        return new WorstCase(
                index,
                100 + index,
                "random message",
                "pair-even",
                errors,
                "codes 12",
                "codes " + index,
                Optional.empty());
    }

    static WorstCase failed(int index, long errors) {
        return new WorstCase(
                index,
                100 + index,
                "a lesson",
                "pair-even",
                errors,
                "codes 12",
                "nothing",
                Optional.of(Failure.OUT_OF_ORDER));
    }
}
