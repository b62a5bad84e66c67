package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.scenario.Display;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/** A drill run without a window; what was handed over for keeping is there to be looked at. */
final class DrillRun implements DrillScreen.Way {
    static final DrillMaker MAKER = DrillMaker.shipped();

    final PracticeRun run = PracticeRun.usual();
    final List<Answered> kept = new ArrayList<>();
    final List<String> calls = new ArrayList<>();
    Optional<String> trouble = Optional.empty();

    static Drill drill(Skill skill, int level, long seed) {
        return MAKER.make(skill, new Level(level), seed);
    }

    DrillScreen open(Drill drill, Display agreed) {
        DrillScreen screen = new DrillScreen(run.trainer, drill, agreed, this);
        run.trainer.show(screen);
        return screen;
    }

    DrillScreen open(Drill drill) {
        return open(drill, Display.LAMP);
    }

    /** Until everything has been sent. */
    void passAll(Drill drill) {
        run.pass(drill.lampNanos() / 1e9 + 0.1);
    }

    /** Types what an answer holds, without waiting for anything. */
    static void type(DrillScreen screen, Answer answer) {
        if (answer instanceof Answer.Chosen chosen) {
            ((DrillInput.Choice) screen.answerInput()).chosenProperty().set(chosen.option());
        } else if (answer instanceof Answer.Counted counted) {
            Integer.toString(counted.number())
                    .chars()
                    .forEach(digit -> ((DrillInput.Count) screen.answerInput()).type(Character.toString(digit)));
        } else if (answer instanceof Answer.Written written) {
            WorkSheet sheet = ((DrillInput.Sheet) screen.answerInput()).sheet();
            written.entries().forEach(entry -> {
                for (int i = 0; i < sheet.columns().size(); i++) {
                    if (sheet.columns().get(i).segment() == entry.segment()) {
                        sheet.select(i);
                    }
                }
                entry.code().chars().forEach(digit -> sheet.type(Character.toString(digit)));
                sheet.finish();
            });
        }
    }

    @Override
    public Optional<String> record(Answered answered) {
        calls.add("record on " + run.trainer.screen().getClass().getSimpleName());
        kept.add(answered);
        return trouble;
    }

    @Override
    public void next() {
        calls.add("next");
    }

    @Override
    public void done() {
        calls.add("done");
    }
}
