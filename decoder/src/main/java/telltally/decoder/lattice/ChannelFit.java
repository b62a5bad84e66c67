package telltally.decoder.lattice;

import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;

/** The channel that explains best how the flashes of one path were seen: weighted least squares, then two widths. */
final class ChannelFit {
    private static final double[] JITTERS = {0.01, 0.02, 0.035, 0.055, 0.08, 0.11, 0.15};
    private static final double[] BLURS = {0.004, 0.012, 0.03, 0.055, 0.09};
    private static final double[] JITTER_PRIOR = prior(JITTERS, 0.04);
    private static final double[] BLUR_PRIOR = prior(BLURS, 0.02);
    private static final double SCALE_SPREAD = 0.2;
    private static final double BIAS_SPREAD = 0.025;
    /** Rates begin as if one flash in so many had gone wrong in recordings seen before. */
    private static final double BEFORE = 60;

    private static final double WRONG_BEFORE = 0.15;

    private final double[] seen;
    private final double[] sent;
    private final double[] squares;
    private final double[] sign;
    private int count;
    private static final int KINDS = 24;
    private final double[] kindSquares = new double[KINDS];
    private final double[] kindErrors = new double[KINDS];
    private final int[] kindCount = new int[KINDS];
    private int kinds;
    private int missed;
    private int ghosts;
    private int flashCount;

    private ChannelFit(int room) {
        seen = new double[room];
        sent = new double[room];
        squares = new double[room];
        sign = new double[room];
    }

    /** How much less usual each width is than the most usual one, as a logarithm. */
    private static double[] prior(double[] widths, double usual) {
        double[] prior = new double[widths.length];
        for (int i = 0; i < prior.length; i++) {
            double off = StrictMath.log(widths[i] / usual) / 1.2;
            prior[i] = -off * off / 2;
        }
        return prior;
    }

    static Channel fitted(Pass pass, Automaton automaton, Flashes flashes, Channel before) {
        int[] path = pass.bestPath();
        ChannelFit fit = new ChannelFit(2 * path.length + 2);
        fit.collect(pass, path, automaton, flashes);
        Channel clocked = fit.clocked(before);
        return fit.widened(clocked);
    }

    private void collect(Pass pass, int[] path, Automaton automaton, Flashes flashes) {
        Lattice lattice = pass.lattice();
        for (int arc : path) {
            int edge = lattice.arcTag(arc);
            int from = pass.flashOf(lattice.arcFrom(arc));
            int to = pass.flashOf(lattice.arcTo(arc));
            missed += automaton.edgeMissed[edge];
            ghosts += to - from - 1;
            Gap gap = automaton.gaps[automaton.edgeGap[edge]];
            if (gap.kind() == GapKind.FIXED) {
                add(flashes.start[to] - flashes.end[from], gap.seconds(), gap.squares(), -1);
            }
            if (to < flashes.count) {
                flashCount++;
                Light light = automaton.light(automaton.edgeTo[edge]);
                boolean cut = (to == 0 && flashes.cutAtStart) || (to == flashes.count - 1 && flashes.cutAtEnd);
                if (!light.broad() && !cut) {
                    add(flashes.lit(to), light.seconds(), light.seconds() * light.seconds(), 1);
                }
            }
        }
    }

    private void add(double seenSeconds, double sentSeconds, double sentSquares, double biasSign) {
        seen[count] = seenSeconds;
        sent[count] = sentSeconds;
        squares[count] = sentSquares;
        sign[count++] = biasSign;
    }

    private Channel clocked(Channel before) {
        double aa = 1 / (SCALE_SPREAD * SCALE_SPREAD);
        double ab = 0;
        double bb = 1 / (BIAS_SPREAD * BIAS_SPREAD);
        double ay = aa;
        double by = 0;
        for (int i = 0; i < count; i++) {
            double deviation = before.deviation(squares[i]);
            double z = (seen[i] - sent[i] * before.scale() - sign[i] * before.biasSeconds()) / deviation;
            // Outliers pull with the weight that the law with wide tails gives them.
            double weight = 1 / (deviation * deviation) / (1 + z * z / 9);
            aa += weight * sent[i] * sent[i];
            ab += weight * sent[i] * sign[i];
            bb += weight;
            ay += weight * sent[i] * seen[i];
            by += weight * sign[i] * seen[i];
        }
        double determinant = aa * bb - ab * ab;
        double scale = (ay * bb - by * ab) / determinant;
        double bias = (by * aa - ay * ab) / determinant;
        return new Channel(Math.max(0.4, Math.min(2.5, scale)), bias, before.jitter(), before.blurSeconds(), 0, 0);
    }

    private Channel widened(Channel clocked) {
        gather(clocked);
        double bestScore = Double.NEGATIVE_INFINITY;
        double bestJitter = 0;
        double bestBlur = 0;
        for (int i = 0; i < JITTERS.length; i++) {
            double relative = JITTERS[i] * clocked.scale();
            for (int k = 0; k < BLURS.length; k++) {
                double score = JITTER_PRIOR[i] + BLUR_PRIOR[k] + score(relative * relative, BLURS[k] * BLURS[k]);
                if (score > bestScore) {
                    bestScore = score;
                    bestJitter = JITTERS[i];
                    bestBlur = BLURS[k];
                }
            }
        }
        double rate = BEFORE + flashCount;
        return new Channel(
                clocked.scale(),
                clocked.biasSeconds(),
                bestJitter,
                bestBlur,
                (WRONG_BEFORE + missed) / rate,
                (WRONG_BEFORE + ghosts) / rate);
    }

    /** Logarithm of the likelihood of all errors; those of lengths that scatter alike are added up before. */
    private double score(double varianceASquare, double variance) {
        double score = 0;
        for (int i = 0; i < kinds; i++) {
            double each = varianceASquare * kindSquares[i] + variance;
            score -= (kindErrors[i] / each + kindCount[i] * TabledLog.of(each)) / 2;
        }
        return score;
    }

    private void gather(Channel clocked) {
        for (int i = 0; i < count; i++) {
            int kind = 0;
            while (kind < kinds && kindSquares[kind] != squares[i]) {
                kind++;
            }
            if (kind == KINDS) {
                continue;
            }
            if (kind == kinds) {
                kindSquares[kinds++] = squares[i];
            }
            double error = seen[i] - sent[i] * clocked.scale() - sign[i] * clocked.biasSeconds();
            double most = 4 * clocked.deviation(squares[i]);
            kindErrors[kind] += Math.min(error * error, most * most);
            kindCount[kind]++;
        }
    }
}
