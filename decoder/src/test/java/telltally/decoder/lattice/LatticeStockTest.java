package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;

class LatticeStockTest {
    private final LatticeStock stock = new LatticeStock();
    private final TwoDigitFormat small = new TwoDigitFormat();

    @Test
    void a_lattice_given_back_is_taken_again() {
        Pass pass = pass(stock.take());
        assertThat(stock.take()).isNotSameAs(pass.lattice());
        stock.giveBack(pass);
        assertThat(stock.take()).isSameAs(pass.lattice());
        assertThat(stock.take()).isNotSameAs(pass.lattice());
    }

    @Test
    void nothing_may_be_given_back() {
        stock.giveBack(null);
        assertThat(stock.take()).isNotNull();
    }

    @Test
    void two_dozen_are_kept_and_no_more() {
        List<Pass> passes = new ArrayList<>();
        for (int i = 0; i < 26; i++) {
            passes.add(pass(new Lattice()));
        }
        passes.forEach(stock::giveBack);
        Set<Lattice> taken = new HashSet<>();
        for (int i = 0; i < 26; i++) {
            taken.add(stock.take());
        }
        assertThat(passes.stream().filter(pass -> taken.contains(pass.lattice())))
                .hasSize(24);
    }

    @Test
    void those_that_very_long_recordings_made_large_are_let_go() {
        Pass large = pass(lattice(1 << 17));
        stock.giveBack(large);
        assertThat(stock.take()).isNotSameAs(large.lattice());
        Pass fair = pass(lattice(1 << 16));
        stock.giveBack(fair);
        assertThat(stock.take()).isSameAs(fair.lattice());
    }

    /** With room for so many arcs. */
    private static Lattice lattice(int room) {
        Lattice lattice = new Lattice();
        lattice.beginLayer();
        int from = lattice.source(0, 1);
        lattice.endLayer();
        lattice.beginLayer();
        int to = lattice.node(0);
        while (lattice.room() < room) {
            lattice.arc(from, to, 1, 0);
        }
        lattice.endLayer();
        return lattice;
    }

    private Pass pass(Lattice lattice) {
        Flashes flashes = Flashes.of(PulseTrain.of(false, 3, 1, 2), true, 0, 0, 10);
        return RowPass.run(small.sent("11"), flashes, Channel.firstGuess(1), lattice);
    }
}
