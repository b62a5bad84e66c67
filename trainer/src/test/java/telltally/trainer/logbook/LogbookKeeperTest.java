package telltally.trainer.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import telltally.trainer.logbook.LogbookException.Reason;

class LogbookKeeperTest {
    @TempDir
    private Path folder = Path.of("");

    private final Deque<Runnable> work = new ArrayDeque<>();
    private final Deque<Runnable> answers = new ArrayDeque<>();

    @Test
    void opens_the_file_when_it_is_first_needed_and_by_the_worker() {
        LogbookKeeper keeper = new LogbookKeeper(folder, work::add, answers::add);
        List<Learner> seen = new ArrayList<>();
        keeper.ask(logbook -> logbook.enrol("Mira", SampleEntries.MORNING).orElseThrow(), seen::add, reason -> {});
        assertThat(keeper.file()).doesNotExist();

        work.remove().run();
        assertThat(keeper.file()).exists();
        assertThat(seen).as("nothing before the asker's turn").isEmpty();
        answers.remove().run();
        assertThat(seen).extracting(Learner::name).containsExactly("Mira");
    }

    @Test
    void tells_why_it_cannot_and_tries_again_next_time() throws Exception {
        Files.writeString(Logbook.fileIn(folder), "no logbook at all, but long enough to be looked at".repeat(20));
        LogbookKeeper keeper = new LogbookKeeper(folder, Runnable::run, Runnable::run);
        List<Object> told = new ArrayList<>();
        keeper.ask(Logbook::learners, told::add, reason -> told.add(reason.reason()));
        assertThat(told).containsExactly(Reason.DAMAGED);

        Files.delete(Logbook.fileIn(folder));
        keeper.ask(Logbook::learners, told::add, reason -> told.add(reason.reason()));
        assertThat(told).containsExactly(Reason.DAMAGED, List.of());
        keeper.close();
    }

    @Test
    void finishes_what_was_asked_before_it_closes() {
        LogbookKeeper keeper = LogbookKeeper.onItsOwn(folder, Runnable::run);
        List<Integer> done = new ArrayList<>();
        keeper.ask(logbook -> logbook.enrol("Mira", SampleEntries.MORNING).orElseThrow(), learner -> {}, reason -> {});
        for (int i = 0; i < 5; i++) {
            int number = i;
            keeper.ask(
                    logbook -> {
                        logbook.write(logbook.learners().get(0), SampleEntries.drill("counted " + number));
                        return number;
                    },
                    done::add,
                    reason -> {});
        }
        keeper.close();

        assertThat(done).containsExactly(0, 1, 2, 3, 4);
    }
}
