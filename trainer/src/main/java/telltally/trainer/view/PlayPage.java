package telltally.trainer.view;

import javafx.application.Platform;
import javafx.beans.Observable;
import javafx.scene.control.Label;
import telltally.trainer.screen.PlayScreen;
import telltally.trainer.text.Texts;

/** The lamp on the left, the work sheet on the right. */
final class PlayPage extends Page {
    private final SheetPaper paper;

    PlayPage(PlayScreen screen, Texts texts) {
        super(screen.title());
        PushButton mark = new PushButton(texts.of("play.mark"), screen::mark).styled("primary");
        paper = new SheetPaper(screen.sheet(), texts, mark::requestFocus);
        stayInSight(new SignalPlate(screen.player(), screen.captionProperty(), texts));
        screen.sheet().columns().forEach(column -> {
            column.codes().addListener((Observable change) -> revealLater(paper.active()));
            column.typingProperty().addListener(change -> revealLater(paper.active()));
        });
        Label remark = Text.of("", "remark");
        remark.textProperty().bind(screen.remarkProperty());
        remark.visibleProperty().bind(remark.textProperty().isNotEmpty());
        remark.managedProperty().bind(remark.visibleProperty());
        add(Text.of(screen.task(), "reading"), remark, paper);
        PushButton again = new PushButton(texts.of("play.again"), () -> {
            screen.playAgain();
            // Later, because a button that was pressed by its letter takes the keyboard after it has acted.
            Platform.runLater(paper::focusActive);
        });
        addFoot(mark, again, new PushButton(texts.of("play.back"), screen::back));
        addHint(texts.of("play.hint"));
    }

    @Override
    void focusFirst() {
        paper.focusActive();
    }
}
