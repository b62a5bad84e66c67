package telltally.trainer.screen;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import telltally.trainer.drill.Level;
import telltally.trainer.logbook.PractisedDay;
import telltally.trainer.mastery.MasteryRule;
import telltally.trainer.text.Texts;

/** Accuracy, difficulty and speed, day by day. */
record ProgressCharts(Texts texts, List<PractisedDay> days) {
    private static final int LATEST = 60;
    private static final double NANOS_A_SECOND = 1e9;

    ProgressCharts {
        days = List.copyOf(days.subList(Math.max(0, days.size() - LATEST), days.size()));
    }

    List<Chart> all() {
        return days.isEmpty() ? List.of() : List.of(accuracy(), level(), thought());
    }

    private Chart accuracy() {
        List<Chart.Mark> marks = List.of(
                new Chart.Mark(0, percent(0)),
                new Chart.Mark(MasteryRule.STANDARD, percent(MasteryRule.STANDARD)),
                new Chart.Mark(1, percent(1)));
        return chart(
                "progress.accuracy",
                PractisedDay::shareRight,
                day -> texts.of("progress.right-of", day.right(), day.answered()),
                marks);
    }

    private Chart level() {
        return chart(
                "progress.level",
                day -> (day.meanLevel() - Level.LOWEST) / (Level.HIGHEST - Level.LOWEST),
                day -> texts.of("progress.level-of", day.meanLevel()),
                List.of(
                        new Chart.Mark(0, Integer.toString(Level.LOWEST)),
                        new Chart.Mark(1, texts.of("progress.full"))));
    }

    private Chart thought() {
        double longest = Math.max(
                1,
                days.stream()
                        .mapToDouble(day -> Math.ceil(day.medianThoughtNanos() / NANOS_A_SECOND))
                        .max()
                        .orElse(1));
        return chart(
                "progress.thought",
                day -> day.medianThoughtNanos() / NANOS_A_SECOND / longest,
                day -> texts.of("progress.seconds", day.medianThoughtNanos() / NANOS_A_SECOND),
                List.of(
                        new Chart.Mark(0, texts.of("progress.seconds", 0)),
                        new Chart.Mark(1, texts.of("progress.seconds", longest))));
    }

    private Chart chart(
            String title,
            ToDoubleFunction<PractisedDay> height,
            Function<PractisedDay, String> value,
            List<Chart.Mark> marks) {
        DateTimeFormatter date =
                DateTimeFormatter.ofLocalizedDate(FormatStyle.SHORT).withLocale(texts.language());
        PractisedDay first = days.get(0);
        long span =
                ChronoUnit.DAYS.between(first.date(), days.get(days.size() - 1).date());
        List<Chart.Point> points = new ArrayList<>();
        for (PractisedDay day : days) {
            double across = span == 0 ? 0.5 : (double) ChronoUnit.DAYS.between(first.date(), day.date()) / span;
            points.add(new Chart.Point(across, height.applyAsDouble(day), date.format(day.date()), value.apply(day)));
        }
        return new Chart(texts.of(title), points, marks);
    }

    private String percent(double share) {
        return texts.of("progress.percent", Math.round(100 * share));
    }
}
