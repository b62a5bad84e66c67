package telltally.trainer.view;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;
import telltally.trainer.command.Telltally;

/**
 * Starts the whole program as its jar does, or with {@code empty} a JavaFX window of the same size with nothing in it,
 * and prints when its first and its third frame were made, what processor time that took and what is held in memory.
 * Then it ends. Further arguments are the program's own.
 */
public final class StartMeasure {
    private static final long LOOK_AGAIN_NANOS = 500_000L;

    private StartMeasure() {}

    public static void main(String[] arguments) throws InterruptedException {
        boolean empty = arguments.length > 0 && arguments[0].equals("empty");
        Thread watch = new Thread(() -> watch(empty ? "empty window" : "trainer"), "watch");
        watch.setDaemon(true);
        watch.start();
        if (empty) {
            Platform.startup(() -> {
                Stage stage = new Stage();
                stage.setScene(new Scene(new StackPane(), 1280, 800));
                stage.show();
            });
            watch.join();
        } else {
            Telltally.main(arguments);
        }
    }

    private static void watch(String what) {
        while (!asked(what)) {
            LockSupport.parkNanos(LOOK_AGAIN_NANOS);
        }
    }

    /** False as long as there is no toolkit to ask. */
    private static boolean asked(String what) {
        try {
            CountDownLatch third = new CountDownLatch(1);
            Platform.runLater(() -> {
                if (Window.getWindows().isEmpty()) {
                    Window.getWindows().addListener((ListChangeListener<Window>) change -> count(what, third));
                } else {
                    count(what, third);
                }
            });
            if (!third.await(1, TimeUnit.MINUTES)) {
                System.out.println("no window came");
            }
            Runtime.getRuntime().halt(0);
            return true;
        } catch (IllegalStateException notYet) {
            return false;
        } catch (InterruptedException e) {
            return true;
        }
    }

    private static void count(String what, CountDownLatch third) {
        new AnimationTimer() {
            private int frames;
            private String first = "";

            @Override
            public void handle(long now) {
                frames++;
                if (frames == 1) {
                    first = sinceStart();
                } else if (frames == 3) {
                    System.out.println(what + ": first frame " + first + ", third frame " + sinceStart() + ", memory "
                            + residentMegabytes() + " MB");
                    stop();
                    third.countDown();
                }
            }
        }.start();
    }

    private static String sinceStart() {
        long millis = System.currentTimeMillis()
                - ManagementFactory.getRuntimeMXBean().getStartTime();
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return millis + " ms (processor " + system.getProcessCpuTime() / 1_000_000 + " ms)";
    }

    /** Linux only; -1 elsewhere. */
    static long residentMegabytes() {
        try {
            return Files.readAllLines(Path.of("/proc/self/status")).stream()
                    .filter(line -> line.startsWith("VmRSS:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024)
                    .findFirst()
                    .orElse(-1);
        } catch (IOException e) {
            return -1;
        }
    }
}
