package telltally.trainer.trial;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.mastery.Choice;
import telltally.trainer.mastery.Tutor;

/** Who says what is practised next. Passes are granted, checked and taken back by the same rule for all. */
enum PracticeOrder implements Course.Order {
    /** The tutor that the trainer has. */
    TUTOR("tutor") {
        @Override
        public Choice next(Tutor tutor, Instant now, Chance chance) {
            return tutor.next(now, chance);
        }
    },
    /** One skill after the other, each at full level until it is passed. */
    FIXED_ORDER("fixed-order") {
        @Override
        public Choice next(Tutor tutor, Instant now, Chance chance) {
            return full(unpassed(tutor).get(0));
        }
    },
    /** Any skill that is not passed, at full level. */
    RANDOM("random") {
        @Override
        public Choice next(Tutor tutor, Instant now, Chance chance) {
            List<Skill> open = unpassed(tutor);
            return full(open.get(chance.below(open.size())));
        }
    };

    private final String id;

    PracticeOrder(String id) {
        this.id = id;
    }

    String id() {
        return id;
    }

    static List<Skill> unpassed(Tutor tutor) {
        return Arrays.stream(Skill.values())
                .filter(skill -> tutor.record(skill).pass().isEmpty())
                .toList();
    }

    private static Choice full(Skill skill) {
        return new Choice(skill, Level.FULL, "", Choice.Why.NEXT_ON_THE_PATH);
    }
}
