package telltally.trainer.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/** Real drills of every skill, through the file and back. */
class DrillEntryTest {
    private static final DrillMaker MAKER = DrillMaker.shipped();

    @TempDir
    private Path folder = Path.of("");

    private static DrillEntry answered(Drill drill, Answer answer, boolean scored) {
        return DrillEntry.of(
                UUID.randomUUID(),
                SampleEntries.MORNING,
                new Answered(drill, answer, drill.mark(answer), Means.TYPED, 1, !scored, false),
                new Circumstances(drill.seed(), 1, "0.1.0", drill.format().id(), "lamp"),
                new DrillEntry.Timing(drill.lampNanos() + 1_000_000_000L, drill.lampNanos(), 0),
                scored);
    }

    @Test
    void what_is_kept_of_a_drill_is_enough_to_ask_and_mark_it_again() throws LogbookException {
        List<DrillEntry> written = new ArrayList<>();
        try (Logbook logbook = Logbook.open(folder)) {
            Learner mira = logbook.enrol("Mira", SampleEntries.MORNING).orElseThrow();
            for (Skill skill : Skill.values()) {
                Drill drill = MAKER.make(skill, new Level(7), 42);
                Answer answer = written.size() % 2 == 0 ? drill.perfectAnswer() : new Answer.None();
                DrillEntry entry = answered(drill, answer, true);
                logbook.write(mira, entry);
                written.add(entry);
            }
            assertThat(logbook.drills(mira)).isEqualTo(written).hasSize(Skill.values().length);
            for (DrillEntry kept : logbook.drills(mira)) {
                Drill again = MAKER.make(
                        kept.skill(),
                        kept.level(),
                        kept.item(),
                        kept.circumstances().seed());
                assertThat(again.perfectAnswer().text()).isEqualTo(kept.expected());
                assertThat(again.mark(Answer.parse(kept.given())).credits()).isEqualTo(kept.credits());
                assertThat(again.mark(Answer.parse(kept.given())).right()).isEqualTo(kept.right());
            }
        }
    }

    @Test
    void a_run_that_is_not_scored_is_kept_without_its_credits() {
        Drill drill = MAKER.make(Skill.SEGMENTS_APART, Level.FULL, 3);
        DrillEntry entry = answered(drill, drill.perfectAnswer(), false);

        assertThat(entry.credits()).isEmpty();
        assertThat(entry.right()).isTrue();
        assertThat(entry.sent()).contains("present:").contains("stored:");
    }
}
