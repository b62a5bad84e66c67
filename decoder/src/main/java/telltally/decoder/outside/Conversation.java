package telltally.decoder.outside;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** One run of a program, from its greeting on. Not for sharing between threads. */
final class Conversation implements AutoCloseable {
    private final Program program;
    private final Duration within;
    private final Capabilities capabilities;
    private final Request request = new Request();
    private final Set<String> defined = new HashSet<>();
    private long asked;

    private Conversation(Program program, Duration within, Capabilities capabilities) {
        this.program = program;
        this.within = within;
        this.capabilities = capabilities;
    }

    /** @throws Misbehaviour if the program does not start, or does not say what it can do */
    static Conversation begin(List<String> command, Limits limits) throws Misbehaviour {
        Program program = Program.start(command, limits);
        try {
            Capabilities said = Capabilities.read(program.ask(new Request().greeting(), limits.start()));
            return new Conversation(program, limits.session(), said);
        } catch (Misbehaviour e) {
            program.end();
            throw e;
        }
    }

    Capabilities capabilities() {
        return capabilities;
    }

    /**
     * @return nothing where the program says that it reads none of the formats, and so was not asked
     * @throws Misbehaviour if no answer can be had; then there is nothing left but to {@link #abandon} it
     */
    Optional<Reading> read(PulseTrain train, List<FlashFormat> candidates) throws Misbehaviour {
        List<FlashFormat> readable =
                candidates.stream().filter(capabilities::reads).toList();
        if (readable.isEmpty()) {
            return Optional.empty();
        }
        List<FlashFormat> news = readable.stream()
                .filter(format -> capabilities.definitions() && defined.add(format.id()))
                .toList();
        long id = ++asked;
        byte[] answer = program.ask(request.session(id, train, readable, news), within);
        return Optional.of(Answer.read(answer, id, readable));
    }

    /** Ends the program at once. */
    void abandon() {
        program.end();
    }

    /** Lets the program end by itself, for a moment. */
    @Override
    public void close() {
        program.close();
    }
}
