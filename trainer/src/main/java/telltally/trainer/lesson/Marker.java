package telltally.trainer.lesson;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.SentGroup;
import telltally.simulator.recording.Truth;

/** Flashes that were sent and are no code. */
public enum Marker {
    SEPARATOR("separator", "the single flash between present and stored codes"),
    CYLINDERS("cylinder flashes", "the opening of the running test, half the number of cylinders"),
    PROMPT("prompt", "the flash that asks for a short press of the throttle"),
    FRAMING("framing code", "what a list of this format opens and ends with");

    private final String title;
    private final String meaning;

    Marker(String title, String meaning) {
        this.title = title;
        this.meaning = meaning;
    }

    public String title() {
        return title;
    }

    /** In words that complete "it is". */
    public String meaning() {
        return meaning;
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

    static boolean isCode(SentGroup group) {
        return group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE;
    }
}
