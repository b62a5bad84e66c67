package telltally.trainer.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.LongSupplier;
import javafx.application.Platform;
import javafx.stage.Stage;
import telltally.decoder.plain.PlainDecoder;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.scenario.Content;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.LessonShelf.Entry;
import telltally.trainer.playback.ShownFlash;
import telltally.trainer.playback.Sounder;
import telltally.trainer.screen.BriefingScreen;
import telltally.trainer.screen.HomeScreen;
import telltally.trainer.screen.LearnersScreen;
import telltally.trainer.screen.LessonsScreen;
import telltally.trainer.screen.NoticeScreen;
import telltally.trainer.screen.PlayScreen;
import telltally.trainer.screen.SampleRecords;
import telltally.trainer.screen.Trainer;
import telltally.trainer.settings.SettingsStore;

/**
 * Plays a lesson of at least ten minutes in the real window, in real time, and prints how late its flashes came, whether
 * that grew, and what the window holds in memory. They are shown on the diode, which follows at once: a bulb would add
 * what it takes to warm up.
 */
public final class OnsetMeasure {
    /** Fifteen codes with many flashes, sent twice, the separator and one stored code: more than ten minutes. */
    private static final List<String> PRESENT =
            List.of("99", "98", "97", "96", "95", "89", "88", "87", "86", "79", "78", "77", "76", "69", "68");

    private final List<Long> drawnNanos = new ArrayList<>();
    private long lastFrameNanos;
    private boolean wasLit;

    private OnsetMeasure() {}

    public static void main(String[] arguments) throws InterruptedException {
        Toolkit.startOrStop();
        try {
            OnsetMeasure measure = new OnsetMeasure();
            measure.play(Toolkit.fx(measure::open));
        } finally {
            Platform.exit();
        }
    }

    private TrainerWindow open() {
        LessonShelf shelf = new LessonShelf(List.of(new Entry.Ready("long.json", tenMinutes())));
        LongSupplier clock = () -> {
            lastFrameNanos = System.nanoTime();
            return lastFrameNanos;
        };
        Trainer trainer = new Trainer(
                () -> shelf,
                new Trainer.Surroundings(
                        clock,
                        () -> 1,
                        Sounder::new,
                        SettingsStore.forgetful(OpenWindow.english()),
                        new PlainDecoder(),
                        new SampleRecords().records()),
                Optional.empty());
        TrainerWindow window = new TrainerWindow(new Stage(), trainer, clock);
        window.show();
        return window;
    }

    private static Scenario tenMinutes() {
        return new Scenario(
                "long",
                "Ten minutes",
                List.of("A long list."),
                "Count.",
                FormatCatalog.shipped().find("pair-even").orElseThrow(),
                Optional.empty(),
                new Content.Outright(new Message.KeyOn(PRESENT, List.of("11"))),
                Display.LED,
                1);
    }

    private void play(TrainerWindow window) throws InterruptedException {
        Trainer trainer = window.trainer();
        PlayScreen screen = Toolkit.fx(() -> {
            ((NoticeScreen) trainer.screen()).goOn();
            ((LearnersScreen) trainer.screen()).goOnAsGuest();
            ((HomeScreen) trainer.screen()).lessons();
            ((LessonsScreen) trainer.screen()).open(0);
            ((BriefingScreen) trainer.screen()).start();
            return (PlayScreen) trainer.screen();
        });
        CountDownLatch ended = new CountDownLatch(1);
        Toolkit.run(() -> window.stage().getScene().addPostLayoutPulseListener(() -> look(screen, ended)));
        ended.await();
        List<ShownFlash> shown = Toolkit.fx(() -> screen.player().playback().shown());
        tell(
                "onset as the frame was made",
                shown,
                shown.stream().mapToLong(ShownFlash::lateNanos).toArray());
        long[] drawn = new long[Math.min(shown.size(), drawnNanos.size())];
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = drawnNanos.get(i) - shown.get(i).planned().startNanos();
        }
        System.out.println(
                "flashes planned and shown: " + shown.size() + ", handed to the renderer: " + drawnNanos.size());
        tell("onset as it was handed to the renderer", shown, drawn);
        System.out.println("worst change of all, flashes going out included: "
                + millis(screen.player().playback().worstLateNanos()) + " ms; scored: "
                + !screen.player().playback().lagged());
        System.out.println("memory at the end: " + StartMeasure.residentMegabytes() + " MB");
    }

    /** Runs after each layout, right before the picture goes to the renderer. */
    private void look(PlayScreen screen, CountDownLatch ended) {
        long beganNanos = lastFrameNanos - screen.player().playback().positionNanos();
        boolean lit = screen.player().levelProperty().get() > 0;
        if (lit && !wasLit) {
            drawnNanos.add(System.nanoTime() - beganNanos);
        }
        wasLit = lit;
        if (screen.player().ended()) {
            ended.countDown();
        }
    }

    private static void tell(String what, List<ShownFlash> shown, long[] late) {
        long[] sorted = late.clone();
        Arrays.sort(sorted);
        double seconds = shown.get(late.length - 1).planned().startNanos() / 1e9;
        System.out.println(what + ": " + late.length + " flashes in " + Math.round(seconds) + " s; median "
                + millis(sorted[sorted.length / 2]) + ", p99 " + millis(sorted[(int) (sorted.length * 0.99)]) + ", max "
                + millis(sorted[sorted.length - 1]) + " ms; drift by least squares "
                + millis((long) (slope(shown, late) * 600e9)) + " ms over ten minutes");
    }

    /** Lateness against planned time, both in nanoseconds. */
    private static double slope(List<ShownFlash> shown, long[] late) {
        double meanTime = 0;
        double meanLate = 0;
        for (int i = 0; i < late.length; i++) {
            meanTime += (double) shown.get(i).planned().startNanos() / late.length;
            meanLate += (double) late[i] / late.length;
        }
        double together = 0;
        double alone = 0;
        for (int i = 0; i < late.length; i++) {
            double time = shown.get(i).planned().startNanos() - meanTime;
            together += time * (late[i] - meanLate);
            alone += time * time;
        }
        return together / alone;
    }

    private static String millis(long nanos) {
        return Double.toString(Math.round(nanos / 1e5) / 10.0);
    }
}
