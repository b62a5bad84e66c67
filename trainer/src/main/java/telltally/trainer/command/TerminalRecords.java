package telltally.trainer.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.Marking;
import telltally.trainer.logbook.Circumstances;
import telltally.trainer.logbook.DataFolder;
import telltally.trainer.logbook.Learner;
import telltally.trainer.logbook.LessonEntry;
import telltally.trainer.logbook.Logbook;
import telltally.trainer.logbook.LogbookException;

/** Where the terminal drill writes answers down: the logbook, or nowhere for whoever gave no name. */
final class TerminalRecords implements AutoCloseable {
    private final @Nullable Logbook logbook;
    private final @Nullable Learner learner;

    private TerminalRecords(@Nullable Logbook logbook, @Nullable Learner learner) {
        this.logbook = logbook;
        this.learner = learner;
    }

    static TerminalRecords none() {
        return new TerminalRecords(null, null);
    }

    /**
     * For a learner, who is put into the logbook where the name is new.
     *
     * @param folder where the logbook is; the user's data folder where none is named
     */
    static TerminalRecords of(String name, @Nullable Path folder) throws ProblemException {
        Optional<Learner.NameFault> fault = Learner.fault(name);
        if (fault.isPresent()) {
            throw new ProblemException(Problem.of("--learner", fault.get().sentence()));
        }
        try {
            Logbook open =
                    Logbook.open(folder == null ? DataFolder.ofThisMachine().path() : folder);
            Optional<Learner> known = open.find(name);
            Optional<Learner> learner = known.isPresent() ? known : open.enrol(name, Instant.now());
            return new TerminalRecords(open, learner.or(() -> known).orElseThrow());
        } catch (LogbookException reason) {
            throw new ProblemException(told(reason));
        }
    }

    /**
     * Writes an answer down and returns when it is safe.
     *
     * @return why it could not be written
     */
    Optional<Problem> keep(Lesson lesson, Marking marking, String display) {
        if (logbook == null || learner == null) {
            return Optional.empty();
        }
        Circumstances with = new Circumstances(
                lesson.recording().seed(),
                lesson.recording().generatorVersion(),
                Telltally.version(),
                lesson.scenario().format().id(),
                display);
        LessonEntry entry = LessonEntry.of(
                UUID.randomUUID(), Instant.now(), lesson.scenario().id(), with, marking, true);
        try {
            logbook.write(learner, entry);
            return Optional.empty();
        } catch (LogbookException reason) {
            return Optional.of(told(reason));
        }
    }

    @Override
    public void close() throws ProblemException {
        if (logbook != null) {
            try {
                logbook.close();
            } catch (LogbookException reason) {
                throw new ProblemException(told(reason));
            }
        }
    }

    private static Problem told(LogbookException reason) {
        return Problem.of(reason.file().toString(), reason.sentence());
    }
}
