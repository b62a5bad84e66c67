package telltally.trainer.trial;

import java.util.List;

/**
 * What a trial came to.
 *
 * @param learners how many took part
 * @param outOfReach how many more were drawn whom even endless practice would not bring to 0.9 in every skill
 */
public record TrialOutcome(int learners, int outOfReach, double phi, List<OrderOutcome> orders) {
    public TrialOutcome {
        orders = List.copyOf(orders);
    }

    /** @throws IllegalArgumentException if no order has this id */
    public OrderOutcome order(String id) {
        return orders.stream()
                .filter(order -> order.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no order of practice is called " + id));
    }
}
