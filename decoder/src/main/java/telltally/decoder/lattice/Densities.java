package telltally.decoder.lattice;

import java.util.Arrays;
import java.util.List;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;

/**
 * How well lengths that were seen fit the flashes and gaps of an automaton, through one channel at a time. Holds what
 * was worked out for the length looked at last. Not for sharing between threads.
 */
final class Densities {
    final Automaton automaton;
    private final double[] gapMean;
    private final double[] gapPerDeviation;
    /** A length from which on neither this gap nor any before it can be meant. */
    private final double[] gapReach;

    private final int broadTo;
    /** By gap: the density of the gap looked at last; 0 outside from and to. */
    final double[] gap;

    /** The gaps of a fixed length that reach the gap looked at last. */
    int gapFrom;

    int gapTo;
    final LightDensities lights;
    /** By edge: its weight, and that its flashes in between were not seen. */
    final double[] edge;

    Densities(Automaton automaton) {
        this.automaton = automaton;
        int gaps = automaton.gaps.length;
        gapMean = new double[gaps];
        gapPerDeviation = new double[gaps];
        gapReach = new double[automaton.fixedGaps];
        gap = new double[gaps];
        int broad = automaton.fixedGaps;
        while (broad < gaps && automaton.gaps[broad].kind() == GapKind.BROAD) {
            broad++;
        }
        broadTo = broad;
        lights = new LightDensities(List.of(automaton.lights));
        edge = new double[automaton.edgeWeight.length];
    }

    /** Sees everything through this channel from now on. */
    void through(Channel channel) {
        double reach = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < gapMean.length; i++) {
            Gap each = automaton.gaps[i];
            gapMean[i] = each.seconds() * channel.scale() - channel.biasSeconds();
            gapPerDeviation[i] = 1 / channel.deviation(each.squares());
            if (i < gapReach.length) {
                reach = Math.max(
                        reach, Math.max(gapMean[i] + Noise.REACH / gapPerDeviation[i], Pass.MOST_SMEARED * gapMean[i]));
                gapReach[i] = reach;
            }
        }
        lights.through(channel);
        double[] missed = channel.missedInARow(Automaton.MOST_MISSED);
        for (int i = 0; i < edge.length; i++) {
            edge[i] = automaton.edgeWeight[i] * missed[automaton.edgeMissed[i]];
        }
        Arrays.fill(gap, 0);
        gapFrom = 0;
        gapTo = 0;
    }

    /** Looks at a gap between flashes. */
    void lookAtGap(double seconds) {
        for (int i = gapFrom; i < gapTo; i++) {
            gap[i] = 0;
        }
        int at = firstInReach(seconds);
        gapFrom = at;
        for (; at < gapReach.length; at++) {
            double z = (seconds - gapMean[at]) * gapPerDeviation[at];
            if (z <= -Noise.REACH && seconds <= Pass.LEAST_SMEARED * gapMean[at]) {
                // A longer gap could only reach so far down by scattering more widely: none is read that way.
                break;
            }
            gap[at] = Noise.density(z) * gapPerDeviation[at] + Pass.smear(seconds, gapMean[at]);
        }
        gapTo = at;
        for (int i = gapReach.length; i < broadTo; i++) {
            Gap broad = automaton.gaps[i];
            boolean fits = seconds >= broad.seconds() && seconds <= broad.mostSeconds();
            gap[i] = fits ? 1 / (seconds * broad.logRange()) : 0;
        }
    }

    private int firstInReach(double seconds) {
        int from = 0;
        int to = gapReach.length;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (seconds < gapReach[middle]) {
                to = middle;
            } else {
                from = middle + 1;
            }
        }
        return from;
    }

    /** The probability that a gap is longer than this. */
    double gapBeyond(int which, double seconds) {
        return Noise.beyond((seconds - gapMean[which]) * gapPerDeviation[which]);
    }
}
