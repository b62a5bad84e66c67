package telltally.trainer.screen;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import telltally.trainer.logbook.History;
import telltally.trainer.logbook.Learner;

/** Is somebody really to be deleted? */
public final class ForgetScreen implements Screen {
    private final Trainer trainer;
    private final Learner learner;
    private final History history;
    private final ReadOnlyObjectWrapper<Optional<String>> message = new ReadOnlyObjectWrapper<>(Optional.empty());

    ForgetScreen(Trainer trainer, Learner learner, History history) {
        this.trainer = trainer;
        this.learner = learner;
        this.history = history;
    }

    @Override
    public String title() {
        return trainer.texts().of("learners.forget-title", learner.name());
    }

    /** What goes, and that it cannot be had back. */
    public String question() {
        return trainer.texts().of("learners.forget-question", learner.name(), history.answers());
    }

    /** Why it could not be done. */
    public ReadOnlyObjectProperty<Optional<String>> messageProperty() {
        return message.getReadOnlyProperty();
    }

    public void forget() {
        trainer.records()
                .keeper()
                .ask(
                        logbook -> {
                            logbook.forget(learner);
                            return true;
                        },
                        gone -> trainer.learners(),
                        reason -> message.set(Optional.of(trainer.told(reason))));
    }

    @Override
    public void back() {
        trainer.learners();
    }
}
