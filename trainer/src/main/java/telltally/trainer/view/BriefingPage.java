package telltally.trainer.view;

import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.BriefingScreen;
import telltally.trainer.text.Texts;

/** What is told before a lesson. */
final class BriefingPage extends Page {
    private final PushButton start;

    BriefingPage(BriefingScreen screen, Texts texts) {
        super(screen.title());
        VBox panel = new VBox();
        panel.getStyleClass().add("panel");
        screen.paragraphs().forEach(text -> panel.getChildren().add(Text.of(text, "reading")));
        panel.getChildren().add(Text.of(screen.signal(), "quiet"));
        VBox task = new VBox(Text.of(texts.of("briefing.your-task"), "small-label"), Text.of(screen.task(), "reading"));
        task.getStyleClass().addAll("panel", "task");
        VBox cautions = new VBox(Text.of(texts.of("briefing.cautions"), "small-label"));
        cautions.getStyleClass().addAll("panel", "cautions");
        screen.cautions().forEach(text -> cautions.getChildren().add(Text.of(text, "caution")));
        DisplayChoice shownBy = new DisplayChoice(screen.shownByProperty(), screen.choices());
        VBox told = new VBox(task, panel);
        told.getStyleClass().add("told");
        VBox.setVgrow(panel, Priority.ALWAYS);
        VBox choice = new VBox(Text.of(texts.of("briefing.shown-by"), "small-label"), shownBy);
        choice.getStyleClass().add("panel");
        VBox side = new VBox(cautions, choice);
        side.getStyleClass().addAll("told", "briefing-side");
        VBox.setVgrow(cautions, Priority.ALWAYS);
        add(new SideOrBelow(told, side));
        start = new PushButton(texts.of("briefing.start"), screen::start).styled("primary");
        addFoot(start, new PushButton(texts.of("briefing.back"), screen::back));
        addHint(texts.of("briefing.hint"));
    }

    @Override
    void focusFirst() {
        start.requestFocus();
    }
}
