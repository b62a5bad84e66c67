package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.List;

/** The controller's memory of faults. It is emptied in two ways only, and both are named here. */
final class StoredCodes {
    private final List<String> codes = new ArrayList<>();

    /** Remembers a code; true where it was not there yet. */
    boolean store(String code) {
        return !codes.contains(code) && codes.add(code);
    }

    List<String> all() {
        return List.copyOf(codes);
    }

    /** The test was interrupted while codes were being sent. */
    void eraseByInterruption() {
        codes.clear();
    }

    /** The battery was taken off. */
    void eraseByBattery() {
        codes.clear();
    }
}
