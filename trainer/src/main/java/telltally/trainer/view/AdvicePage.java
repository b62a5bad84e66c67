package telltally.trainer.view;

import javafx.scene.layout.VBox;
import telltally.trainer.screen.AdviceScreen;
import telltally.trainer.text.Texts;

/** Advice before the first drill of a skill, and an example with its answer. */
final class AdvicePage extends Page {
    private final PushButton start;

    AdvicePage(AdviceScreen screen, Texts texts) {
        super(screen.title());
        VBox advice = new VBox(Text.of(texts.of("home.about"), "small-label"), Text.of(screen.advice(), "reading"));
        advice.getStyleClass().addAll("panel", "task");
        screen.notes().ifPresent(notes -> advice.getChildren().add(Text.of(notes, "quiet")));
        add(
                advice,
                Text.of(screen.task(), "task-line"),
                new TimelinePaper(screen.example(), texts.of("drill.example"), screen::replay, texts));
        screen.answer().ifPresent(answer -> add(Text.of(answer, "reading")));
        start = new PushButton(texts.of("drill.start"), screen::start).styled("primary");
        addFoot(start, new PushButton(texts.of("drill.leave"), screen::back));
        addHint(texts.of("drill.hint-advice"));
    }

    @Override
    void focusFirst() {
        start.requestFocus();
    }
}
