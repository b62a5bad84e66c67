package telltally.trainer.screen;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.trainer.drill.DigitConfusions;
import telltally.trainer.drill.Skill;
import telltally.trainer.logbook.History;
import telltally.trainer.text.Texts;

/** How it has been going: charts, which digits are taken for which, and what the tutor believes. */
public final class ProgressScreen implements Screen {
    private final Trainer trainer;
    private final Practice practice;
    private final History history;
    private final DigitConfusions confusions;
    private final List<Chart> charts;

    ProgressScreen(Trainer trainer, Practice practice) {
        this.trainer = trainer;
        this.practice = practice;
        this.history = practice.history();
        this.confusions = history.confusions(trainer.library().drillMaker());
        this.charts = new ProgressCharts(
                        trainer.texts(), history.days(trainer.records().zone().get()))
                .all();
    }

    /**
     * One cell of the digit chart.
     *
     * @param times how often the digit of the row was written as that of the column
     * @param share of the row, from 0 to 1
     */
    public record Cell(String written, int times, double share, boolean right) {}

    /** A digit that was sent, and what was written for it. */
    public record Row(String sent, List<Cell> cells, String spoken) {}

    @Override
    public String title() {
        return practice.learner()
                .map(learner -> texts().of("progress.title", learner.name()))
                .orElseGet(() -> texts().of("progress.title-guest"));
    }

    /** How much was done, in a sentence or two. */
    public List<String> summary() {
        List<String> lines = new ArrayList<>();
        lines.add(texts().of(
                        "progress.summary",
                        history.drills().size(),
                        history.lessons().size(),
                        history.days(trainer.records().zone().get()).size()));
        int days = history.daysInARow(
                trainer.records().today(), trainer.records().zone().get());
        if (days > 1 || history.rightInARow() > 2) {
            lines.add(texts().of("progress.streak", days, history.rightInARow()));
        }
        return lines;
    }

    /** Nothing where no drill was scored yet. */
    public List<Chart> charts() {
        return charts;
    }

    /** The digits that were written for those that were sent: a row for each digit sent. */
    public List<Row> confusions() {
        List<String> columns = columns();
        List<Row> rows = new ArrayList<>();
        for (String sent : confusions.digits()) {
            int all = confusions.sent(sent);
            List<Cell> cells = columns.stream()
                    .map(written -> {
                        int times = confusions.times(sent, written);
                        return new Cell(written, times, (double) times / all, written.equals(sent));
                    })
                    .toList();
            rows.add(new Row(sent, cells, spoken(sent, cells, all)));
        }
        return rows;
    }

    /** What was ever written, by size. */
    public List<String> columns() {
        return confusions.digits().stream()
                .flatMap(sent -> confusions.written().getOrDefault(sent, java.util.Map.of()).keySet().stream())
                .distinct()
                .sorted(java.util.Comparator.<String>comparingInt(String::length)
                        .thenComparing(java.util.Comparator.naturalOrder()))
                .toList();
    }

    /** What the tutor believes, the weak spots first. */
    public List<String> beliefs() {
        List<String> told = new ArrayList<>();
        practice.tutor().weakSpots(now()).forEach(spot -> told.add(spot.said().in(texts())));
        practice.tutor().beliefs(now()).forEach(belief -> told.add(belief.said().in(texts())));
        return told;
    }

    /** When passed skills are to be checked, the next first. */
    public List<String> checks() {
        DateTimeFormatter date =
                DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(texts().language());
        record Due(Skill skill, Instant at) {}
        List<Due> due = new ArrayList<>();
        for (Skill skill : Skill.values()) {
            practice.tutor()
                    .record(skill)
                    .pass()
                    .flatMap(pass -> pass.checkDue())
                    .ifPresent(at -> due.add(new Due(skill, at)));
        }
        due.sort(java.util.Comparator.comparing(Due::at));
        return due.stream()
                .map(each -> each.at().isAfter(now())
                        ? texts().of(
                                        "progress.check-on",
                                        trainer.name(each.skill()),
                                        date.format(LocalDate.ofInstant(
                                                each.at(),
                                                trainer.records().zone().get())))
                        : texts().of("progress.check-now", trainer.name(each.skill())))
                .toList();
    }

    @Override
    public void back() {
        trainer.show(new HomeScreen(trainer, practice, Optional.empty()));
    }

    private String spoken(String sent, List<Cell> cells, int all) {
        StringBuilder text = new StringBuilder(texts().of("progress.spoken-sent", sent, all));
        for (Cell cell : cells) {
            if (cell.times() > 0) {
                text.append(' ').append(texts().of("progress.spoken-written", cell.written(), cell.times()));
            }
        }
        return text.toString();
    }

    private Instant now() {
        return trainer.records().now().get();
    }

    private Texts texts() {
        return trainer.texts();
    }
}
