package telltally.decoder.card.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import telltally.decoder.card.Counts;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.Tally;
import telltally.decoder.card.statistics.Decimals;
import telltally.decoder.card.statistics.WilsonInterval;
import telltally.decoder.score.Line;

/** Counts as both reports show them. */
final class Shares {
    private static final String NONE = "-";

    private Shares() {}

    static String percent(long part, long all) {
        return all == 0 ? NONE : Decimals.percent(part, all);
    }

    /** With 95 % confidence, in percent. */
    static String interval(long right, long all) {
        if (all == 0) {
            return NONE;
        }
        WilsonInterval between = WilsonInterval.of(right, all);
        return Decimals.down(100 * between.low(), 1) + " to " + Decimals.up(100 * between.high(), 1);
    }

    static String lists(Optional<Counts> counts) {
        return counts.map(each -> percent(each.listsRight(), each.lists())).orElse(NONE);
    }

    /** Sessions, lists right and their interval, plain, told, codes wrong, lost and invented. */
    static List<String> figures(Counts counts, Optional<Counts> plain, Optional<Counts> told) {
        return List.of(
                Decimals.grouped(counts.sessions()),
                percent(counts.listsRight(), counts.lists()),
                interval(counts.listsRight(), counts.lists()),
                lists(plain),
                lists(told),
                Decimals.grouped(counts.codesWrong()),
                Decimals.grouped(counts.codesLost()),
                Decimals.grouped(counts.codesInvented()));
    }

    static Map<String, Map<Line, FormatCard>> byFormat(ScoreCard card) {
        Map<String, Map<Line, FormatCard>> formats = new TreeMap<>();
        for (SetCard set : card.sets()) {
            for (LineCard each : set.lines()) {
                for (FormatCard format : each.formats()) {
                    formats.computeIfAbsent(format.format(), id -> new TreeMap<>())
                            .merge(each.line(), format, FormatCard::plus);
                }
            }
        }
        return formats;
    }

    /** Sessions behind the same kinds of impairments, in whatever strength. */
    static Map<String, Map<Line, FormatCard>> byChannel(ScoreCard card) {
        Map<String, Map<Line, FormatCard>> channels = new TreeMap<>();
        for (SetCard set : card.sets()) {
            String channel = channel(set);
            for (LineCard each : set.lines()) {
                FormatCard all = new FormatCard(channel, each.decoder(), each.plain(), each.told());
                channels.computeIfAbsent(channel, id -> new TreeMap<>()).merge(each.line(), all, FormatCard::plus);
            }
        }
        return channels;
    }

    static String channel(SetCard set) {
        List<String> kinds = set.title().channel();
        return kinds.isEmpty() ? "(none)" : String.join(" + ", kinds);
    }

    /** All sets, both lines. */
    static Tally everything(ScoreCard card) {
        return card.lines().stream().map(card::total).reduce(Tally.NOTHING, Tally::plus);
    }
}
