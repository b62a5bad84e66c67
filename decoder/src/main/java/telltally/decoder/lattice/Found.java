package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.format.GroupKind;

/** A group of flashes as one recording shows it, before repeats are compared. */
final class Found {
    final GroupKind kind;
    final int firstFlash;
    int lastFlash;
    /** The recording began within this group. */
    final boolean begunBefore;
    /** The recording ended within this group. */
    boolean unfinished;
    /** The gap before it says that the list begins again. */
    final boolean repeat;

    final int firstPlace;
    /** A separator of which nothing was seen stands before this group. */
    boolean afterUnseenSeparator;
    /** The first flash of the group after it; the count of flashes where there is none. */
    int nextFlash;
    /** As the best path reads it, with the place of each sign. */
    final List<String> read = new ArrayList<>();

    final List<Integer> places = new ArrayList<>();
    /** What each of those signs may have been. */
    final List<Guess> signs = new ArrayList<>();

    Found(GroupKind kind, int firstFlash, int firstPlace, boolean begunBefore, boolean repeat) {
        this.kind = kind;
        this.firstFlash = firstFlash;
        this.lastFlash = firstFlash;
        this.firstPlace = firstPlace;
        this.begunBefore = begunBefore;
        this.repeat = repeat;
    }

    String digits() {
        StringBuilder digits = new StringBuilder();
        signs.forEach(sign -> digits.append(sign.best()));
        return digits.toString();
    }
}
