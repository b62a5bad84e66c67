package telltally.trainer.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TextsTest {
    private static final Path FILES = Path.of("src/main/resources/telltally/trainer/text");
    private static final Path SOURCES = Path.of("src/main/java/telltally/trainer");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern KEY = Pattern.compile("[a-z]+\\.[a-z0-9]+(?:-[a-z0-9]+)*-?");

    /** A capital letter and more, or two words: something that somebody would read. */
    private static final Pattern SENTENCE = Pattern.compile("^_?\\p{Lu}\\p{Ll}+|\\p{L}{2,} \\p{L}{2,}");

    /** Where all that is said is said in the learner's language. Problems of files and faults stay in English. */
    private static final List<String> SPEAKING = List.of("lesson", "screen", "view");

    private record Literal(String place, String line, String text) {}

    @Test
    void a_text_is_said_in_the_language_asked_for_and_in_english_where_there_is_none_such() {
        assertThat(Texts.in(Locale.GERMANY).of("notice.title")).isEqualTo("Vor dem ersten Blinken");
        assertThat(Texts.in(Locale.JAPAN).of("notice.title")).isEqualTo("Before the first flash");
        assertThat(Texts.in(Locale.GERMAN).of("slip.lost-code-told", "34", "deinen Codes"))
                .isEqualTo("34 wurde gesendet und fehlt bei deinen Codes.");
    }

    @Test
    void an_apostrophe_is_written_twice_whether_a_text_takes_arguments_or_not() {
        assertThat(Texts.in(Locale.ENGLISH).of("caution.terminals")).contains("vehicle's own");
    }

    @Test
    void a_text_that_is_not_there_is_a_mistake_of_the_program() {
        Texts texts = Texts.in(Locale.GERMAN);
        assertThatThrownBy(() -> texts.of("notice.nonsense"))
                .hasMessageContaining("notice.nonsense")
                .hasMessageContaining("de");
        assertThatThrownBy(() -> texts.of("nonsense.title")).hasMessageContaining("nonsense");
        assertThatThrownBy(() -> texts.of("title")).hasMessageContaining("title");
    }

    @Test
    void every_area_has_the_same_keys_and_placeholders_in_every_language() throws IOException {
        List<String> broken = new ArrayList<>();
        Set<String> areas = areas();
        assertThat(areas).hasSizeGreaterThan(10);
        for (String area : areas) {
            Map<String, String> english = texts(area, Locale.ENGLISH);
            for (Locale language : Texts.LANGUAGES) {
                compare(area + " in " + language, english, texts(area, language), broken);
            }
        }
        assertThat(broken).isEmpty();
    }

    @Test
    void no_text_is_empty_and_every_one_is_a_pattern_that_can_be_read() throws IOException {
        for (String area : areas()) {
            for (Locale language : Texts.LANGUAGES) {
                texts(area, language).forEach((key, text) -> {
                    assertThat(text).as(area + "." + key).isNotBlank();
                    assertThat(text.replace("''", ""))
                            .as(area + "." + key + " has an apostrophe that is not written twice")
                            .doesNotContain("'");
                    assertThat(new MessageFormat(text, language).toPattern()).isNotEmpty();
                });
            }
        }
    }

    @Test
    void every_key_that_code_uses_is_there_and_every_one_that_is_there_is_used() throws IOException {
        Set<String> areas = areas();
        Set<String> unused = new TreeSet<>();
        for (String area : areas) {
            texts(area, Locale.ENGLISH).keySet().forEach(name -> unused.add(area + "." + name));
        }
        Set<String> known = new TreeSet<>(unused);
        List<String> missing = new ArrayList<>();
        for (Literal literal : literals(List.of("."))) {
            String key = literal.text();
            if (key.endsWith(".properties")
                    || !KEY.matcher(key).matches()
                    || !areas.contains(key.substring(0, key.indexOf('.')))) {
                continue;
            }
            boolean whole = !key.endsWith("-");
            if (known.stream().noneMatch(each -> whole ? each.equals(key) : each.startsWith(key))) {
                missing.add(literal.place() + ": write a text for " + key + " in every language, or name one that is");
            }
            unused.removeIf(each -> whole ? each.equals(key) : each.startsWith(key));
        }
        assertThat(missing).isEmpty();
        assertThat(unused).as("texts that no code names: take them out").isEmpty();
    }

    @Test
    void windows_and_screens_say_nothing_that_is_written_in_their_code() throws IOException {
        List<String> written = literals(SPEAKING).stream()
                .filter(literal -> SENTENCE.matcher(literal.text()).find())
                .filter(literal -> !literal.text().startsWith("-fx-")
                        && !literal.line().contains("Exception(")
                        && !literal.line().contains("requireNonNull(")
                        && !literal.line().contains("Problem.of(")
                        && !literal.line().contains(".problem(")
                        && !literal.text().equals("Telltally"))
                .map(literal -> literal.place() + ": move \"" + literal.text()
                        + "\" to the texts of its area and say it by key")
                .toList();
        assertThat(written).isEmpty();
    }

    private static void compare(
            String where, Map<String, String> english, Map<String, String> other, List<String> broken) {
        Set<String> keys = new TreeSet<>(english.keySet());
        keys.addAll(other.keySet());
        for (String key : keys) {
            String one = english.get(key);
            String two = other.get(key);
            if (one == null || two == null) {
                broken.add(where + ": " + key + (one == null ? " is too many" : " is missing"));
            } else if (!placeholders(one).equals(placeholders(two))) {
                broken.add(where + ": " + key + " takes " + placeholders(two) + ", in English " + placeholders(one));
            }
        }
    }

    private static Set<String> placeholders(String text) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = PLACEHOLDER.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static Set<String> areas() throws IOException {
        try (Stream<Path> files = Files.list(FILES)) {
            Set<String> areas = new TreeSet<>();
            files.map(file -> file.getFileName().toString())
                    .forEach(name -> areas.add(name.replaceFirst("(_[a-z]+)?\\.properties$", "")));
            return areas;
        }
    }

    private static Map<String, String> texts(String area, Locale language) throws IOException {
        String suffix = language.equals(Locale.ENGLISH) ? "" : "_" + language.getLanguage();
        Properties read = new Properties();
        try (Reader in =
                Files.newBufferedReader(FILES.resolve(area + suffix + ".properties"), StandardCharsets.UTF_8)) {
            read.load(in);
        }
        Map<String, String> texts = new TreeMap<>();
        read.forEach((key, text) -> texts.put((String) key, (String) text));
        return texts;
    }

    /** Every text in quotes, comments left out, with the line that it stands in and where that is. */
    private static List<Literal> literals(List<String> folders) throws IOException {
        List<Literal> literals = new ArrayList<>();
        for (String folder : folders) {
            try (Stream<Path> files = Files.walk(SOURCES.resolve(folder))) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(file -> read(file, literals));
            }
        }
        assertThat(literals).hasSizeGreaterThan(50);
        return literals;
    }

    private static void read(Path file, List<Literal> literals) {
        List<String> lines;
        try {
            lines = Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String statement = "";
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.startsWith("*") || line.startsWith("/*") || line.startsWith("//")) {
                continue;
            }
            statement += line;
            Matcher literal = LITERAL.matcher(line);
            while (literal.find()) {
                literals.add(new Literal(file + ":" + (i + 1), statement, literal.group(1)));
            }
            if (line.endsWith(";") || line.endsWith("{") || line.endsWith("}")) {
                statement = "";
            }
        }
    }
}
