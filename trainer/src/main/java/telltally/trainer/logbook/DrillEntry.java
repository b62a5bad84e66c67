package telltally.trainer.logbook;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/**
 * One drill answered.
 *
 * @param item what in the skill it was about; empty where chance decided
 * @param sent the codes that were sent: {@code present:34 present:42 stored:15}
 * @param expected the right answer, as {@link telltally.trainer.drill.Answer#text()} writes it
 * @param given the answer, written likewise
 * @param timing how long it took
 * @param credits what the answer says about each skill; none where it is not scored
 */
public record DrillEntry(
        UUID id,
        Instant answeredAt,
        Skill skill,
        Level level,
        String item,
        Circumstances circumstances,
        String sent,
        String expected,
        String given,
        boolean right,
        boolean scored,
        Timing timing,
        List<Credit> credits)
        implements Entry {
    public DrillEntry {
        credits = List.copyOf(credits);
    }

    /**
     * A drill as it was answered and marked.
     *
     * @param with how it was shown and by which program
     * @param scored whether it is to count; where not, its credits are left out
     */
    public static DrillEntry of(
            UUID id, Instant answeredAt, Answered answered, Circumstances with, Timing timing, boolean scored) {
        Drill drill = answered.drill();
        return new DrillEntry(
                id,
                answeredAt,
                drill.skill(),
                drill.level(),
                drill.item(),
                with,
                sent(drill),
                drill.perfectAnswer().text(),
                answered.answer().text(),
                answered.marked().right(),
                scored,
                timing,
                scored ? answered.marked().credits() : List.of());
    }

    private static String sent(Drill drill) {
        return drill.truth().codes().entrySet().stream()
                .flatMap(segment ->
                        segment.getValue().stream().map(code -> segment.getKey().key() + ":" + code))
                .collect(Collectors.joining(" "));
    }

    /**
     * How long it took.
     *
     * @param answerNanos from the start of the pulses until the answer was given
     * @param lampNanos for how long the lamp ran, repeats included
     * @param lagNanos the most by which a flash came late
     */
    public record Timing(long answerNanos, long lampNanos, long lagNanos) {}
}
