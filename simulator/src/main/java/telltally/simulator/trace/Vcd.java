package telltally.simulator.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;

/**
 * A value change dump (IEEE 1364-2005, clause 18, four-state) that was read: its wires, and the pulse train of each
 * one-bit wire. Immutable.
 */
public final class Vcd {
    private static final int NAMED_AT_MOST = 20;

    /**
     * A declared variable.
     *
     * @param name the path of its scopes, its name and its range, such as {@code lamp.digit[3:0]}
     * @param type as the file has it, such as {@code wire} or {@code real}
     * @param bits how wide it is
     */
    public record Wire(String name, String type, int bits) {
        /** Whether it is one level that can be read as a pulse train. */
        public boolean isLevel() {
            return bits == 1 && !type.equals("event") && !type.equals("string") && !type.startsWith("real");
        }
    }

    /** A wire and the identifier under which its values stand; several wires may share one. */
    record Declared(Wire wire, String identifier) {}

    private final String file;
    private final List<Declared> declared;
    private final Map<String, VcdChanges> changes;
    private final long startNanos;
    private final long endNanos;
    private final long unitNanos;

    Vcd(
            String file,
            List<Declared> declared,
            Map<String, VcdChanges> changes,
            long startNanos,
            long endNanos,
            long unitNanos) {
        this.file = file;
        this.declared = List.copyOf(declared);
        this.changes = changes;
        this.startNanos = startNanos;
        this.endNanos = endNanos;
        this.unitNanos = unitNanos;
    }

    /**
     * Reads the whole file. Further to the standard's rules, string variables and their values are passed over.
     *
     * @throws ProblemException if the text is no value change dump, or has no length in time
     */
    public static Vcd read(TextFile source) throws ProblemException {
        return new VcdReader(source).read();
    }

    /** Every declared variable, in the order of the file, vectors and reals with them. */
    public List<Wire> wires() {
        return declared.stream().map(Declared::wire).toList();
    }

    /**
     * The levels of one wire. The train starts at the first time in the file and ends at the last; where the wire
     * changes at the last time, it ends one unit of the timescale later (a nanosecond at least). Unknown levels (x, z)
     * leave the level as it was; before the first known one it is dark.
     *
     * @param name the wire's name, as much of the path of its scopes before it as is needed; without one it is the only
     *     one-bit wire, or the only one that changes
     * @throws ProblemException if that does not single out a one-bit wire; the problem lists those that there are
     */
    public PulseTrain train(Optional<String> name) throws ProblemException {
        Map<String, Wire> candidates = name.isPresent() ? called(name.get()) : changing();
        if (candidates.size() == 1) {
            return train(candidates.keySet().iterator().next());
        }
        String several = named(List.copyOf(candidates.values()));
        throw new ProblemException(Problem.of(
                file,
                name.isPresent()
                        ? "has several wires called " + Problem.quoted(name.get()) + "; expected the name of one: "
                                + several
                        : "has several one-bit wires; expected the name of one: " + several));
    }

    private PulseTrain train(String identifier) {
        VcdChanges found = changes.get(identifier);
        return (found == null ? new VcdChanges() : found).train(startNanos, endNanos, unitNanos);
    }

    /** One wire for each identifier that the name may mean, an exact name before the end of a path. */
    private Map<String, Wire> called(String name) throws ProblemException {
        Map<String, Wire> exact = new LinkedHashMap<>();
        Map<String, Wire> ending = new LinkedHashMap<>();
        levels().forEach((identifier, wires) -> wires.forEach(wire -> {
            if (wire.name().equals(name)) {
                exact.putIfAbsent(identifier, wire);
            } else if (wire.name().endsWith("." + name)) {
                ending.putIfAbsent(identifier, wire);
            }
        }));
        if (exact.isEmpty() && ending.isEmpty()) {
            throw new ProblemException(Problem.of(
                    file,
                    "has no one-bit wire called " + Problem.quoted(name) + "; expected one of " + named(wires())));
        }
        return exact.isEmpty() ? ending : exact;
    }

    /** The only wire that changes; all of them where none does or several do. */
    private Map<String, Wire> changing() throws ProblemException {
        Map<String, Wire> all = new LinkedHashMap<>();
        Map<String, Wire> changing = new LinkedHashMap<>();
        levels().forEach((identifier, wires) -> {
            all.put(identifier, wires.get(0));
            if (train(identifier).edgeCount() > 0) {
                changing.put(identifier, wires.get(0));
            }
        });
        if (all.isEmpty()) {
            throw new ProblemException(Problem.of(file, "has no one-bit wire; it has " + named(wires())));
        }
        return changing.size() == 1 ? changing : all;
    }

    private Map<String, List<Wire>> levels() {
        Map<String, List<Wire>> levels = new LinkedHashMap<>();
        for (Declared one : declared) {
            if (one.wire().isLevel()) {
                levels.computeIfAbsent(one.identifier(), key -> new ArrayList<>())
                        .add(one.wire());
            }
        }
        return levels;
    }

    private static String named(List<Wire> wires) {
        if (wires.isEmpty()) {
            return "none";
        }
        String names = wires.stream()
                .limit(NAMED_AT_MOST)
                .map(wire -> Problem.quoted(wire.name()) + (wire.isLevel() ? "" : " (" + wire.bits() + " bits)"))
                .collect(Collectors.joining(", "));
        return wires.size() > NAMED_AT_MOST ? names + " and " + (wires.size() - NAMED_AT_MOST) + " more" : names;
    }
}
