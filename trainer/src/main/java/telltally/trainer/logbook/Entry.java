package telltally.trainer.logbook;

import java.time.Instant;
import java.util.UUID;

/** One thing that a learner answered. */
public sealed interface Entry permits DrillEntry, LessonEntry {
    UUID id();

    Instant answeredAt();

    Circumstances circumstances();

    /** Whether it counts: a run in which the lamp came late is kept and not scored. */
    boolean scored();

    /** Right in everything. */
    boolean right();
}
