package telltally.trainer.view;

import javafx.scene.control.Label;
import telltally.trainer.screen.ForgetScreen;
import telltally.trainer.text.Texts;

/** The question before somebody is deleted; the harmless answer has the keyboard. */
final class ForgetPage extends Page {
    private final PushButton keep;

    ForgetPage(ForgetScreen screen, Texts texts) {
        super(screen.title());
        Label message = Text.of("", "remark");
        message.visibleProperty().bind(message.textProperty().isNotEmpty());
        message.setText(screen.messageProperty().get().orElse(""));
        screen.messageProperty().addListener((property, before, after) -> message.setText(after.orElse("")));
        add(Text.of(screen.question(), "reading", "warning"), message);
        keep = new PushButton(texts.of("learners.keep"), screen::back);
        addFoot(keep.styled("primary"), new PushButton(texts.of("learners.forget"), screen::forget));
    }

    @Override
    void focusFirst() {
        keep.requestFocus();
    }
}
