package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.scenario.Display;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Drill;

/** Leads a trainer straight to a drill, and remembers what comes of it. */
public final class DrillDoor implements DrillScreen.Way {
    public final List<Answered> kept = new ArrayList<>();
    public final List<String> ways = new ArrayList<>();

    /** On the toolkit's thread, where there is a window. */
    public void open(Trainer trainer, Drill drill, Display agreed) {
        trainer.show(new DrillScreen(trainer, drill, agreed, this));
    }

    @Override
    public Optional<String> record(Answered answered) {
        kept.add(answered);
        return Optional.empty();
    }

    @Override
    public void next() {
        ways.add("next");
    }

    @Override
    public void done() {
        ways.add("done");
    }
}
