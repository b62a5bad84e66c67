package telltally.trainer.logbook;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A learner who answers drills as fast as the disk allows, to be killed. Prints the id of each answer when, and only
 * when, the logbook has said that it is written: where a window would show its feedback. Arguments: folder, learner.
 */
final class AnsweringProgram {
    private AnsweringProgram() {}

    public static void main(String[] arguments) throws LogbookException {
        try (Logbook logbook = Logbook.open(Path.of(arguments[0]))) {
            Optional<Learner> known = logbook.find(arguments[1]);
            Learner learner = known.isPresent()
                    ? known.get()
                    : logbook.enrol(arguments[1], Instant.now()).orElseThrow();
            while (true) {
                DrillEntry answer = SampleEntries.drill("written codes:8@5400");
                logbook.write(learner, answer);
                System.out.println(answer.id());
                System.out.flush();
            }
        }
    }
}
