package telltally.trainer.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.LessonShelf.Entry;

class LessonShelfTest {
    private static LessonShelf shelf(Optional<Path> own) {
        return LessonShelf.of(new ResourceFolder("telltally/trainer/lessons"), own, SampleLessons.reader());
    }

    @Test
    void lessons_stand_in_the_order_of_their_file_names() {
        assertThat(shelf(Optional.empty()).entries())
                .extracting(Entry::file)
                .containsExactly("01-two-faults.json", "02-status-lamp.json", "03-broken.json");
    }

    @Test
    void every_shipped_lesson_can_be_played() {
        LessonShelf shipped = LessonShelf.of(Optional.empty());

        assertThat(shipped.entries()).hasSizeGreaterThanOrEqualTo(50).allMatch(Entry.Ready.class::isInstance);
        assertThat(shipped.scenarios())
                .allSatisfy(scenario ->
                        assertThat(Lesson.play(scenario, 1).segments()).isNotEmpty());
    }

    @Test
    void a_broken_file_is_listed_with_its_problems_and_stops_nobody() {
        LessonShelf shelf = shelf(Optional.empty());

        assertThat(shelf.scenarios()).hasSize(2);
        assertThat(shelf.entries().get(2))
                .isInstanceOfSatisfying(
                        Entry.Broken.class,
                        broken -> assertThat(broken.problems().get(0).toString())
                                .startsWith(
                                        "03-broken.json:7:13: /format: no format is called \"pair-evn\"; expected"));
    }

    @Test
    void the_instructors_own_folder_comes_after_what_ships(@TempDir Path folder) throws IOException {
        Path own = folder.resolve("own.json");
        Files.writeString(own, """
                {"schema": "telltally/scenario/1", "id": "own", "title": "Own", "briefing": ["Look."], "task": "Count.",
                 "format": "count-loop", "codes": {"codes": ["5"]}}
                """);
        Files.writeString(folder.resolve("notes.txt"), "no lesson");

        LessonShelf shelf = shelf(Optional.of(folder));

        assertThat(shelf.entries()).hasSize(4);
        assertThat(shelf.entries().get(3).file()).isEqualTo(own.toString());
        assertThat(shelf.find("own")).isPresent();
    }

    @Test
    void a_folder_that_is_not_there_is_one_more_thing_listed() {
        LessonShelf shelf = shelf(Optional.of(Path.of("no", "such", "folder")));

        assertThat(shelf.entries()).hasSize(4).last().isInstanceOf(Entry.Broken.class);
    }

    @Test
    void a_lesson_knows_what_is_to_be_written_and_where_each_code_was_sent() {
        Lesson lesson = Lesson.play(shelf(Optional.empty()).find("two-faults").orElseThrow(), 7);

        assertThat(lesson.segments()).isEqualTo(List.of(Segment.PRESENT, Segment.STORED));
        assertThat(lesson.firstSent(Segment.PRESENT, "42").orElseThrow().digits())
                .isEqualTo("42");
        assertThat(lesson.firstSent(Segment.STORED, "42")).isEmpty();
        assertThat(lesson.cautions()).hasSizeGreaterThan(3);
    }
}
