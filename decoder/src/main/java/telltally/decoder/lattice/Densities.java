package telltally.decoder.lattice;

import java.util.Arrays;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;

/**
 * How well lengths that were seen fit the flashes and gaps of an automaton, through one channel at a time. Holds what
 * was worked out for the length looked at last. Not for sharing between threads.
 */
final class Densities {
    /** A bulb check, against steady light of any length. */
    private static final double BULB_CHECK_SECONDS = 100;

    private static final double BULB_CHECK = 7;
    private static final double ANY_LOG_RANGE = 13.8;

    final Automaton automaton;
    private Channel channel = Channel.firstGuess(1);
    private final double[] gapMean;
    private final double[] gapPerDeviation;
    /** A length from which on neither this gap nor any before it can be meant. */
    private final double[] gapReach;

    private final double[] lightMean;
    private final double[] lightDeviation;
    private final int broadTo;
    /** By gap: the density of the gap looked at last; 0 outside from and to. */
    final double[] gap;

    /** The gaps of a fixed length that reach the gap looked at last. */
    int gapFrom;

    int gapTo;
    /** By light: the density of the flash looked at last, and that it was seen. */
    final double[] light;

    private final double[] missed = new double[Automaton.MOST_MISSED + 1];
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
        lightMean = new double[automaton.lights.length];
        lightDeviation = new double[automaton.lights.length];
        light = new double[automaton.lights.length];
        edge = new double[automaton.edgeWeight.length];
    }

    /** Sees everything through this channel from now on. */
    void through(Channel seenThrough) {
        channel = seenThrough;
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
        for (int i = 0; i < lightMean.length; i++) {
            double seconds = automaton.lights[i].seconds();
            lightMean[i] = seconds * channel.scale() + channel.biasSeconds();
            lightDeviation[i] = channel.deviation(seconds * seconds);
        }
        missed[0] = 1;
        for (int i = 1; i < missed.length; i++) {
            missed[i] = missed[i - 1] * channel.missed();
        }
        for (int i = 0; i < edge.length; i++) {
            edge[i] = automaton.edgeWeight[i] * missed[automaton.edgeMissed[i]];
        }
        Arrays.fill(gap, 0);
        gapFrom = 0;
        gapTo = 0;
    }

    /** Looks at a flash. */
    void lookAtFlash(double seconds, boolean cut) {
        for (int i = 0; i < light.length; i++) {
            light[i] = (1 - channel.missed()) * flash(i, seconds, cut);
        }
    }

    /** The density of one light, given that it was seen. */
    double flash(int which, double seconds, boolean cut) {
        Light sent = automaton.lights[which];
        if (sent.broad()) {
            boolean fits = seconds <= sent.mostSeconds() && (cut || seconds >= sent.seconds());
            double share = sent.mostSeconds() < BULB_CHECK_SECONDS ? BULB_CHECK : 1;
            return fits ? 1 / (seconds * ANY_LOG_RANGE) * share : 0;
        }
        if (sent.seconds() == 0) {
            return 0;
        }
        double z = (seconds - lightMean[which]) / lightDeviation[which];
        return cut ? Noise.beyond(z) : Noise.density(z) / lightDeviation[which] + Pass.smear(seconds, lightMean[which]);
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
