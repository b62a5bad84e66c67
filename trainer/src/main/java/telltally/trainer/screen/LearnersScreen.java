package telltally.trainer.screen;

import java.text.Collator;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import telltally.trainer.logbook.History;
import telltally.trainer.logbook.Learner;
import telltally.trainer.logbook.Learner.NameFault;
import telltally.trainer.logbook.LogbookException;

/** Who is practising: one of those in the logbook, somebody new, or a guest of whom nothing is kept. */
public final class LearnersScreen implements Screen {
    private final Trainer trainer;
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>();

    LearnersScreen(Trainer trainer) {
        this.trainer = trainer;
        state.set(new State(true, List.of(), Optional.empty(), false));
    }

    /**
     * What there is to see.
     *
     * @param waiting whether the logbook is still being opened
     * @param learners by name
     * @param message something that went wrong, or that has to be put right
     * @param deleting whether a learner who is chosen is to be deleted rather than to practise
     */
    public record State(boolean waiting, List<Learner> learners, Optional<String> message, boolean deleting) {
        State saying(String text) {
            return new State(false, learners, Optional.of(text), deleting);
        }
    }

    @Override
    public String title() {
        return trainer.texts().of("learners.title");
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public State state() {
        return state.get();
    }

    /** Where everything is kept. */
    public String place() {
        return trainer.texts().of("learners.place", trainer.records().keeper().file());
    }

    /** A learner of the list: to practise, or to be deleted. */
    public void choose(Learner learner) {
        if (state.get().deleting()) {
            trainer.records()
                    .keeper()
                    .ask(
                            logbook -> History.of(logbook, learner),
                            history -> ifStill(() -> trainer.show(new ForgetScreen(trainer, learner, history))),
                            this::tell);
        } else {
            practise(learner);
        }
    }

    /** Somebody new, who begins at once if the name can be had. */
    public void enrol(String name) {
        Optional<NameFault> fault = Learner.fault(name);
        if (fault.isPresent()) {
            refuse(fault.get());
            return;
        }
        trainer.records()
                .keeper()
                .ask(
                        logbook -> logbook.enrol(name, trainer.records().now().get()),
                        learner -> {
                            if (learner.isPresent()) {
                                practise(learner.get());
                            } else {
                                refuse(NameFault.TAKEN);
                            }
                        },
                        this::tell);
    }

    /** Whoever wants nothing kept. */
    public void goOnAsGuest() {
        trainer.begin(
                Practice.ofGuest(trainer.records().keeper(), trainer.library().facts()));
    }

    /** Choosing a learner deletes one, or no longer does. */
    public void setDeleting(boolean deleting) {
        State now = state.get();
        state.set(new State(
                now.waiting(),
                now.learners(),
                Optional.empty(),
                deleting && !now.learners().isEmpty()));
    }

    @Override
    public void back() {
        if (state.get().deleting()) {
            setDeleting(false);
        } else {
            trainer.notice();
        }
    }

    private void practise(Learner learner) {
        trainer.records()
                .keeper()
                .ask(
                        logbook -> History.of(logbook, learner),
                        history -> ifStill(() -> trainer.begin(Practice.of(
                                learner,
                                trainer.records().keeper(),
                                history,
                                trainer.library().facts()))),
                        this::tell);
    }

    /** Whoever has gone on to another screen meanwhile is not called back. */
    private void ifStill(Runnable then) {
        if (trainer.screen() == this) {
            then.run();
        }
    }

    /** Opens the logbook and looks who is in it. */
    void look() {
        Collator collator = Collator.getInstance(trainer.texts().language());
        trainer.records()
                .keeper()
                .ask(
                        logbook -> logbook.learners().stream()
                                .sorted(Comparator.comparing(Learner::name, collator))
                                .toList(),
                        learners -> state.set(new State(
                                false, learners, Optional.empty(), state.get().deleting())),
                        this::tell);
    }

    private void refuse(NameFault fault) {
        state.set(state.get().saying(trainer.texts().of("learners.name-" + key(fault.name()), Learner.LONGEST_NAME)));
    }

    private void tell(LogbookException reason) {
        state.set(state.get().saying(trainer.told(reason)));
    }

    static String key(String name) {
        return name.toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
