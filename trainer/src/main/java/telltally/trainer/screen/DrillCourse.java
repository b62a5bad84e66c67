package telltally.trainer.screen;

import java.util.Optional;
import java.util.UUID;
import telltally.simulator.Simulation;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Drill;
import telltally.trainer.logbook.Circumstances;
import telltally.trainer.logbook.DrillEntry;
import telltally.trainer.mastery.Choice;

/** Drill after drill: what the tutor proposes, or what the learner chose instead. */
final class DrillCourse implements DrillScreen.Way {
    private final Trainer trainer;
    private final Practice practice;
    private final Optional<Choice> chosen;
    private long askedNanos;

    /** @param chosen by the learner, to be repeated until they have enough */
    DrillCourse(Trainer trainer, Practice practice, Optional<Choice> chosen) {
        this.trainer = trainer;
        this.practice = practice;
        this.chosen = chosen;
        this.askedNanos = trainer.clockNanos().getAsLong();
    }

    /** Leads to a drill, by way of the advice where the skill is new to the learner. */
    void begin(Choice choice) {
        if (practice.history().hasMet(choice.skill())) {
            trainer.drill(this, choice);
        } else {
            trainer.show(new AdviceScreen(trainer, this, choice));
        }
    }

    /** Asks for one drill. */
    Drill ask(Choice choice) {
        askedNanos = trainer.clockNanos().getAsLong();
        return trainer.library().drillMaker().make(choice.skill(), choice.level(), choice.item(), trainer.nextSeed());
    }

    @Override
    public Optional<String> record(Answered answered) {
        Drill drill = answered.drill();
        long nowNanos = trainer.clockNanos().getAsLong();
        Circumstances with = new Circumstances(
                drill.seed(),
                Simulation.GENERATOR_VERSION,
                trainer.records().program(),
                drill.format().id(),
                DrillScreen.shownBy(drill, trainer.agreed()).key());
        DrillEntry.Timing timing =
                new DrillEntry.Timing(nowNanos - askedNanos, answered.sendings() * drill.lampNanos(), lagNanos());
        // The same drill once more is asked for on the screen of its marks.
        askedNanos = nowNanos;
        boolean scored = answered.scored() && !seenBefore(drill);
        DrillEntry entry =
                DrillEntry.of(UUID.randomUUID(), trainer.records().now().get(), answered, with, timing, scored);
        return practice.keep(entry).map(reason -> trainer.texts().of("learners.not-kept", trainer.told(reason)));
    }

    /** Somebody who has seen the marks of a drill knows its answer. */
    private boolean seenBefore(Drill drill) {
        return practice.history().drills().stream()
                .anyMatch(entry -> entry.circumstances().seed() == drill.seed()
                        && entry.skill() == drill.skill()
                        && entry.level().equals(drill.level())
                        && entry.item().equals(drill.item()));
    }

    private long lagNanos() {
        return trainer.screen() instanceof DrillScreen shown
                ? shown.player().playback().worstLateNanos()
                : 0;
    }

    @Override
    public void next() {
        begin(chosen.orElseGet(() -> trainer.proposal(practice)));
    }

    @Override
    public void done() {
        trainer.show(new HomeScreen(trainer, practice, chosen.map(Choice::skill)));
    }
}
