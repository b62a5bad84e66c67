package telltally.simulator.vehicle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cylinders by number, and the order in which they fire. Cylinder 1 is the first of the list.
 *
 * @param byNumber 2 to 12 of them
 * @param firingOrder every number from 1 on, once
 */
public record Cylinders(List<Cylinder> byNumber, List<Integer> firingOrder) {
    public static final int FEWEST = 2;
    public static final int MOST = 12;

    public Cylinders {
        byNumber = List.copyOf(byNumber);
        firingOrder = List.copyOf(firingOrder);
        if (byNumber.size() < FEWEST || byNumber.size() > MOST) {
            throw new IllegalArgumentException(
                    "an engine has " + FEWEST + " to " + MOST + " cylinders, not " + byNumber.size());
        }
        List<Integer> sorted = firingOrder.stream().sorted().toList();
        if (!sorted.equals(numbers(byNumber.size()))) {
            throw new IllegalArgumentException("the firing order " + firingOrder + " does not name each of "
                    + byNumber.size() + " cylinders once");
        }
    }

    /** All sound, firing in this order. */
    public static Cylinders soundInOrder(Integer... firingOrder) {
        return new Cylinders(Collections.nCopies(firingOrder.length, Cylinder.SOUND), List.of(firingOrder));
    }

    /** All sound, in an order that is usual for their number; every order is as good for what is computed here. */
    public static Cylinders sound(int count) {
        return switch (count) {
            case 4 -> soundInOrder(1, 3, 4, 2);
            case 6 -> soundInOrder(1, 5, 3, 6, 2, 4);
            case 8 -> soundInOrder(1, 5, 4, 2, 6, 3, 7, 8);
            default -> new Cylinders(Collections.nCopies(count, Cylinder.SOUND), numbers(count));
        };
    }

    public Cylinders with(int number, Cylinder cylinder) {
        List<Cylinder> changed = new ArrayList<>(byNumber);
        changed.set(number - 1, cylinder);
        return new Cylinders(changed, firingOrder);
    }

    public int count() {
        return byNumber.size();
    }

    /** Of 720 degrees for one cycle of all cylinders. */
    public double firingIntervalDegrees() {
        return 720.0 / count();
    }

    public double firingIntervalRadians() {
        return 4 * Math.PI / count();
    }

    public double firingsPerSecond(double speedRpm) {
        return count() * speedRpm / 120;
    }

    public double strength(int number) {
        return byNumber.get(number - 1).strength();
    }

    private static List<Integer> numbers(int count) {
        return IntStream.rangeClosed(1, count).boxed().toList();
    }
}
