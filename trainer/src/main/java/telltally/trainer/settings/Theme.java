package telltally.trainer.settings;

/** Light text on dark ground, or dark text on light ground. */
public enum Theme {
    DARK,
    LIGHT
}
