package telltally.decoder.score;

/**
 * A floor that was lowered by hand, and why.
 *
 * @param decoder whose floor it was
 * @param floor as the file names it
 */
public record LoweredFloor(String decoder, String floor, double from, double to, String why) {}
