package telltally.decoder.card;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import telltally.decoder.score.CurvePoint;
import telltally.decoder.score.Floors;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;

/** A score card made by hand, in which every number is another one. */
final class SmallCard {
    static final Counts COUNTS = new Counts(40, 25, 44, 31, 90, 70, 9, 3);
    static final Counts PLAIN = new Counts(40, 21, 44, 26, 90, 64, 12, 5);
    static final Counts TOLD = new Counts(40, 38, 44, 42, 90, 88, 1, 2);
    static final Counts NOTHING_SENT = new Counts(12, 11, 12, 11, 0, 0, 0, 1);

    private SmallCard() {}

    static ScoreCard whole() {
        return card(Part.WHOLE, set(Optional.of(new Floors(0.7, 0.75, 13)), List.of(lamp(), pin())));
    }

    static ScoreCard card(Part part, SetCard... sets) {
        return new ScoreCard("abacus", 7, List.of("--decoder", "abacus"), true, part, List.of(sets));
    }

    static SetCard set(Optional<Floors> floors, List<LineCard> lines) {
        SetCard.Title title = new SetCard.Title(
                "jitter-5",
                "lengths scatter",
                Optional.of(new CurvePoint("jitter", 0.05, "share of each length")),
                List.of("jitter", "late-start"),
                -300,
                50,
                52,
                "ab".repeat(32));
        return new SetCard(title, floors, List.of(new SetCard.Flaw(3, "late"), new SetCard.Flaw(2, "moved")), lines);
    }

    static LineCard lamp() {
        return new LineCard(Line.LAMP, List.of(nothingSent(), pairs()), right(0, 3, 51), List.of(worst(7, 6)));
    }

    static LineCard pin() {
        FormatCard only = new FormatCard("pair-even", tally(TOLD, "pair-even"), Optional.empty(), Optional.empty());
        return new LineCard(Line.PIN, List.of(only), right(1), List.of());
    }

    private static FormatCard pairs() {
        Map<Failure, Long> failures = new EnumMap<>(Failure.class);
        failures.put(Failure.OUT_OF_ORDER, 2L);
        failures.put(Failure.HUNG, 4L);
        Tally tally = new Tally(
                COUNTS,
                new TreeMap<>(Map.of("pair-even", 33L, Tally.NO_ANSWER, 6L, Tally.NO_FORMAT, 1L)),
                failures,
                Calibration.NOTHING.plus(bin(17, new Calibration.Bin(20, 17, 17_400_000))));
        return new FormatCard("pair-even", tally, Optional.of(PLAIN), Optional.of(TOLD));
    }

    private static FormatCard nothingSent() {
        return new FormatCard(
                FormatCard.NOTHING_SENT,
                tally(NOTHING_SENT, Tally.NO_FORMAT),
                Optional.of(NOTHING_SENT),
                Optional.of(NOTHING_SENT));
    }

    static Tally tally(Counts counts, String readAs) {
        return new Tally(
                counts,
                new TreeMap<>(Map.of(readAs, counts.sessions())),
                new EnumMap<>(Failure.class),
                Calibration.NOTHING);
    }

    static Calibration bin(int index, Calibration.Bin bin) {
        List<Calibration.Bin> bins = new ArrayList<>(Calibration.NOTHING.bins());
        bins.set(index, bin);
        return new Calibration(bins);
    }

    static RightCases right(int... indices) {
        BitSet bits = new BitSet();
        for (int index : indices) {
            bits.set(index);
        }
        return new RightCases(52, bits);
    }

    static WorstCase worst(int index, long errors) {
        return new WorstCase(
                index,
                index - 300,
                "random message",
                "pair-even",
                errors,
                "codes 12 34",
                "nothing",
                Optional.of(Failure.OUT_OF_ORDER));
    }

    /** A case that was answered. */
    static WorstCase answered(int index, long errors) {
        return new WorstCase(
                index, index - 300, "random message", "pair-even", errors, "codes 12", "codes 13", Optional.empty());
    }
}
