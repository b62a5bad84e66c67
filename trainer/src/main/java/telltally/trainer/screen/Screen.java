package telltally.trainer.screen;

/** What the window shows at a time. */
public sealed interface Screen
        permits NoticeScreen,
                LearnersScreen,
                ForgetScreen,
                HomeScreen,
                SkillScreen,
                ProgressScreen,
                LessonsScreen,
                BriefingScreen,
                PlayScreen,
                MarkingScreen,
                ReplayScreen,
                AdviceScreen,
                DrillScreen,
                DrillMarkedScreen,
                SettingsScreen {
    /** What stands at the head of the window. */
    String title();

    /** Where Escape leads. */
    void back();

    /** A frame is about to be drawn, at an instant of the trainer's clock. */
    default void advanceTo(long nowNanos) {}

    /** Another screen takes its place. */
    default void leave() {}
}
