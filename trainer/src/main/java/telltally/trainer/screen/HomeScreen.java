package telltally.trainer.screen;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import telltally.trainer.drill.Skill;
import telltally.trainer.logbook.Learner;
import telltally.trainer.mastery.Choice;
import telltally.trainer.mastery.Stage;
import telltally.trainer.mastery.Tutor;
import telltally.trainer.text.Texts;

/** Where a learner stands, what the tutor proposes and why, and everything else that can be done instead. */
public final class HomeScreen implements Screen {
    private static final int SPOTS = 3;

    private final Trainer trainer;
    private final Practice practice;
    private Choice choice;
    private final Optional<Skill> selected;

    /** @param selected the skill of the path that the learner comes from */
    HomeScreen(Trainer trainer, Practice practice, Optional<Skill> selected) {
        this.trainer = trainer;
        this.practice = practice;
        this.choice = trainer.proposal(practice);
        this.selected = selected;
    }

    Practice practice() {
        return practice;
    }

    /**
     * One skill of the path.
     *
     * @param sign for the stage, so that no colour has to tell it
     * @param proposed whether it is the tutor's proposal
     */
    public record Step(Skill skill, int number, String name, Stage stage, String sign, String told, boolean proposed) {}

    @Override
    public String title() {
        return practice.learner()
                .map(Learner::name)
                .map(name -> texts().of("home.title", name))
                .orElseGet(() -> texts().of("home.title-guest"));
    }

    /** What comes next. */
    public String proposal() {
        return texts().of("home.proposal", trainer.name(choice().skill()), trainer.levelTold(choice().level()));
    }

    /** Why that. */
    public String why() {
        return choice().announced().in(texts());
    }

    /** What is worth knowing today: what is due, what goes wrong most, how it has been going. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        long due = Arrays.stream(Skill.values())
                .filter(skill -> !trainer.leftOut().contains(skill))
                .filter(this::checkIsDue)
                .count();
        if (due > 0) {
            notes.add(texts().of("home.checks-due", due));
        }
        practice.tutor().weakSpots(now()).stream()
                .limit(SPOTS)
                .map(spot -> spot.said().in(texts()))
                .forEach(notes::add);
        int days = practice.history()
                .daysInARow(trainer.records().today(), trainer.records().zone().get());
        if (days > 1) {
            notes.add(texts().of("home.days-in-a-row", days));
        }
        if (practice.learner().isEmpty()) {
            notes.add(texts().of("home.guest"));
        }
        return notes;
    }

    public List<Step> path() {
        List<Step> steps = new ArrayList<>();
        for (Skill skill : Skill.values()) {
            Stage stage = tutor().stage(skill);
            String key = LearnersScreen.key(stage.name());
            boolean waitsForNothing = trainer.leftOut().contains(skill) && stage != Stage.KEPT;
            String told =
                    waitsForNothing ? "home.left-out" : checkIsDue(skill) ? "home.check-due" : "home.stage-" + key;
            steps.add(new Step(
                    skill,
                    steps.size() + 1,
                    trainer.name(skill),
                    stage,
                    texts().of("home.sign-" + key),
                    texts().of(told),
                    skill == choice().skill()));
        }
        return steps;
    }

    /** A step for somebody who hears the path instead of seeing it. */
    public String spoken(Step step) {
        return texts().of(
                        step.proposed() ? "home.spoken-proposed" : "home.spoken",
                        step.number(),
                        step.name(),
                        step.told());
    }

    /** Whether the learner was just at this skill, by their own choice. */
    public boolean cameFrom(Skill skill) {
        return selected.filter(each -> each == skill).isPresent();
    }

    /** Does what the tutor proposes, and goes on with what it proposes then. */
    public void begin() {
        new DrillCourse(trainer, practice, Optional.empty()).begin(choice());
    }

    /** Looks at one skill, to practise it whatever the tutor says. */
    public void open(Skill skill) {
        trainer.show(new SkillScreen(trainer, practice, skill));
    }

    public void lessons() {
        trainer.lessons(Optional.empty());
    }

    public void progress() {
        trainer.show(new ProgressScreen(trainer, practice));
    }

    public void settings() {
        trainer.openSettings();
    }

    public void learners() {
        trainer.learners();
    }

    @Override
    public void back() {
        learners();
    }

    private boolean checkIsDue(Skill skill) {
        return tutor().record(skill)
                .pass()
                .filter(pass -> pass.checkIsDue(now()))
                .isPresent();
    }

    /** Another one where what was proposed has been left out since, in the settings. */
    private Choice choice() {
        if (trainer.leftOut().contains(choice.skill())) {
            choice = trainer.proposal(practice);
        }
        return choice;
    }

    private Tutor tutor() {
        return practice.tutor();
    }

    private Instant now() {
        return trainer.records().now().get();
    }

    private Texts texts() {
        return trainer.texts();
    }
}
