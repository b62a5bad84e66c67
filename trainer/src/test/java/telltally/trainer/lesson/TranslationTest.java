package telltally.trainer.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.text.Texts;

class TranslationTest {
    private static final LessonShelf SHELF = LessonShelf.of(Optional.empty());

    static Stream<Locale> languages() {
        return Texts.LANGUAGES.stream().filter(language -> !language.equals(Locale.ENGLISH));
    }

    /** All that a learner reads which is not said by the program itself. */
    private static Set<String> read() {
        Set<String> texts = new LinkedHashSet<>();
        for (Scenario scenario : SHELF.scenarios()) {
            texts.add(scenario.title());
            texts.addAll(scenario.briefing());
            texts.add(scenario.task());
        }
        CodeListCatalog lists = CodeListCatalog.shipped();
        lists.ids().stream().flatMap(id -> lists.find(id).stream()).forEach(list -> {
            texts.add(list.title());
            texts.add(list.notes());
            texts.addAll(list.meanings().values());
        });
        FormatCatalog.shipped().all().stream().map(FlashFormat::title).forEach(texts::add);
        assertThat(texts).hasSizeGreaterThan(200);
        return texts;
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everything_that_ships_is_translated_and_nothing_else(Locale language) {
        assertThat(Translation.into(language).texts().keySet()).containsExactlyInAnyOrderElementsOf(read());
    }

    @ParameterizedTest
    @MethodSource("languages")
    void no_number_is_lost_or_changed_on_the_way(Locale language) {
        Translation.into(language)
                .texts()
                .forEach((original, translated) ->
                        assertThat(numbers(translated)).as(original).isEqualTo(numbers(original)));
    }

    private static List<String> numbers(String text) {
        return Stream.of(text.split("[^0-9]+"))
                .filter(number -> !number.isEmpty())
                .sorted()
                .toList();
    }

    @Test
    void a_lesson_is_told_in_other_words_and_sent_and_marked_as_before() {
        Scenario original = SHELF.find("present-and-stored").orElseThrow();
        Scenario german = Translation.into(Locale.GERMAN)
                .of(SHELF)
                .find("present-and-stored")
                .orElseThrow();

        assertThat(german.title()).isEqualTo("Jetzt oder vor einiger Zeit?");
        assertThat(german.format().title()).startsWith("Zwei Ziffern");
        assertThat(german.codeList().flatMap(list -> list.meaning("41")))
                .contains("Kühlmitteltemperaturfühler: Stromkreis unterbrochen");
        assertThat(Lesson.play(german, 7).recording())
                .isEqualTo(Lesson.play(original, 7).recording());
    }

    @Test
    void in_english_and_in_a_language_that_nobody_wrote_everything_stays_as_it_is() {
        for (Locale language : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            assertThat(Translation.into(language).of(SHELF)).isEqualTo(SHELF);
        }
    }

    @Test
    void what_has_no_translation_stays_as_it_was_written() {
        CodeList list = SampleLessons.meanings();
        Translation one = new Translation(Map.of("Stored values lost", "Gespeicherte Werte verloren"));
        CodeList translated =
                one.of(CodeListCatalog.of(List.of(list))).find("bench").orElseThrow();

        assertThat(translated.meaning("15")).contains("Gespeicherte Werte verloren");
        assertThat(translated.meaning("34")).isEqualTo(list.meaning("34"));
    }

    @Test
    void a_language_is_called_by_two_letters() {
        TextFile file = new TextFile("German.json", """
                {"schema": "telltally/translation/1", "language": "German", "texts": {}}
                """);
        assertThatThrownBy(() -> Translation.read(file))
                .hasMessageContaining(
                        "German.json:1:51: /language: is \"German\"; expected two small letters, such as de");
    }

    @Test
    void a_broken_translation_is_told_with_its_place() {
        TextFile file = new TextFile("xx.json", """
                {"schema": "telltally/translation/1", "language": "xx",
                 "texts": {"One": "Eins", "Two": 2}, "more": 1}
                """);
        assertThatThrownBy(() -> Translation.read(file))
                .isInstanceOfSatisfying(
                        ProblemException.class,
                        told -> assertThat(told.problems())
                                .extracting(Object::toString)
                                .containsExactlyInAnyOrder(
                                        "xx.json:2:34: /texts/Two: is a number; expected a text",
                                        "xx.json:2:38: /more: is not known here; expected one of schema, language, texts"));
    }
}
