package telltally.decoder.card.report;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;

/** Whether a card holds what it is held to, in words. */
final class Verdicts {
    private Verdicts() {}

    /** Digests that did not match, cases that could not be run, floors that do not hold; a line each. */
    static List<String> shortfalls(ScoreCard card) {
        List<String> lines = new ArrayList<>();
        for (SetCard set : card.sets()) {
            set.flaws().forEach(flaw -> lines.add(set.title().id() + ": " + flaw.text()));
            for (LineCard each : set.lines()) {
                if (card.part().whole()) {
                    set.shortfalls(each)
                            .forEach(why -> lines.add(
                                    set.title().id() + ", " + each.line().key() + ": " + why));
                }
            }
        }
        return lines;
    }

    /** Where there are no shortfalls. */
    static String inOneLine(ScoreCard card) {
        if (!card.part().whole()) {
            return "Floors are judged when all shards are merged.";
        }
        boolean floors = card.sets().stream().anyMatch(set -> set.floors().isPresent());
        return floors ? "Holds every floor." : "No floors to hold: they stand for the sets' own seeds.";
    }
}
