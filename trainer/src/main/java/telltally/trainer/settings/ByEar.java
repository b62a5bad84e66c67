package telltally.trainer.settings;

/** Whether the path leads over counting by ear, which not everybody hears and not every machine sounds. */
public enum ByEar {
    PRACTISED,
    LEFT_OUT
}
