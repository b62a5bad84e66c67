package telltally.trainer.trial;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/** Real drills of every skill and level, made once, from which learners draw. */
final class TaskBank {
    private final Map<Skill, List<List<Task>>> tasks = new EnumMap<>(Skill.class);
    private final List<String> facts;

    /** @param each how many drills of each skill and level */
    TaskBank(DrillMaker maker, Chance chance, int each) {
        for (Skill skill : Skill.values()) {
            List<List<Task>> levels = new ArrayList<>();
            for (int level = Level.LOWEST; level <= Level.HIGHEST; level++) {
                List<Task> drills = new ArrayList<>();
                for (int i = 0; i < each; i++) {
                    drills.add(Task.of(maker.make(skill, new Level(level), chance.nextLong())));
                }
                levels.add(List.copyOf(drills));
            }
            tasks.put(skill, levels);
        }
        facts = maker.items(Skill.CODE_MEANING, Level.FULL);
    }

    Task draw(Skill skill, Level level, Chance chance) {
        List<Task> all = all(skill, level);
        return all.get(chance.below(all.size()));
    }

    List<Task> all(Skill skill, Level level) {
        return Objects.requireNonNull(tasks.get(skill)).get(level.value() - Level.LOWEST);
    }

    /** The codes whose meaning is to be learnt. */
    List<String> facts() {
        return facts;
    }
}
