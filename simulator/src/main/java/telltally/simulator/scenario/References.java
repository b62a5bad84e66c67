package telltally.simulator.scenario;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;

/**
 * What a lesson names: something known by its id, or a file that lies relative to the lesson. Problems inside such a
 * file are kept apart, since they stand at places of that file.
 */
final class References {
    private final Fields file;
    private final Optional<Path> folder;
    private final List<Problem> inOtherFiles = new ArrayList<>();

    References(Fields file, Optional<Path> folder) {
        this.file = file;
        this.folder = folder;
    }

    /**
     * Everything of one sort that a lesson can name.
     *
     * @param sort as a problem says it: {@code code list}
     */
    record Shelf<T>(String sort, Function<String, Optional<T>> byId, List<String> ids, FileReading<T> reading) {}

    interface FileReading<T> {
        T read(TextFile source) throws ProblemException;
    }

    /** What is named; empty, and told of, where there is none or it is broken. A blank name was told of before. */
    <T> Optional<T> find(String field, String named, Shelf<T> shelf) {
        if (named.isBlank()) {
            return Optional.empty();
        }
        if (named.endsWith(".json")) {
            return fromFile(field, named, shelf);
        }
        Optional<T> found = shelf.byId().apply(named);
        if (found.isEmpty()) {
            file.problem(
                    field,
                    "no " + shelf.sort() + " is called " + Problem.quoted(named) + "; expected "
                            + String.join(", ", shelf.ids()) + " or a file ending in .json");
        }
        return found;
    }

    /** @throws ProblemException with the lesson's own problems and, after them, those of the files that it names */
    void throwIfAny(Problems own) throws ProblemException {
        List<Problem> all = new ArrayList<>(own.all());
        all.addAll(inOtherFiles);
        if (!all.isEmpty()) {
            throw new ProblemException(all);
        }
    }

    private <T> Optional<T> fromFile(String field, String named, Shelf<T> shelf) {
        Path path;
        byte[] bytes;
        try {
            path = folder.map(each -> each.resolve(named))
                    .orElseGet(() -> Path.of(named))
                    .normalize();
            bytes = TextFile.bytes(path, TextFile.DOCUMENT_BYTES);
        } catch (InvalidPathException e) {
            file.problem(field, Problem.quoted(named) + " cannot be the name of a file");
            return Optional.empty();
        } catch (ProblemException e) {
            e.problems().forEach(each -> file.problem(field, Problem.quoted(named) + ": " + each.text()));
            return Optional.empty();
        }
        try {
            return Optional.of(shelf.reading().read(TextFile.decode(path.toString(), bytes)));
        } catch (ProblemException e) {
            inOtherFiles.addAll(e.problems());
            return Optional.empty();
        }
    }
}
