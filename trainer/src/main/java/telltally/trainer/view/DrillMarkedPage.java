package telltally.trainer.view;

import javafx.scene.layout.VBox;
import telltally.trainer.screen.DrillMarkedScreen;
import telltally.trainer.text.Texts;

/** A timeline of what was sent with the answer under it, and what there is to learn from it. */
final class DrillMarkedPage extends Page {
    private final DrillMarkedScreen screen;
    private final PushButton next;

    DrillMarkedPage(DrillMarkedScreen screen, Texts texts) {
        super(screen.title());
        this.screen = screen;
        add(Text.of(screen.headline(), "headline", screen.right() ? "all-right" : "some-wrong"));
        screen.remarks().forEach(remark -> add(Text.of(remark, "remark")));
        add(new TimelinePaper(screen.timeline(), texts.of("drill.timeline"), screen::replay, texts));
        screen.tapped().forEach(said -> add(Text.of(said, "reading")));
        if (!screen.mistakes().isEmpty()) {
            add(mistakes());
        }
        if (!screen.reason().isEmpty()) {
            add(Text.of(screen.reason(), "quiet"));
        }
        next = new PushButton(texts.of("drill.next"), screen::next).styled("primary");
        addFoot(
                next,
                new PushButton(texts.of("drill.replay-all"), screen::replayAll),
                new PushButton(texts.of("drill.same-again"), screen::again),
                new PushButton(texts.of("drill.leave"), screen::done));
        addHint(texts.of("drill.hint-marked"));
    }

    @Override
    void focusFirst() {
        next.requestFocus();
    }

    private VBox mistakes() {
        VBox panel = new VBox();
        panel.getStyleClass().addAll("panel", "cautions");
        screen.mistakes().forEach(mistake -> {
            panel.getChildren().add(Text.of(mistake.name(), "section"));
            mistake.sentences().forEach(sentence -> panel.getChildren().add(Text.of(sentence, "reading")));
        });
        screen.rules().forEach(rule -> panel.getChildren().add(Text.of(rule, "quiet")));
        return panel;
    }
}
