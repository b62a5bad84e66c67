package telltally.trainer.drill;

/** How drills of one skill are made. */
@FunctionalInterface
interface Recipe {
    Drill make(Order order);
}
