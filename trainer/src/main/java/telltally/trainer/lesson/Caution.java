package telltally.trainer.lesson;

import java.util.List;
import telltally.trainer.text.Texts;

/** The cautions of the trade, as they are shown beside every procedure. Common practice, no source. */
public enum Caution {
    EXHAUST("caution.exhaust"),
    TERMINALS("caution.terminals"),
    WIRING("caution.wiring"),
    MOVING_PARTS("caution.moving-parts"),
    /** Who decides; said with every lesson. */
    NO_MANUAL("caution.no-manual");

    public static final List<Caution> ALWAYS = List.of(NO_MANUAL);
    public static final List<Caution> ENGINE_OFF = List.of(TERMINALS, WIRING, MOVING_PARTS, NO_MANUAL);
    public static final List<Caution> ENGINE_RUNNING = List.of(EXHAUST, TERMINALS, WIRING, MOVING_PARTS, NO_MANUAL);

    private final String key;

    Caution(String key) {
        this.key = key;
    }

    public String sentence(Texts texts) {
        return texts.of(key);
    }
}
