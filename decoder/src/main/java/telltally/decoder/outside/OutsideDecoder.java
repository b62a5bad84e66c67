package telltally.decoder.outside;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.FailingReader;
import telltally.decoder.score.Outcome;

/**
 * A decoder that is a program of its own, asked by the line protocol that DEVELOPERS.md describes. Each reader runs the
 * program once and asks it one session after the other; a program that fails is started anew, within {@link Limits}. One
 * that was found not to say what it can do is not started again.
 */
public final class OutsideDecoder implements Entrant {
    /** The name of a program that never told its own. */
    private static final String NAMELESS = "outside";

    private final List<String> command;
    private final Limits limits;
    private @Nullable Greeting greeting;

    private OutsideDecoder(List<String> command, Limits limits) {
        this.command = List.copyOf(command);
        this.limits = limits;
    }

    /** @param command a line for the shell of the system */
    public static OutsideDecoder command(String command) {
        boolean windows =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
        return program(windows ? List.of("cmd", "/c", command) : List.of("sh", "-c", command));
    }

    /** @param command a program and its arguments, started without a shell */
    public static OutsideDecoder program(List<String> command) {
        return new OutsideDecoder(command, Limits.usual());
    }

    public OutsideDecoder within(Limits others) {
        return new OutsideDecoder(command, others);
    }

    /** As the program tells it; the first call starts it for a moment. */
    @Override
    public String id() {
        return greeting().capabilities().map(Capabilities::id).orElse(NAMELESS);
    }

    /** As the program tells them; the first call starts it for a moment. */
    @Override
    public Traits traits() {
        return greeting()
                .capabilities()
                .map(each -> new Traits(each.formatTold(), each.probabilities()))
                .orElse(new Traits(false, false));
    }

    /** Why the program cannot be spoken to at all; empty where it said what it can do. */
    public Optional<Outcome.Failed> refusal() {
        return greeting().refusal();
    }

    @Override
    public synchronized Reader open() {
        Optional<Outcome.Failed> refused = Optional.ofNullable(greeting).flatMap(Greeting::refusal);
        return refused.<Reader>map(FailingReader::new).orElseGet(() -> new OutsideReader(command, limits));
    }

    /** What came of speaking to the program for the first time: one of the two. */
    private record Greeting(Optional<Capabilities> capabilities, Optional<Outcome.Failed> refusal) {}

    private synchronized Greeting greeting() {
        Greeting known = greeting;
        if (known == null) {
            known = greeted();
            greeting = known;
        }
        return known;
    }

    private Greeting greeted() {
        try (Conversation conversation = Conversation.begin(command, limits)) {
            return new Greeting(Optional.of(conversation.capabilities()), Optional.empty());
        } catch (Misbehaviour e) {
            return new Greeting(Optional.empty(), Optional.of(e.outcome()));
        }
    }
}
