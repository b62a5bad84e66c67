package telltally.simulator.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one file, so that all of it is told in one run. Not for sharing between threads. */
public final class Problems {
    private final String file;
    private final List<Problem> found = new ArrayList<>();

    public Problems(String file) {
        this.file = file;
    }

    /** Tells of the file as a whole. */
    public void add(String text) {
        found.add(Problem.of(file, text));
    }

    /** @param field a JSON pointer, a column's name or empty */
    public void add(Place place, String field, String text) {
        found.add(new Problem(file, place, field, text));
    }

    public boolean any() {
        return !found.isEmpty();
    }

    public int count() {
        return found.size();
    }

    public String file() {
        return file;
    }

    /** Everything that was found, in the order of the file; what concerns all of it first. */
    public List<Problem> all() {
        return found.stream()
                .sorted(Comparator.comparing(problem -> problem.place().orElse(Place.START)))
                .toList();
    }

    /** @throws ProblemException if anything was found */
    public void throwIfAny() throws ProblemException {
        if (any()) {
            throw new ProblemException(all());
        }
    }
}
