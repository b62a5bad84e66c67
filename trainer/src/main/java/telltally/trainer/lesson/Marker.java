package telltally.trainer.lesson;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.SentGroup;
import telltally.simulator.recording.Truth;
import telltally.trainer.text.Texts;

/** Flashes that were sent and are no code. */
public enum Marker {
    /** The single flash between present and stored codes. */
    SEPARATOR("marker.separator", "marker.separator-meaning"),
    /** The opening of the running test. */
    CYLINDERS("marker.cylinders", "marker.cylinders-meaning"),
    /** Asks for a short press of the throttle. */
    PROMPT("marker.prompt", "marker.prompt-meaning"),
    /** What a list opens and ends with. */
    FRAMING("marker.framing", "marker.framing-meaning");

    private final String titleKey;
    private final String meaningKey;

    Marker(String titleKey, String meaningKey) {
        this.titleKey = titleKey;
        this.meaningKey = meaningKey;
    }

    /** With its article. */
    public String title(Texts texts) {
        return texts.of(titleKey);
    }

    /** In words that complete "it is". */
    public String meaning(Texts texts) {
        return texts.of(meaningKey);
    }

    /** What a group is if it is no code; empty for codes, balance results and light that is no flash. */
    public static Optional<Marker> of(FlashFormat format, SentGroup group) {
        return switch (group.kind()) {
            case SEPARATOR -> Optional.of(format.framingCode().isPresent() ? FRAMING : SEPARATOR);
            case CYLINDERS -> Optional.of(CYLINDERS);
            case PROMPT -> Optional.of(PROMPT);
            default -> Optional.empty();
        };
    }

    /** The marker that somebody wrote down as if it were a code, with or without a zero for the digit that never came. */
    static Optional<Marker> writtenAs(String entry, CodeSigns signs, Truth truth) {
        return signs.refuses(entry)
                ? truth.groups().stream()
                        .filter(group -> List.of(group.digits(), group.digits() + "0", "0" + group.digits())
                                .contains(entry))
                        .flatMap(group -> of(signs.format(), group).stream())
                        .findFirst()
                : Optional.empty();
    }
}
