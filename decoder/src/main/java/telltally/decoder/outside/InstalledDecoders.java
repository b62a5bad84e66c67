package telltally.decoder.outside;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.Supplier;
import telltally.decoder.reading.Decoder;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.InProcess;

/**
 * The decoders in Java that lie on the class path and are named in {@code
 * META-INF/services/telltally.decoder.reading.Decoder}: those that ship, and any other.
 */
public final class InstalledDecoders {
    private final Map<String, Entrant> byId = new LinkedHashMap<>();

    private InstalledDecoders() {}

    /**
     * Looks around on the class path; of decoders with the same id the first one counts.
     *
     * @throws java.util.ServiceConfigurationError if a decoder is named there that cannot be made
     */
    public static InstalledDecoders find() {
        return find(InstalledDecoders.class.getClassLoader());
    }

    /** @see #find() */
    public static InstalledDecoders find(ClassLoader loader) {
        InstalledDecoders found = new InstalledDecoders();
        ServiceLoader.load(Decoder.class, loader).stream().forEach(provider -> {
            Supplier<Decoder> fresh = provider;
            found.byId.computeIfAbsent(fresh.get().id(), id -> new InProcess(id, fresh));
        });
        return found;
    }

    public List<String> ids() {
        return List.copyOf(byId.keySet());
    }

    public Optional<Entrant> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }
}
