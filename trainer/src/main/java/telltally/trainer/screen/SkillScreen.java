package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.mastery.Belief;
import telltally.trainer.mastery.Choice;
import telltally.trainer.text.Texts;

/** One skill: what the tutor believes of it, and practice at whatever level the learner likes. */
public final class SkillScreen implements Screen {
    private final Trainer trainer;
    private final Practice practice;
    private final Skill skill;
    private final IntegerProperty level;
    private final StringProperty item = new SimpleStringProperty("");

    SkillScreen(Trainer trainer, Practice practice, Skill skill) {
        this.trainer = trainer;
        this.practice = practice;
        this.skill = skill;
        this.level = new SimpleIntegerProperty(
                practice.tutor().record(skill).grasp().nextLevel().value());
    }

    @Override
    public String title() {
        return trainer.name(skill);
    }

    /** What there is to know about the skill itself. */
    public String about() {
        return texts().of("drill.why-" + skill.key());
    }

    /** What the tutor believes, and what it rests on. */
    public List<String> beliefs() {
        Stream<Belief> all = Stream.concat(
                practice.tutor().beliefs(trainer.records().now().get()).stream(),
                practice.tutor().weakSpots(trainer.records().now().get()).stream());
        List<String> told = all.filter(belief -> belief.skill() == skill)
                .map(belief -> belief.said().in(texts()))
                .toList();
        return told.isEmpty() ? List.of(texts().of("home.nothing-known")) : told;
    }

    /** From 1 to 10; what the tutor would take to begin with. */
    public IntegerProperty levelProperty() {
        return level;
    }

    /** The level chosen, in words. */
    public String levelTold() {
        return trainer.levelTold(Level.nearest(level.get()));
    }

    /** What the skill can be practised on by itself; nothing where only chance decides. */
    public List<String> items() {
        return trainer.library().drillMaker().items(skill, Level.FULL);
    }

    /** One of {@link #items}; empty for chance to decide. */
    public StringProperty itemProperty() {
        return item;
    }

    /** Drills of this skill at this level, one after the other. */
    public void begin() {
        Choice chosen = new Choice(skill, Level.nearest(level.get()), item.get(), Choice.Why.AS_HARD_AS_HELPS);
        new DrillCourse(trainer, practice, Optional.of(chosen)).begin(chosen);
    }

    @Override
    public void back() {
        trainer.show(new HomeScreen(trainer, practice, Optional.of(skill)));
    }

    private Texts texts() {
        return trainer.texts();
    }
}
