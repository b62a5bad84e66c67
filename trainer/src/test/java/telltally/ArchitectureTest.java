package telltally;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The arrows of the house, read from the bytecode: import lines would miss full names and static imports. */
class ArchitectureTest {
    private static final Pattern ARROW = Pattern.compile("^ +(telltally[\\w.$]*) +-> (\\S+) +.*$");

    /** What each package may use of ours. The table of DEVELOPERS.md. */
    private static final Map<String, String> ALLOWED = table("""
            simulator.chance     :
            simulator.signal     :
            simulator.document   : simulator.signal
            simulator.trace      : simulator.signal simulator.document
            simulator.format     : simulator.signal simulator.document
            simulator.codelist   : simulator.document simulator.format
            simulator.vehicle    : simulator.chance
            simulator.channel    : simulator.chance simulator.signal
            simulator.selftest   : simulator.chance simulator.signal simulator.vehicle simulator.codelist simulator.format
            simulator.scenario   : simulator.document simulator.format simulator.codelist simulator.channel simulator.vehicle simulator.selftest simulator.signal
            simulator.recording  : simulator.chance simulator.channel simulator.signal simulator.document simulator.trace simulator.format simulator.selftest simulator.vehicle
            simulator            : simulator.*
            decoder.reading      : simulator.signal simulator.format
            decoder.plain        : simulator.signal simulator.format decoder.reading
            decoder.lattice      : simulator.signal simulator.format decoder.reading
            decoder.timeline     : simulator.signal simulator.format decoder.reading
            decoder.capture      : simulator.signal simulator.trace simulator.document
            decoder.score        : simulator simulator.* decoder.reading decoder.capture decoder.plain decoder.lattice
            decoder.outside      : simulator.signal simulator.format simulator.document simulator.trace decoder.reading decoder.score
            decoder.card         : simulator.document decoder.score decoder.card.statistics
            decoder.card.statistics :
            decoder.card.run     : simulator simulator.* decoder.reading decoder.plain decoder.lattice decoder.score decoder.card
            decoder.card.compare : decoder.score decoder.card decoder.card.statistics
            decoder.card.report  : simulator simulator.* decoder.reading decoder.score decoder.card decoder.card.*
            decoder.testkit      : simulator simulator.* decoder.*
            decoder.testkit.junit : simulator.document decoder.score decoder.testkit
            decoder.testkit.jqwik : simulator.chance simulator.format decoder.testkit
            trainer.text         :
            trainer.settings     : simulator.scenario
            trainer.lesson       : simulator simulator.* decoder.reading trainer.text
            trainer.drill        : simulator simulator.* decoder.reading trainer.text trainer.lesson
            trainer.mastery      : simulator.chance trainer.drill
            trainer.trial        : simulator.chance simulator.signal simulator.format simulator.recording trainer.drill trainer.mastery
            trainer.logbook      : simulator simulator.format simulator.recording trainer.lesson trainer.drill trainer.mastery
            trainer.playback     : simulator.signal simulator.trace simulator.channel
            trainer.screen       : simulator simulator.* decoder.reading trainer.text trainer.settings trainer.lesson trainer.drill trainer.mastery trainer.logbook trainer.playback
            trainer.view         : simulator simulator.* decoder.reading trainer.text trainer.settings trainer.lesson trainer.drill trainer.mastery trainer.logbook trainer.playback trainer.screen
            trainer.command      : simulator simulator.* decoder.* trainer.*
            """);

    /** Who may use the window toolkit, and how much of it. */
    private static final Map<String, List<String>> TOOLKIT = Map.of(
            "trainer.view", List.of("javafx."),
            "trainer.screen", List.of("javafx.beans.", "javafx.collections."),
            "trainer.command", List.of("javafx.application."));

    private record Use(String from, String to) {}

    @Test
    void every_package_uses_only_what_the_table_allows() {
        List<String> broken = new ArrayList<>();
        Set<String> unknown = new TreeSet<>();
        for (Use use : uses()) {
            String from = room(use.from());
            if (!ALLOWED.containsKey(from)) {
                unknown.add(from);
                continue;
            }
            if (use.to().startsWith("telltally.")) {
                String to = room(use.to());
                if (!to.equals(from) && !allowed(from, to)) {
                    broken.add(use.from() + " uses " + use.to() + ": " + from + " may use only " + ALLOWED.get(from));
                }
            }
        }
        assertThat(unknown).as("packages that the table lacks").isEmpty();
        assertThat(broken).isEmpty();
    }

    @Test
    void only_the_view_knows_the_window_toolkit_and_screens_know_its_properties() {
        List<String> broken = uses().stream()
                .filter(use -> use.to().startsWith("javafx."))
                .filter(use -> TOOLKIT.getOrDefault(room(use.from()), List.of()).stream()
                        .noneMatch(use.to()::startsWith))
                .map(use -> use.from() + " uses " + use.to())
                .toList();
        assertThat(broken).isEmpty();
    }

    @Test
    void only_the_test_kits_own_rooms_know_a_test_library() {
        assertThat(uses())
                .filteredOn(use -> use.to().startsWith("org.junit.") || use.to().startsWith("net.jqwik."))
                .isNotEmpty()
                .allMatch(use -> room(use.from()).equals("decoder.testkit.junit")
                        || room(use.from()).equals("decoder.testkit.jqwik"));
    }

    @Test
    void nothing_that_decodes_sees_a_recording_or_its_truth() {
        assertThat(uses())
                .filteredOn(use -> use.from().matches("telltally\\.decoder\\.(reading|capture|plain|lattice)\\..*"))
                .isNotEmpty()
                .noneMatch(use -> use.to().startsWith("telltally.simulator.recording")
                        || use.to().startsWith("telltally.decoder.score"));
    }

    /** What is simulated is the same everywhere, and so is what is read and scored. */
    @ParameterizedTest
    @ValueSource(strings = {"simulator", "decoder"})
    void recordings_and_readings_use_no_mathematics_that_a_processor_may_change(String module) {
        // Math.sqrt, floor, min and the like are exact everywhere; the transcendental functions are not.
        assertThat(callsOfMath(module))
                .isNotEmpty()
                .doesNotContain(
                        "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1",
                        "log", "log10", "log1p", "pow", "cbrt", "hypot");
    }

    private static boolean allowed(String from, String to) {
        for (String pattern : ALLOWED.getOrDefault(from, "").split(" ", -1)) {
            boolean whole = pattern.equals(to);
            boolean below = pattern.endsWith(".*") && to.startsWith(pattern.substring(0, pattern.length() - 1));
            if (whole || below) {
                return true;
            }
        }
        return false;
    }

    /** The package of a class, without the common root. */
    private static String room(String className) {
        String inside = className.substring("telltally.".length());
        int dot = inside.lastIndexOf('.');
        return inside.substring(0, dot < 0 ? 0 : dot);
    }

    private static List<Use> uses() {
        List<Use> uses = new ArrayList<>();
        for (String module : List.of("simulator", "decoder", "trainer")) {
            Path classes = Path.of("..", module, "target", "classes");
            assertThat(Files.isDirectory(classes))
                    .as("compiled classes of " + module)
                    .isTrue();
            tool("jdeps", "-verbose:class", "--multi-release", "17", "--ignore-missing-deps", classes.toString())
                    .lines()
                    .map(ARROW::matcher)
                    .filter(Matcher::matches)
                    .forEach(line -> uses.add(new Use(line.group(1), line.group(2))));
        }
        assertThat(uses).as("arrows that jdeps finds").hasSizeGreaterThan(100);
        return uses;
    }

    private static Set<String> callsOfMath(String module) {
        try (var files = Files.walk(Path.of("..", module, "target", "classes"))) {
            List<String> classes = files.map(Path::toString)
                    .filter(name -> name.endsWith(".class"))
                    .collect(Collectors.toCollection(ArrayList::new));
            List<String> arguments = new ArrayList<>(List.of("-c", "-p"));
            arguments.addAll(classes);
            Matcher calls = Pattern.compile("java/lang/Math\\.(\\w+):")
                    .matcher(tool("javap", arguments.toArray(String[]::new)));
            Set<String> found = new TreeSet<>();
            while (calls.find()) {
                found.add(calls.group(1));
            }
            return found;
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String tool(String name, String... arguments) {
        StringWriter out = new StringWriter();
        ToolProvider tool = ToolProvider.findFirst(name).orElseThrow();
        int status = tool.run(new PrintWriter(out), new PrintWriter(out), arguments);
        assertThat(status).as(name + ": " + out).isZero();
        return out.toString();
    }

    private static Map<String, String> table(String text) {
        Map<String, String> table = new LinkedHashMap<>();
        text.lines().forEach(line -> {
            int colon = line.indexOf(':');
            table.put(
                    line.substring(0, colon).strip(), line.substring(colon + 1).strip());
        });
        return table;
    }
}
