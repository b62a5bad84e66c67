package telltally.trainer.logbook;

/**
 * With what an answer was given, enough to play the same again.
 *
 * @param seed of everything random
 * @param generator version of the simulator's generator
 * @param program version of Telltally
 * @param format id of the flash format
 * @param display how it was shown, in the words of scenario files
 */
public record Circumstances(long seed, int generator, String program, String format, String display) {}
