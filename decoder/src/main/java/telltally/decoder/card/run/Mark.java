package telltally.decoder.card.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.Counts;
import telltally.decoder.card.Tally;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.Score;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;

/**
 * One session, marked.
 *
 * @param counts of this session alone
 * @param readAs the format it was taken for
 * @param claims the codes that were given a probability
 */
public record Mark(
        Counts counts, String readAs, Optional<Failure> failure, List<Claim> claims, Map<Segment, List<String>> read) {
    /** @param millionths the probability that the decoder gave it */
    public record Claim(long millionths, boolean right) {}

    /** @param probabilities whether the decoder's mean anything */
    public static Mark of(Truth truth, Outcome outcome, boolean probabilities) {
        if (outcome instanceof Outcome.Read read) {
            return of(truth, read.reading(), probabilities);
        }
        Score sent = Score.of(truth, new Reading(Optional.empty(), Map.of(), List.of(), List.of()));
        // Silence where silence was right is no answer for all that.
        Counts counts = new Counts(1, 0, sent.lists(), 0, sent.codes(), 0, 0, 0);
        return new Mark(
                counts, Tally.NO_ANSWER, Optional.of(((Outcome.Failed) outcome).failure()), List.of(), Map.of());
    }

    private static Mark of(Truth truth, Reading reading, boolean probabilities) {
        Score score = Score.of(truth, reading);
        long wrong = replaced(truth, reading);
        Counts counts = new Counts(
                1,
                score.perfect() ? 1 : 0,
                score.lists(),
                score.listsRight(),
                score.codes(),
                score.codesRight(),
                wrong,
                score.inventedCodes() - wrong);
        String readAs = reading.format().map(FormatEstimate::id).orElse(Tally.NO_FORMAT);
        List<Claim> claims = probabilities ? claims(truth, reading) : List.of();
        return new Mark(counts, readAs, Optional.empty(), claims, reading.codes());
    }

    /** In each segment, a code that is missing and one too many are taken for one read as the other. */
    private static long replaced(Truth truth, Reading reading) {
        long replaced = 0;
        for (Map.Entry<Segment, List<String>> sent : truth.codes().entrySet()) {
            Set<String> missing = new HashSet<>(sent.getValue());
            Set<String> extra = new HashSet<>(reading.codes().getOrDefault(sent.getKey(), List.of()));
            missing.removeAll(extra);
            extra.removeAll(Set.copyOf(sent.getValue()));
            replaced += Math.min(missing.size(), extra.size());
        }
        return replaced;
    }

    private static List<Claim> claims(Truth truth, Reading reading) {
        List<Claim> claims = new ArrayList<>();
        for (Map.Entry<Segment, List<String>> segment : reading.codes().entrySet()) {
            List<String> sent = truth.codes().getOrDefault(segment.getKey(), List.of());
            for (String code : Set.copyOf(segment.getValue())) {
                double probability = -1;
                for (Group group : reading.groups()) {
                    if (isCode(group)
                            && group.segment() == segment.getKey()
                            && group.digits().equals(code)) {
                        probability = Math.max(probability, group.probability());
                    }
                }
                if (probability >= 0) {
                    claims.add(new Claim(Math.round(probability * Calibration.MILLION), sent.contains(code)));
                }
            }
        }
        return claims;
    }

    private static boolean isCode(Group group) {
        return group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE;
    }

    public boolean right() {
        return counts.sessionsRight() == 1;
    }

    /** Codes that are wrong, lost or invented, and lists that are not right. */
    long errors() {
        return counts.codesWrong() + counts.codesLost() + counts.codesInvented() + counts.lists() - counts.listsRight();
    }

    /** Such as {@code present 34 42, stored 11}. */
    public static String text(Map<Segment, List<String>> codes) {
        return codes.isEmpty() ? "nothing" : listed(codes);
    }

    private static String listed(Map<Segment, List<String>> codes) {
        return codes.entrySet().stream()
                .map(list -> list.getKey().key() + " "
                        + (list.getValue().isEmpty() ? "none" : String.join(" ", list.getValue())))
                .collect(Collectors.joining(", "));
    }
}
