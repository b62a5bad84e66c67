package telltally.decoder.lattice;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * Lattices that are used again, since most of what a short recording costs would be clearing memory for new ones. What
 * is never given back is lost to the stock and nothing more. Not for sharing between threads.
 */
final class LatticeStock {
    private static final int MOST_KEPT = 24;
    /** Lattices of very long recordings are let go. */
    private static final int MOST_ARCS = 1 << 16;

    private final Deque<Lattice> kept = new ArrayDeque<>();

    Lattice take() {
        Lattice lattice = kept.pollLast();
        return lattice == null ? new Lattice() : lattice;
    }

    /** Nobody may look at the pass any more. */
    void giveBack(@Nullable Pass pass) {
        if (pass != null && kept.size() < MOST_KEPT && pass.lattice().room() <= MOST_ARCS) {
            kept.addLast(pass.lattice());
        }
    }
}
