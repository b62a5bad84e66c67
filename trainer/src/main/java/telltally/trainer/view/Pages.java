package telltally.trainer.view;

import telltally.trainer.screen.AdviceScreen;
import telltally.trainer.screen.BriefingScreen;
import telltally.trainer.screen.DrillMarkedScreen;
import telltally.trainer.screen.DrillScreen;
import telltally.trainer.screen.ForgetScreen;
import telltally.trainer.screen.HomeScreen;
import telltally.trainer.screen.LearnersScreen;
import telltally.trainer.screen.LessonsScreen;
import telltally.trainer.screen.MarkingScreen;
import telltally.trainer.screen.NoticeScreen;
import telltally.trainer.screen.PlayScreen;
import telltally.trainer.screen.ProgressScreen;
import telltally.trainer.screen.ReplayScreen;
import telltally.trainer.screen.Screen;
import telltally.trainer.screen.SettingsScreen;
import telltally.trainer.screen.SkillScreen;
import telltally.trainer.text.Texts;

/** Which page shows which screen. */
final class Pages {
    private Pages() {}

    static Page of(Screen screen, Texts texts) {
        if (screen instanceof NoticeScreen notice) {
            return new NoticePage(notice, texts);
        }
        if (screen instanceof LearnersScreen learners) {
            return new LearnersPage(learners, texts);
        }
        if (screen instanceof ForgetScreen forget) {
            return new ForgetPage(forget, texts);
        }
        if (screen instanceof HomeScreen home) {
            return new HomePage(home, texts);
        }
        if (screen instanceof SkillScreen skill) {
            return new SkillPage(skill, texts);
        }
        if (screen instanceof ProgressScreen progress) {
            return new ProgressPage(progress, texts);
        }
        if (screen instanceof LessonsScreen lessons) {
            return new LessonsPage(lessons, texts);
        }
        if (screen instanceof BriefingScreen briefing) {
            return new BriefingPage(briefing, texts);
        }
        if (screen instanceof PlayScreen play) {
            return new PlayPage(play, texts);
        }
        if (screen instanceof MarkingScreen marking) {
            return new MarkingPage(marking, texts);
        }
        if (screen instanceof SettingsScreen settings) {
            return new SettingsPage(settings, texts);
        }
        if (screen instanceof AdviceScreen advice) {
            return new AdvicePage(advice, texts);
        }
        if (screen instanceof DrillScreen drill) {
            return new DrillPage(drill, texts);
        }
        if (screen instanceof DrillMarkedScreen marked) {
            return new DrillMarkedPage(marked, texts);
        }
        return new ReplayPage((ReplayScreen) screen, texts);
    }
}
