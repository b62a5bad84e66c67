package telltally.decoder.outside;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Outcome;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** Asks a program, starts it when it is first needed and again after each failure, and gives it up in the end. */
final class OutsideReader implements Entrant.Reader {
    private static final Reading UNREADABLE = Reading.nothing(
            new Warning(0, WarningKind.NO_FORMAT, "the program says that it reads none of these formats"));

    private final List<String> command;
    private final Limits limits;
    private @Nullable Conversation conversation;
    private int failuresInARow;
    private int failures;
    private int hangs;
    private Optional<Outcome.Failed> givenUp = Optional.empty();

    OutsideReader(List<String> command, Limits limits) {
        this.command = command;
        this.limits = limits;
    }

    @Override
    public Outcome read(PulseTrain train, List<FlashFormat> candidates) {
        if (givenUp.isPresent()) {
            return givenUp.get();
        }
        try {
            Optional<Reading> reading = running().read(train, candidates);
            // Who was not asked has not shown that it still answers.
            failuresInARow = reading.isPresent() ? 0 : failuresInARow;
            return new Outcome.Read(reading.orElse(UNREADABLE));
        } catch (Misbehaviour e) {
            return failed(e.outcome());
        }
    }

    private Conversation running() throws Misbehaviour {
        Conversation running = conversation;
        if (running == null) {
            running = Conversation.begin(command, limits);
            conversation = running;
        }
        return running;
    }

    private Outcome.Failed failed(Outcome.Failed failed) {
        if (conversation != null) {
            conversation.abandon();
            conversation = null;
        }
        failuresInARow++;
        failures++;
        hangs += failed.failure() == Outcome.Failure.HUNG ? 1 : 0;
        if (failuresInARow >= limits.failuresInARow() || hangs >= limits.hangs()) {
            givenUp = Optional.of(new Outcome.Failed(
                    failed.failure(),
                    "not started again after " + failures + " failures; the last: " + failed.detail()));
        }
        return failed;
    }

    @Override
    public void close() {
        if (conversation != null) {
            conversation.close();
            conversation = null;
        }
    }
}
