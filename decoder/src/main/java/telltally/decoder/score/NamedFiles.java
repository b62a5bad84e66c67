package telltally.decoder.score;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;

/**
 * The files that a seed set names, relative to itself: lessons, formats, recordings. Problems inside such a file are
 * kept apart: their places are its.
 */
final class NamedFiles {
    private final Path seedFile;
    private final Problems own;
    private final List<Problem> inside = new ArrayList<>();

    NamedFiles(Path seedFile, Problems own) {
        this.seedFile = seedFile;
        this.own = own;
    }

    /** What makes a value of a file that was found. */
    interface Reading<T> {
        T read(TextFile source, Path path) throws ProblemException;
    }

    /** What is named; empty, and told of, where there is none or it is broken. */
    <T> Optional<T> read(PlacedText named, int atMostBytes, Reading<T> reading) {
        Path path;
        byte[] bytes;
        try {
            path = seedFile.resolveSibling(named.text()).normalize();
            bytes = TextFile.bytes(path, atMostBytes);
        } catch (InvalidPathException e) {
            tell(named, Problem.quoted(named.text()) + " cannot be the name of a file");
            return Optional.empty();
        } catch (ProblemException e) {
            e.problems().forEach(each -> tell(named, Problem.quoted(named.text()) + ": " + each.text()));
            return Optional.empty();
        }
        try {
            return Optional.of(reading.read(TextFile.decode(path.toString(), bytes), path));
        } catch (ProblemException e) {
            inside.addAll(e.problems());
            return Optional.empty();
        }
    }

    void tell(PlacedText at, String text) {
        own.add(at.place(), at.pointer(), text);
    }

    /** What is wrong inside the files that were named. */
    List<Problem> inside() {
        return inside;
    }
}
