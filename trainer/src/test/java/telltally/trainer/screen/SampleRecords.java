package telltally.trainer.screen;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import telltally.trainer.logbook.LogbookKeeper;

/** Records in a folder of their own, kept and read at once by whoever asks, on a date that moves when it is told to. */
public final class SampleRecords {
    private final Path folder;
    private Instant now = Instant.parse("2026-03-02T09:00:00Z");

    public SampleRecords() {
        try {
            folder = Files.createTempDirectory("telltally-records-");
            Runtime.getRuntime().addShutdownHook(new Thread(this::delete));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Path folder() {
        return folder;
    }

    public Records records() {
        return new Records(
                new LogbookKeeper(folder, Runnable::run, Runnable::run), () -> now, () -> ZoneOffset.UTC, "0.1.0");
    }

    public void pass(Duration time) {
        now = now.plus(time);
    }

    private void delete() {
        File[] files = folder.toFile().listFiles();
        if (files != null) {
            for (File file : files) {
                file.delete();
            }
        }
        folder.toFile().delete();
    }
}
