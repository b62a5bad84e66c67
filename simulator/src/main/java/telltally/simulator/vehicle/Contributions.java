package telltally.simulator.vehicle;

import java.util.Arrays;
import java.util.List;

/**
 * What each cylinder does, found by leaving it out: with all firing less without this one. In kilowatts at the same
 * speed this is the Morse test, in rpm at the same air the power balance.
 *
 * @param drops by cylinder, the first belongs to cylinder 1; a noisy reading may make one less than zero
 */
public record Contributions(List<Double> drops) {
    public Contributions {
        drops = List.copyOf(drops);
        if (drops.size() < 2) {
            throw new IllegalArgumentException("nothing to compare with " + drops.size() + " cylinders");
        }
    }

    /** @param without reading with cylinder 1, 2, ... left out */
    public static Contributions of(double allFiring, double... without) {
        return new Contributions(
                Arrays.stream(without).mapToObj(reading -> allFiring - reading).toList());
    }

    /** @param allFiring readings taken just before each of those without a cylinder */
    public static Contributions of(double[] allFiring, double[] without) {
        Double[] drops = new Double[without.length];
        Arrays.setAll(drops, i -> allFiring[i] - without[i]);
        return new Contributions(List.of(drops));
    }

    public double drop(int cylinder) {
        return drops.get(cylinder - 1);
    }

    public double sum() {
        return drops.stream().mapToDouble(Double::doubleValue).sum();
    }

    public double meanOfOthers(int cylinder) {
        return (sum() - drop(cylinder)) / (drops.size() - 1);
    }
}
