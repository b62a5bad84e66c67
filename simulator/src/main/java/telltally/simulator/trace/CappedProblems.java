package telltally.simulator.trace;

import telltally.simulator.document.Place;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;

/**
 * The first problems of a recording, and how many more there are: one wrong setting in the program that wrote a file
 * spoils every row of it, and a million lines help nobody.
 */
final class CappedProblems {
    static final int SHOWN = 20;

    private final Problems shown;
    private Place firstLeftOut = Place.START;
    private long leftOut;

    CappedProblems(String file) {
        this.shown = new Problems(file);
    }

    void add(String text) {
        shown.add(text);
    }

    void add(Place place, String field, String text) {
        if (shown.count() < SHOWN) {
            shown.add(place, field, text);
        } else {
            firstLeftOut = leftOut == 0 ? place : firstLeftOut;
            leftOut++;
        }
    }

    boolean any() {
        return shown.any();
    }

    void throwIfAny() throws ProblemException {
        if (leftOut > 0) {
            shown.add(firstLeftOut, "", "... and " + leftOut + " more " + (leftOut == 1 ? "problem" : "problems"));
            leftOut = 0;
        }
        shown.throwIfAny();
    }
}
