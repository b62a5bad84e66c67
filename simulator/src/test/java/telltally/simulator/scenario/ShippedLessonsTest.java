package telltally.simulator.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.Simulation;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.recording.Recording;
import telltally.simulator.signal.Interval;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every lesson that ships, held against its own file and against what the trade says of each format. */
class ShippedLessonsTest {
    private static final ScenarioReader READER = ScenarioReader.shipped();

    /** A lesson, and its file as a library that is not ours reads it. */
    private record Lesson(String fileName, Scenario scenario, JsonNode file) {
        static Lesson of(TextFile source) {
            try {
                return new Lesson(
                        source.name(),
                        READER.read(source, Optional.empty()),
                        JsonMapper.shared().readTree(source.text()));
            } catch (ProblemException e) {
                throw new AssertionError(e.problems().toString(), e);
            }
        }

        String allWords() {
            return scenario.title() + " " + String.join(" ", scenario.briefing()) + " " + scenario.task();
        }

        boolean isStory() {
            return file.has("vehicle");
        }

        boolean has(String segment) {
            return file.path("codes").has(segment);
        }

        List<String> codes(String segment) {
            List<String> codes = new ArrayList<>();
            if (has(segment)) {
                file.get("codes").get(segment).forEach(code -> codes.add(code.asString()));
            }
            return codes;
        }

        boolean keyOn() {
            return has("present") || has("stored") || isStory();
        }

        boolean engineRuns() {
            return has("running")
                    || has("balance")
                    || Simulation.run(scenario, 42).speedRpm().isPresent();
        }

        int loops() {
            return file.has("loops") ? file.get("loops").asInt() : 2;
        }

        @Override
        public String toString() {
            return fileName;
        }
    }

    static List<Lesson> lessons() {
        return new ResourceFolder("telltally/scenarios/lessons")
                .read().stream().map(Lesson::of).toList();
    }

    /** Those that give their codes outright; what comes of the others is told story by story. */
    static List<Lesson> givenLessons() {
        return lessons().stream().filter(lesson -> !lesson.isStory()).toList();
    }

    @Test
    void fifty_lessons_ship_numbered_without_a_hole_and_named_by_their_id() {
        List<Lesson> lessons = lessons();
        assertThat(lessons).hasSize(50);
        assertThat(givenLessons()).hasSize(18);
        assertThat(lessons)
                .extracting(Lesson::fileName)
                .containsExactlyElementsOf(IntStream.range(0, lessons.size())
                        .mapToObj(i -> (i < 9 ? "0" : "") + (i + 1) + "-"
                                + lessons.get(i).scenario().id() + ".json")
                        .toList());
        assertThat(lessons).extracting(lesson -> lesson.scenario().id()).doesNotHaveDuplicates();
        assertThat(lessons).extracting(lesson -> lesson.scenario().title()).doesNotHaveDuplicates();
    }

    @Test
    void every_format_is_taught() {
        assertThat(lessons())
                .extracting(lesson -> lesson.scenario().format().id())
                .containsAll(FormatCatalog.shipped().ids());
    }

    @Test
    void every_way_of_showing_is_taught() {
        assertThat(lessons()).extracting(lesson -> lesson.scenario().display()).contains(Display.values());
    }

    @ParameterizedTest
    @MethodSource("givenLessons")
    void the_truth_is_what_the_file_says(Lesson lesson) {
        Map<String, List<String>> expected = new LinkedHashMap<>();
        if (lesson.keyOn()) {
            expected.put("present", orPassCode(lesson, lesson.codes("present")));
            expected.put("stored", orPassCode(lesson, lesson.codes("stored")));
        } else if (lesson.has("balance")) {
            expected.put("balance", List.of(lesson.codes("balance").get(0).substring(0, 1)));
        } else if (lesson.has("running")) {
            expected.put("running", orPassCode(lesson, lesson.codes("running")));
        } else {
            expected.put("codes", lesson.codes("codes"));
        }
        Map<String, List<String>> found = new LinkedHashMap<>();
        Recording recording = Simulation.run(lesson.scenario(), 42);
        recording.truth().codes().forEach((segment, codes) -> found.put(segment.key(), codes));
        assertThat(found).containsExactlyEntriesOf(expected);
    }

    /** 11 or 111: common practice, no source. */
    private static List<String> orPassCode(Lesson lesson, List<String> codes) {
        return codes.isEmpty() ? List.of(lesson.scenario().format().id().equals("triple-even") ? "111" : "11") : codes;
    }

    /** Counted by hand from what each format repeats and adds: common practice, no source. */
    @ParameterizedTest
    @MethodSource("givenLessons")
    void the_lamp_lights_as_often_as_the_codes_ask_for(Lesson lesson) {
        int list = sum(lesson.codes("codes"));
        int expected = switch (lesson.scenario().format().id()) {
            case "long-short" -> lesson.loops() * list;
            // The code is the count.
            case "count-loop" ->
                lesson.loops() * Integer.parseInt(lesson.codes("codes").get(0));
            // Eight blinks for each loop where there is nothing to report.
            case "pair-loop" -> lesson.loops() * (list == 0 ? 8 : list);
            // Each code three times; 12 three times before and after.
            case "pair-thrice" -> lesson.loops() * 3 * list + 2 * 3 * (1 + 2);
            // Each code twice, each time with its lead-in.
            case "quad-lead" -> 2 * (list + lesson.codes("codes").size());
            default -> evenFlashes(lesson);
        };
        Recording recording = Simulation.run(lesson.scenario(), 42);
        assertThat(recording.lamp().intervals().stream().filter(Interval::lit).count())
                .isEqualTo(expected);
    }

    private static int evenFlashes(Lesson lesson) {
        if (lesson.keyOn()) {
            return 2 * sum(orPassCode(lesson, lesson.codes("present")))
                    + 1
                    + 2 * sum(orPassCode(lesson, lesson.codes("stored")));
        }
        if (lesson.has("balance")) {
            return sum(lesson.codes("balance"));
        }
        return lesson.file().get("cylinders").asInt() / 2
                + (lesson.file().has("prompt") ? 1 : 0)
                + 2 * sum(orPassCode(lesson, lesson.codes("running")));
    }

    private static int sum(List<String> codes) {
        return codes.stream()
                .flatMapToInt(String::chars)
                .map(digit -> digit - '0')
                .sum();
    }

    /**
     * W3C, Web Content Accessibility Guidelines 2.2, success criterion 2.3.1: no more than three flashes in any period
     * of one second.
     */
    @ParameterizedTest
    @MethodSource("lessons")
    void no_lamp_flashes_more_than_three_times_in_any_second(Lesson lesson) {
        List<Long> starts = Simulation.run(lesson.scenario(), 42).lamp().intervals().stream()
                .filter(Interval::lit)
                .map(Interval::startNanos)
                .toList();
        assertThat(IntStream.range(3, starts.size()))
                .allMatch(i -> starts.get(i) - starts.get(i - 3) >= 1_000_000_000L);
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void the_answer_stands_in_no_word_that_the_learner_reads(Lesson lesson) {
        Recording recording = Simulation.run(lesson.scenario(), 42);
        List<String> codes = recording.truth().codes().values().stream()
                .flatMap(List::stream)
                // That there is nothing to report may be said aloud.
                .filter(code -> !code.matches("1+"))
                .toList();
        for (String code : codes) {
            assertThat(lesson.allWords()).doesNotContainPattern("\\b" + code + "\\b");
            lesson.scenario()
                    .codeList()
                    .flatMap(list -> list.meaning(code))
                    .ifPresent(meaning -> assertThat(lesson.allWords()).doesNotContain(meaning));
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void a_briefing_has_two_to_four_paragraphs(Lesson lesson) {
        assertThat(lesson.scenario().briefing()).hasSizeBetween(2, 4);
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @MethodSource("lessons")
    void the_cautions_stand_wherever_a_procedure_is_shown(Lesson lesson) {
        String words = lesson.allWords();
        if (lesson.keyOn() || lesson.engineRuns()) {
            assertThat(words)
                    .contains("use only the terminals that the vehicle's own manual names")
                    .contains("battery positive or the body can burn")
                    .contains("Never probe yellow or orange wiring")
                    .contains("an electric fan can start by itself")
                    .contains("ands, hair, sleeves and leads")
                    .contains("service information, local rules and a licensed technician decide");
        }
        if (lesson.engineRuns()) {
            assertThat(words)
                    .contains(
                            "kills by carbon monoxide: pipe the exhaust to the open air; open doors alone are not enough")
                    .contains("Parking brake on, wheels chocked, neutral or park")
                    .contains("fans, belts and hot exhaust");
        }
        if (words.contains("between battery positive")) {
            assertThat(words).contains("eye protection at the battery");
        }
    }

    @Test
    void the_first_lesson_warns_of_flashing_light_and_offers_something_else() {
        assertThat(lessons().get(0).allWords())
                .contains("seizures")
                .contains("sounder")
                .contains("meter");
    }

    @Test
    void a_prompt_and_a_silent_list_are_among_them() {
        assertThat(lessons())
                .anySatisfy(lesson -> assertThat(
                                Simulation.run(lesson.scenario(), 42).truth().groups())
                        .anyMatch(group -> group.kind() == GroupKind.PROMPT))
                .anySatisfy(lesson -> {
                    assertThat(lesson.has("codes")).isTrue();
                    assertThat(lesson.codes("codes")).isEmpty();
                });
    }
}
