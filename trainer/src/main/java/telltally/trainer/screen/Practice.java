package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import telltally.trainer.logbook.DrillEntry;
import telltally.trainer.logbook.Entry;
import telltally.trainer.logbook.History;
import telltally.trainer.logbook.Learner;
import telltally.trainer.logbook.LogbookException;
import telltally.trainer.logbook.LogbookKeeper;
import telltally.trainer.mastery.Tutor;

/** Somebody practising: what they have answered, what the tutor makes of it, and where it is written down. */
final class Practice {
    private final Optional<Learner> learner;
    private final LogbookKeeper keeper;
    private History history;
    private Tutor tutor;

    private Practice(Optional<Learner> learner, LogbookKeeper keeper, History history, List<String> facts) {
        this.learner = learner;
        this.keeper = keeper;
        this.history = history;
        this.tutor = history.tutor(facts);
    }

    /** @param facts the items of the facts that are to be learnt, in the order to meet them */
    static Practice of(Learner learner, LogbookKeeper keeper, History history, List<String> facts) {
        return new Practice(Optional.of(learner), keeper, history, facts);
    }

    /** Nothing that a guest does is written down. */
    static Practice ofGuest(LogbookKeeper keeper, List<String> facts) {
        return new Practice(Optional.empty(), keeper, History.empty(), facts);
    }

    /** Nobody for a guest. */
    Optional<Learner> learner() {
        return learner;
    }

    History history() {
        return history;
    }

    Tutor tutor() {
        return tutor;
    }

    /**
     * Writes an answer down, and returns when it is safe.
     *
     * @return why it could not be written; the answer counts in this sitting all the same
     */
    Optional<LogbookException> keep(Entry entry) {
        history = history.plus(entry);
        if (entry instanceof DrillEntry drill) {
            tutor = tutor.after(drill.credits(), drill.answeredAt());
        }
        if (learner.isEmpty()) {
            return Optional.empty();
        }
        try {
            keeper.askAndWait(logbook -> {
                logbook.write(learner.get(), entry);
                return true;
            });
            return Optional.empty();
        } catch (LogbookException reason) {
            return Optional.of(reason);
        }
    }
}
