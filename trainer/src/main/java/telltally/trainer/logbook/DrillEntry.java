package telltally.trainer.logbook;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import telltally.simulator.Simulation;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Marked;
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
     * @param display how it was shown, in the words of scenario files
     * @param program version of Telltally
     * @param scored whether it is to count; where not, its credits are left out
     */
    public static DrillEntry of(
            UUID id,
            Instant answeredAt,
            Drill drill,
            Answer answer,
            Marked marked,
            String display,
            String program,
            Timing timing,
            boolean scored) {
        return new DrillEntry(
                id,
                answeredAt,
                drill.skill(),
                drill.level(),
                drill.item(),
                new Circumstances(
                        drill.seed(),
                        Simulation.GENERATOR_VERSION,
                        program,
                        drill.format().id(),
                        display),
                sent(drill),
                drill.perfectAnswer().text(),
                answer.text(),
                marked.right(),
                scored,
                timing,
                scored ? marked.credits() : List.of());
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
