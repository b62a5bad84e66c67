package telltally.trainer.view;

import java.util.List;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import telltally.simulator.scenario.Display;
import telltally.trainer.screen.BriefingScreen;
import telltally.trainer.screen.NoticeScreen.Choice;

/** What is told before a lesson. */
final class BriefingPage extends Page {
    private final PushButton start;

    BriefingPage(BriefingScreen screen) {
        super(screen.title());
        VBox panel = new VBox();
        panel.getStyleClass().add("panel");
        screen.paragraphs().forEach(text -> panel.getChildren().add(Text.of(text, "reading")));
        panel.getChildren().add(Text.of("Signal: " + screen.signal() + ".", "quiet"));
        VBox task = new VBox(Text.of("Your task", "small-label"), Text.of(screen.task(), "reading"));
        task.getStyleClass().addAll("panel", "task");
        VBox cautions = new VBox(Text.of("Cautions", "small-label"));
        cautions.getStyleClass().addAll("panel", "cautions");
        screen.cautions().forEach(text -> cautions.getChildren().add(Text.of(text, "caution")));
        DisplayChoice shownBy = new DisplayChoice(
                screen.shownByProperty(),
                List.of(
                        new Choice(Display.LAMP, "Lamp", ""),
                        new Choice(Display.SOUNDER, "Sounder", ""),
                        new Choice(Display.LAMP_AND_SOUNDER, "Lamp and sounder", "")));
        VBox told = new VBox(task, panel);
        told.getStyleClass().add("told");
        VBox.setVgrow(panel, Priority.ALWAYS);
        VBox choice = new VBox(Text.of("Shown by", "small-label"), shownBy);
        choice.getStyleClass().add("panel");
        VBox side = new VBox(cautions, choice);
        side.getStyleClass().addAll("told", "briefing-side");
        VBox.setVgrow(cautions, Priority.ALWAYS);
        add(new SideOrBelow(told, side));
        start = new PushButton("_Start", screen::start).styled("primary");
        addFoot(start, new PushButton("_Back", screen::back));
        addHint("Enter starts, Escape goes back.");
    }

    @Override
    void focusFirst() {
        start.requestFocus();
    }
}
