package telltally.simulator.channel;

import java.util.Collections;
import java.util.List;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * Impairments applied in order, each with a stream of its own. A stream is named by the kind, not by the place in the
 * chain, so that putting another kind in between moves no draw of the others; a second of the same kind draws from
 * {@code kind/2}, a third from {@code kind/3}.
 */
public record ImpairmentChain(List<Impairment> impairments) {
    public ImpairmentChain {
        impairments = List.copyOf(impairments);
    }

    public static ImpairmentChain of(Impairment... impairments) {
        return new ImpairmentChain(List.of(impairments));
    }

    /** @param chance what the members' streams hang below; nothing is drawn from it */
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        PulseTrain spoiled = train;
        for (int i = 0; i < impairments.size(); i++) {
            spoiled = impairments.get(i).applyTo(spoiled, chance.stream(streamName(i)));
        }
        return spoiled;
    }

    private String streamName(int index) {
        return streamName(impairments.stream().map(Impairment::kind).toList(), index);
    }

    /** The name of the stream that belongs to one of several kinds in a row. */
    static String streamName(List<String> kinds, int index) {
        String kind = kinds.get(index);
        int nth = 1 + Collections.frequency(kinds.subList(0, index), kind);
        return nth == 1 ? kind : kind + "/" + nth;
    }
}
