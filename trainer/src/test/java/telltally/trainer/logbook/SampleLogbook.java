package telltally.trainer.logbook;

import java.nio.file.Path;

/** A logbook that somebody has practised with, for tests elsewhere. */
public final class SampleLogbook {
    private SampleLogbook() {}

    /** Mira with three drills and a lesson, Jon with nothing yet. */
    public static void in(Path folder) throws LogbookException {
        try (Logbook logbook = Logbook.open(folder)) {
            Learner mira = logbook.enrol("Mira Öberg", SampleEntries.MORNING).orElseThrow();
            logbook.enrol("Jon", SampleEntries.MORNING);
            for (int i = 0; i < 3; i++) {
                logbook.write(mira, SampleEntries.drill("written codes:8@5400"));
            }
            logbook.write(mira, SampleEntries.lesson());
        }
    }
}
