package telltally.trainer.view;

import javafx.geometry.Insets;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import telltally.trainer.screen.NoticeScreen;

/**
 * The words of the notice, drawn without controls and style sheets, which take as long to load as all the rest. They can
 * be read from the first frame on, while the page itself is made ready; with the next frame it takes their place.
 */
final class FirstSight extends VBox {
    FirstSight(NoticeScreen screen, Colours colours, double textPx, double width) {
        super(1.2 * textPx);
        double side = 2 * textPx;
        setPadding(new Insets(textPx, side, textPx, side));
        setBackground(fill(colours.role("bench"), 0));
        getChildren().add(line(screen.title(), 1.5 * textPx, FontWeight.BOLD, colours.role("text"), width - 2 * side));
        VBox panel = new VBox(0.7 * textPx);
        panel.setPadding(new Insets(1.4 * textPx));
        panel.setBackground(fill(colours.role("panel"), 0.5 * textPx));
        double inside = width - 2 * side - 2.8 * textPx;
        panel.getChildren()
                .add(line(screen.warning(), 1.35 * textPx, FontWeight.BOLD, colours.role("caution"), inside));
        for (String paragraph : screen.paragraphs()) {
            panel.getChildren().add(line(paragraph, 1.07 * textPx, FontWeight.NORMAL, colours.role("text"), inside));
        }
        panel.setMaxHeight(Region.USE_PREF_SIZE);
        getChildren().add(panel);
    }

    private static Text line(String words, double sizePx, FontWeight weight, Color colour, double width) {
        Text text = new Text(words);
        text.setFont(Font.font(Font.getDefault().getFamily(), weight, sizePx));
        text.setFill(colour);
        text.setWrappingWidth(width);
        return text;
    }

    private static Background fill(Color colour, double radius) {
        return new Background(new BackgroundFill(colour, new CornerRadii(radius), Insets.EMPTY));
    }
}
