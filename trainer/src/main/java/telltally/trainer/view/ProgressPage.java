package telltally.trainer.view;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.Chart;
import telltally.trainer.screen.ProgressScreen;
import telltally.trainer.text.Texts;

/** Charts or a table of the same numbers, the digits, and what the tutor believes. */
final class ProgressPage extends Page {
    private static final double GAP_PX = 14;

    private final ProgressScreen screen;
    private final Texts texts;
    private final StackPane charts = new StackPane();
    private final PushButton back;
    private final PushButton toggle;
    private boolean asTable;

    ProgressPage(ProgressScreen screen, Texts texts) {
        super(screen.title());
        this.screen = screen;
        this.texts = texts;
        this.back = new PushButton(texts.of("progress.back"), screen::back);
        this.toggle = new PushButton(texts.of("progress.table-show"), this::turn);
        screen.summary().forEach(text -> add(Text.of(text, "reading")));
        charts.getStyleClass().add("charts");
        show();
        add(charts);
        section(texts.of("progress.beliefs"), screen.beliefs(), texts.of("progress.beliefs-none"));
        section(texts.of("progress.checks"), screen.checks(), texts.of("progress.checks-none"));
        digits();
        addFoot(back.styled("primary"));
        if (!screen.charts().isEmpty()) {
            addFoot(toggle);
        }
        addHint(texts.of("progress.hint"));
    }

    @Override
    void focusFirst() {
        back.requestFocus();
    }

    private void turn() {
        asTable = !asTable;
        toggle.setText(texts.of(asTable ? "progress.table-hide" : "progress.table-show"));
        show();
    }

    private void show() {
        charts.getChildren()
                .setAll(
                        screen.charts().isEmpty()
                                ? Text.of(texts.of("progress.nothing"), "quiet")
                                : asTable ? table() : drawn());
    }

    private Node drawn() {
        return new EvenColumns(screen.charts().stream().map(ProgressPage::box).toList(), GAP_PX);
    }

    private static VBox box(Chart chart) {
        VBox box = new VBox(Text.of(chart.title(), "small-label"), new ChartPane(chart));
        box.getStyleClass().addAll("panel", "chart-box");
        return box;
    }

    private Node table() {
        GridPane table = new GridPane();
        table.getStyleClass().addAll("panel", "numbers");
        List<Chart> all = screen.charts();
        table.add(Text.of(texts.of("progress.day"), "small-label"), 0, 0);
        for (int column = 0; column < all.size(); column++) {
            table.add(Text.of(all.get(column).title(), "small-label", "numbers-head"), column + 1, 0);
            List<Chart.Point> points = all.get(column).points();
            for (int row = 0; row < points.size(); row++) {
                if (column == 0) {
                    Label day = new Label(points.get(row).day());
                    day.setMinWidth(Label.USE_PREF_SIZE);
                    table.add(day, 0, row + 1);
                }
                table.add(Text.of(points.get(row).value()), column + 1, row + 1);
            }
        }
        return table;
    }

    private void section(String heading, List<String> lines, String none) {
        VBox box = new VBox(Text.of(heading, "small-label"));
        box.getStyleClass().add("panel");
        (lines.isEmpty() ? List.of(none) : lines)
                .forEach(line -> box.getChildren().add(Text.of(line)));
        add(box);
    }

    private void digits() {
        VBox box = new VBox(Text.of(texts.of("progress.digits"), "small-label"));
        box.getStyleClass().add("panel");
        if (screen.confusions().isEmpty()) {
            box.getChildren().add(Text.of(texts.of("progress.digits-none")));
        } else {
            box.getChildren()
                    .addAll(
                            Text.of(texts.of("progress.digits-hint"), "quiet"),
                            new ConfusionGrid(screen.columns(), screen.confusions(), texts));
        }
        add(box);
    }
}
