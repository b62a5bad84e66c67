package telltally.trainer.drill;

import java.util.List;

/** What is said before the first flash. */
public final class Notices {
    /** Said once, before anything blinks. */
    public static final List<String> BEFORE_THE_FIRST_FLASH = List.of(
            "Flashing light can trigger seizures in people with photosensitive epilepsy.",
            "If that may concern you or somebody beside you, do not go on: the drill can show the flashes",
            "as a line of text that does not blink (telltally drill --text).");

    private Notices() {}
}
