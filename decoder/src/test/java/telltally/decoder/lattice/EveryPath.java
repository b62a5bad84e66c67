package telltally.decoder.lattice;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hipparchus.special.Erf;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;
import telltally.decoder.lattice.Automaton.Step;

/**
 * What an automaton and a channel say of a recording, summed over every way of seeing it: step by step, with densities
 * worked out by formula, without edges, tables, beams or scaling.
 */
final class EveryPath {
    private static final int MOST_GHOSTS = 3;
    /** The ratios of the longest to the shortest flash that there may be, as a logarithm. */
    private static final double ANY_FLASH = 13.8;

    /** Keeps sums over many flashes within the range of numbers. */
    private static final double PER_FLASH = 0.02;

    private final Automaton automaton;
    private final Flashes flashes;
    private final Channel channel;
    /** By node and flash: the sum over everything that may follow once the node was seen as the flash. */
    private final double[][] after;

    private final Map<Integer, List<Step>> stepsFrom;

    EveryPath(Automaton automaton, Flashes flashes, Channel channel) {
        this.automaton = automaton;
        this.flashes = flashes;
        this.channel = channel;
        stepsFrom = Arrays.stream(automaton.steps).collect(Collectors.groupingBy(Step::from));
        after = new double[flashes.count][automaton.nodes];
        for (int flash = flashes.count - 1; flash >= 0; flash--) {
            for (int node = Automaton.END + 1; node < automaton.nodes; node++) {
                for (Step step : stepsFrom.get(node)) {
                    after[flash][node] += step.weight() * over(step.gap(), step.to(), flash, 0);
                }
            }
        }
    }

    /** Natural logarithm of the density of the recording. */
    double logTotal() {
        return Math.log(total()) - flashes.count * Math.log(PER_FLASH);
    }

    private double total() {
        double total = 0;
        for (Step first : stepsFrom.get(Automaton.START)) {
            total += first.weight() * over(first.gap(), first.to(), -1, 0);
        }
        return total;
    }

    /** From a flash over a gap to a node that is seen as one of the next flashes, or not seen at all. */
    private double over(Gap gap, int to, int before, int missed) {
        double total = 0;
        for (int flash = before + 1; flash <= flashes.count && flash <= before + 1 + MOST_GHOSTS; flash++) {
            if (to == Automaton.END && flash == flashes.count) {
                total += gapDensity(gap, before, flash) * ghosts(before, flash);
            } else if (to != Automaton.END && flash < flashes.count) {
                boolean cutGap = gap.kind() == GapKind.LEAD_CUT && flash == 0 && flashes.cutAtStart;
                double dark = cutGap ? 1 : gapDensity(gap, before, flash);
                total += dark
                        * ghosts(before, flash)
                        * (PER_FLASH * (1 - channel.missed()))
                        * lit(automaton.light(to), gap, flash)
                        * after[flash][to];
            }
        }
        boolean missable = to != Automaton.END && !automaton.light(to).broad();
        if (missable && missed < Automaton.MOST_MISSED && gap.kind() != GapKind.LEAD_CUT) {
            for (Step next : stepsFrom.get(to)) {
                if (next.gap().kind() != GapKind.TAIL_CUT) {
                    Gap joined = joined(gap, automaton.light(to).seconds(), next.gap());
                    total += channel.missed() * next.weight() * over(joined, next.to(), before, missed + 1);
                }
            }
        }
        return total;
    }

    /** Fixed gaps add up with the flash between them; beside a gap of any length nothing can be told of the rest. */
    static Gap joined(Gap before, double light, Gap after) {
        if (before.kind() == GapKind.FIXED && after.kind() == GapKind.FIXED) {
            return new Gap(
                    GapKind.FIXED,
                    before.seconds() + light + after.seconds(),
                    before.squares() + light * light + after.squares(),
                    0,
                    0);
        }
        return before.kind() == GapKind.FIXED || after.kind() == GapKind.TAIL ? after : before;
    }

    private double lit(Light light, Gap gap, int flash) {
        double seen = flashes.lit(flash);
        boolean cutEnd = flash == flashes.count - 1 && flashes.cutAtEnd;
        boolean cutStart = flash == 0 && flashes.cutAtStart;
        boolean cut = cutEnd || (cutStart && gap.kind() == GapKind.LEAD_CUT);
        if (light.broad()) {
            boolean fits = seen <= light.mostSeconds() && (cut || seen >= light.seconds());
            double usual = light.mostSeconds() < 100 ? 7 : 1;
            return fits ? usual / (seen * ANY_FLASH) : 0;
        }
        double mean = light.seconds() * channel.scale() + channel.biasSeconds();
        double squares = light.seconds() * light.seconds();
        if (cut) {
            return beyond(seen, mean, channel.deviation(squares));
        }
        double whole = cutStart && gap.kind() == GapKind.LEAD ? 1e-3 : 1;
        return whole * law(seen, mean, squares);
    }

    private double ghosts(int before, int next) {
        double shortest = Double.MAX_VALUE;
        for (Light light : automaton.lights) {
            if (!light.broad() && light.seconds() > 0) {
                shortest = Math.min(shortest, light.seconds());
            }
        }
        double most = 0.65 * shortest * channel.scale();
        double weight = 1;
        for (int flash = before + 1; flash < next; flash++) {
            double length = flashes.lit(flash);
            double from = flash == 0 ? 0 : flashes.end[flash - 1];
            double to = next == flashes.count ? flashes.end[flash] + flashes.tailSeconds : flashes.start[next];
            weight *= PER_FLASH * Math.max(0, channel.ghost() * 2 * (1 - length / most) / most / (to - from));
        }
        return weight;
    }

    private double gapDensity(Gap gap, int before, int next) {
        double from = before < 0 ? 0 : flashes.end[before];
        double to = next == flashes.count ? flashes.end[flashes.count - 1] + flashes.tailSeconds : flashes.start[next];
        double length = to - from;
        double mean = gap.seconds() * channel.scale() - channel.biasSeconds();
        boolean cutEnd = before == flashes.count - 1 && flashes.cutAtEnd;
        return switch (gap.kind()) {
            case FIXED -> law(length, mean, gap.squares());
            case LEAD -> length < 0.13 ? 0.03 : length < 1 ? 0.5 : 0.06;
            case TAIL -> (length < 1 ? 0.5 : 0.06) * (cutEnd ? 1e-3 : 1);
            case LEAD_CUT -> beyond(length, mean, channel.deviation(gap.squares()));
            case TAIL_CUT -> cutEnd ? 1 : beyond(length, mean, channel.deviation(gap.squares()));
            case BROAD ->
                length >= gap.seconds() && length <= gap.mostSeconds()
                        ? 1 / (length * Math.log(gap.mostSeconds() / gap.seconds()))
                        : 0;
        };
    }

    /** The probability of more than this; what lies beyond nine deviations is left out. */
    private static double beyond(double length, double mean, double deviation) {
        double z = Math.max(-9, Math.min(9, (length - mean) / deviation));
        return 0.99 * (tail(z) - tail(9)) + 0.01 * (tail(z / 3) - tail(3)) + (z <= -9 ? 0.01 * 2 * tail(3) : 0);
    }

    private static double tail(double z) {
        return Erf.erfc(z / Math.sqrt(2)) / 2;
    }

    private double law(double length, double mean, double squares) {
        double deviation = channel.deviation(squares);
        double z = (length - mean) / deviation;
        double near = Math.abs(z) < 9 ? mixed(z) / deviation : 0;
        boolean mishap = length > 0.67 * mean && length < 1.33 * mean;
        return near + (mishap ? 1e-3 / mean : 0);
    }

    private static double mixed(double z) {
        return 0.99 * normal(z) + 0.01 * normal(z / 3) / 3;
    }

    private static double normal(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }
}
