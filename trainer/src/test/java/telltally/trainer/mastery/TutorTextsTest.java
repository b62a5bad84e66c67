package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Said;
import telltally.trainer.drill.Skill;
import telltally.trainer.text.Texts;

class TutorTextsTest {
    private static String told(Texts texts, Said said) {
        Object[] arguments = said.arguments().stream()
                .map(each -> each instanceof Said inner ? told(texts, inner) : each)
                .toArray();
        return texts.of(said.key(), arguments);
    }

    @Test
    void every_reason_every_skill_and_every_stage_has_words_in_every_language() {
        for (Locale language : Texts.LANGUAGES) {
            Texts texts = Texts.in(language);
            for (Skill skill : Skill.values()) {
                for (Choice.Why why : Choice.Why.values()) {
                    assertThat(told(texts, new Choice(skill, Level.FULL, "7", why).said()))
                            .isNotBlank()
                            .doesNotContain("{");
                }
                for (Stage stage : Stage.values()) {
                    Belief belief = new Belief(
                            skill, "", stage, false, new Tally(6, 11), new Bounds(0.2, 0.8), 0.5, Level.FULL);
                    assertThat(told(texts, belief.said())).isNotBlank().doesNotContain("{");
                    assertThat(told(texts, stage.said())).isNotBlank();
                }
            }
        }
    }

    @Test
    void a_weak_spot_reads_as_a_person_would_say_it() {
        Tutor tutor = Tutor.beginning();
        for (int i = 0; i < 11; i++) {
            tutor = tutor.after(List.of(new Credit(Skill.COUNT_A_DIGIT, Level.FULL, "9", i < 6)), Instant.EPOCH);
        }
        assertThat(told(
                        Texts.in(Locale.ENGLISH),
                        tutor.weakSpots(Instant.EPOCH).get(0).said()))
                .isEqualTo("9s at full level are your weak spot: 6 of 11.");
        assertThat(told(
                        Texts.in(Locale.GERMAN),
                        tutor.weakSpots(Instant.EPOCH).get(0).said()))
                .isEqualTo("Die Ziffer 9 auf voller Stufe ist deine Schwachstelle: 6 von 11.");
        Choice chosen = new Choice(Skill.COUNT_A_DIGIT, Level.FULL, "9", Choice.Why.WEAK_SPOT, new Tally(6, 11));
        assertThat(told(Texts.in(Locale.ENGLISH), chosen.said()))
                .isEqualTo("Chosen because 9s at full level are your weak spot: 6 of the last 11 were right.");
        assertThat(told(Texts.in(Locale.GERMAN), chosen.said()))
                .isEqualTo("Gewählt, weil die Ziffer 9 auf voller Stufe deine Schwachstelle ist:"
                        + " von den letzten 11 waren 6 richtig.");
        // Before the drill it must not say what will be counted.
        assertThat(told(Texts.in(Locale.ENGLISH), chosen.announced()))
                .isEqualTo("Chosen for a weak spot of yours, which the marks will name.");
        assertThat(told(Texts.in(Locale.GERMAN), chosen.announced()))
                .isEqualTo("Gewählt wegen einer Schwachstelle von dir; die Auswertung nennt sie.");
    }

    @Test
    void a_pass_that_has_to_be_shown_again_is_told_as_one_of_earlier() {
        Belief due = new Belief(
                Skill.COUNT_A_DIGIT, "", Stage.PASSED, true, new Tally(6, 11), new Bounds(0.2, 0.8), 0.5, Level.FULL);
        assertThat(due.said().in(Texts.in(Locale.ENGLISH)))
                .isEqualTo("Passed earlier, and now due for a check: counting a digit."
                        + " Of the last 11 at full level 6 were right.");
    }

    @Test
    void nothing_at_full_level_is_not_told_as_none_of_none() {
        Belief begun = new Belief(
                Skill.COUNT_A_DIGIT, "", Stage.LEARNING, false, new Tally(0, 0), new Bounds(0, 1), 0.5, Level.FULL);
        assertThat(begun.said().in(Texts.in(Locale.ENGLISH)))
                .startsWith("Being learnt: counting a digit. Nothing at full level yet;");
    }
}
