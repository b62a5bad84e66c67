package telltally.decoder.score;

/** A floor that was lowered by hand, and why. */
public record LoweredFloor(String floor, double from, double to, String why) {}
