package telltally.decoder.card.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.statistics.HolmCorrection;
import telltally.decoder.card.statistics.McNemar;
import telltally.decoder.score.Line;

/**
 * A card against an older one, case by case: only cases that came out differently count. Each set and line is tested
 * ({@link McNemar}), and the many tests are corrected for being many ({@link HolmCorrection}).
 *
 * @param rows in the order of the newer card
 * @param leftOut what only one of the cards has, or has of other recordings, in words
 */
public record Comparison(String nowDecoder, String beforeDecoder, List<Row> rows, List<String> leftOut) {
    /** A difference is beyond chance where chance alone would show one less often than this. */
    public static final double CHANCE = 0.05;

    public Comparison {
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
    }

    /** What can be said of a row. */
    public enum Verdict {
        BETTER,
        WORSE,
        /** Nothing changed, or no more than chance would. */
        SAME
    }

    /**
     * One set on one line.
     *
     * @param cases compared
     * @param gained wrong before, right now
     * @param lost right before, wrong now
     * @param pValue that of this row alone
     * @param corrected the same, among all rows
     */
    public record Row(
            String set,
            Line line,
            int cases,
            int nowRight,
            int beforeRight,
            int gained,
            int lost,
            double pValue,
            double corrected) {
        public Verdict verdict() {
            if (corrected >= CHANCE || gained == lost) {
                return Verdict.SAME;
            }
            return gained > lost ? Verdict.BETTER : Verdict.WORSE;
        }
    }

    public static Comparison of(ScoreCard now, ScoreCard before) {
        List<Row> rows = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (SetCard set : now.sets()) {
            Optional<SetCard> old = find(before, set.title().id());
            Optional<String> hindrance = hindrance(now, before, set, old);
            if (hindrance.isPresent()) {
                leftOut.add(set.title().id() + ": " + hindrance.get());
            } else {
                set.lines().forEach(line -> row(set, line, old.orElseThrow()).ifPresent(rows::add));
            }
        }
        for (SetCard set : before.sets()) {
            if (find(now, set.title().id()).isEmpty()) {
                leftOut.add(set.title().id() + ": only in the older card");
            }
        }
        return new Comparison(now.decoder(), before.decoder(), corrected(rows), leftOut);
    }

    private static Optional<SetCard> find(ScoreCard card, String id) {
        return card.sets().stream().filter(each -> each.title().id().equals(id)).findFirst();
    }

    private static Optional<String> hindrance(ScoreCard now, ScoreCard before, SetCard set, Optional<SetCard> old) {
        if (old.isEmpty()) {
            return Optional.of("not in the older card");
        }
        SetCard.Title one = set.title();
        SetCard.Title other = old.get().title();
        boolean sameCases = now.generator() == before.generator()
                && one.fingerprint().equals(other.fingerprint())
                && one.from() == other.from()
                && one.cases() == other.cases()
                && now.part().equals(before.part());
        return sameCases ? Optional.empty() : Optional.of("the older card has other recordings under this name");
    }

    private static Optional<Row> row(SetCard set, LineCard now, SetCard old) {
        return old.lines().stream()
                .filter(each -> each.line() == now.line())
                .findFirst()
                .map(before -> row(set.title().id(), now, before));
    }

    private static Row row(String set, LineCard now, LineCard before) {
        int gained = now.right().rightHereOnly(before.right());
        int lost = before.right().rightHereOnly(now.right());
        int cases = Math.toIntExact(now.decoder().counts().sessions());
        return new Row(
                set,
                now.line(),
                cases,
                now.right().count(),
                before.right().count(),
                gained,
                lost,
                McNemar.pValue(gained, lost),
                1);
    }

    /** Rows without any change were no tests. */
    private static List<Row> corrected(List<Row> rows) {
        List<Row> changed =
                rows.stream().filter(row -> row.gained() + row.lost() > 0).toList();
        List<Double> raised =
                HolmCorrection.adjusted(changed.stream().map(Row::pValue).toList());
        List<Row> all = new ArrayList<>(rows);
        for (int i = 0; i < changed.size(); i++) {
            Row row = changed.get(i);
            all.set(
                    all.indexOf(row),
                    new Row(
                            row.set,
                            row.line,
                            row.cases,
                            row.nowRight,
                            row.beforeRight,
                            row.gained,
                            row.lost,
                            row.pValue,
                            raised.get(i)));
        }
        return all;
    }

    public List<Row> rows(Verdict verdict) {
        return rows.stream().filter(row -> row.verdict() == verdict).toList();
    }
}
