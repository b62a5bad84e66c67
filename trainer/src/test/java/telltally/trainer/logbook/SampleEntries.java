package telltally.trainer.logbook;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import telltally.simulator.format.Segment;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/** Entries as a yard's apprentice leaves them. */
final class SampleEntries {
    static final Instant MORNING = Instant.parse("2026-03-02T09:15:30.250Z");
    static final Circumstances YARD = new Circumstances(17, 1, "0.1.0", "pair-even", "lamp");

    private SampleEntries() {}

    /** A nine counted as an eight, held in the head on the way. */
    static DrillEntry drill(String given) {
        return new DrillEntry(
                UUID.randomUUID(),
                MORNING,
                Skill.COUNT_A_DIGIT,
                new Level(4),
                "9",
                YARD,
                "codes 9",
                "written codes:9@5400",
                given,
                false,
                true,
                new DrillEntry.Timing(75_250_000_000L, 5_400_000_000L, 9_000_000),
                List.of(
                        new Credit(Skill.COUNT_A_DIGIT, new Level(4), "9", false),
                        new Credit(Skill.END_OF_A_CODE, new Level(4), "", true)));
    }

    static LessonEntry lesson() {
        return new LessonEntry(
                UUID.randomUUID(),
                MORNING.plusSeconds(60),
                "two-faults",
                YARD,
                2,
                1,
                false,
                true,
                List.of(
                        new LessonEntry.Line(Segment.PRESENT, "34", "35", "miscounted-digit"),
                        new LessonEntry.Line(Segment.STORED, "15", "15", "")));
    }
}
