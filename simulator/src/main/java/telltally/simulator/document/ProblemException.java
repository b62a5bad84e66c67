package telltally.simulator.document;

import java.util.List;

/** Input that cannot be used, with every problem that was found in it. */
public final class ProblemException extends Exception {
    private final transient List<Problem> problems;

    /** @throws IllegalArgumentException if there is no problem */
    public ProblemException(List<Problem> problems) {
        super(problems.isEmpty() ? "" : problems.get(0).toString());
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("no problem to tell");
        }
        this.problems = List.copyOf(problems);
    }

    public ProblemException(Problem problem) {
        this(List.of(problem));
    }

    public List<Problem> problems() {
        return problems;
    }
}
