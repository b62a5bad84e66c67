package telltally.simulator.codelist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.selftest.Bench;
import telltally.simulator.vehicle.DetectableConditions;
import telltally.simulator.vehicle.Transmission;
import telltally.simulator.vehicle.UsualVehicle;

class ShippedCodeListsTest {
    private static final CodeListCatalog LISTS = CodeListCatalog.shipped();

    @Test
    void four_lists_ship() {
        assertThat(LISTS.ids()).containsExactly("burner", "ladder", "plank", "trestle");
    }

    @ParameterizedTest
    @CsvSource({
        "plank, pair-even",
        "plank, pair-loop",
        "plank, long-short",
        "plank, pair-thrice",
        "trestle, triple-even",
        "ladder, quad-lead",
        "burner, count-loop"
    })
    void a_format_can_send_every_code_of_its_list(String listId, String formatId) {
        FlashFormat format = FormatCatalog.shipped().find(formatId).orElseThrow();
        assertThat(list(listId).meanings().keySet())
                .isNotEmpty()
                .allSatisfy(code -> assertThat(format.refusal(code)).isEmpty());
    }

    /** "Nothing to report" is sent as a code, 11 or 111: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"plank, pair-even", "trestle, triple-even"})
    void the_pass_code_is_in_the_list(String listId, String formatId) {
        FlashFormat format = FormatCatalog.shipped().find(formatId).orElseThrow();
        assertThat(format.passCode().flatMap(list(listId)::meaning)).contains("Nothing to report");
    }

    @Test
    void the_framing_code_is_no_trouble_code() {
        assertThat(list("plank").meaning("12")).isEmpty();
    }

    @Test
    void the_counts_are_all_from_1_to_15() {
        assertThat(list("burner").meanings().keySet())
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, 15).mapToObj(Integer::toString).toList());
    }

    @Test
    void every_list_says_that_it_is_invented_and_how_it_is_numbered() {
        assertThat(Stream.of("burner", "ladder", "plank", "trestle").map(ShippedCodeListsTest::list))
                .allSatisfy(list -> assertThat(list.notes())
                        .startsWith("Invented, for training only")
                        .contains("numbering"));
    }

    /** Where the last digit says what is wrong, the same digit has the same meaning throughout. */
    @Test
    void the_last_digit_follows_the_system_of_the_notes() {
        List<String> systematic = Stream.of("plank", "trestle", "ladder")
                .flatMap(id -> list(id).meanings().entrySet().stream()
                        // Rows 2 and 9 of the Plank number their terminals, row 1 and side 1 carry no circuit.
                        .filter(entry -> !(id.equals("plank") && entry.getKey().matches("[29].")))
                        .filter(entry -> !entry.getKey().matches("11+"))
                        .map(entry -> entry.getKey().charAt(entry.getKey().length() - 1) + " " + entry.getValue()))
                .toList();
        assertThat(systematic)
                .hasSizeGreaterThan(50)
                .allMatch(entry -> meant(entry.charAt(0))
                        .map(words -> Stream.of(words).anyMatch(entry::contains))
                        .orElse(false));
    }

    private static Optional<String[]> meant(char lastDigit) {
        return switch (lastDigit) {
            case '1' -> Optional.of(new String[] {"circuit open", "does not draw current"});
            case '2' -> Optional.of(new String[] {"shorted to ground"});
            case '3' -> Optional.of(new String[] {"outside the range", "not that of", "not at its rest stop"});
            case '4' -> Optional.of(new String[] {"did not "});
            case '5' -> Optional.of(new String[] {"left on", "gear engaged"});
            case '7' -> Optional.of(new String[] {"lost"});
            case '8' -> Optional.of(new String[] {"too low"});
            case '9' -> Optional.of(new String[] {"too high"});
            default -> Optional.empty();
        };
    }

    @ParameterizedTest
    @CsvSource({"plank, 15", "trestle, 15", "ladder, 9", "burner, 2"})
    void every_condition_is_one_that_a_usual_vehicle_can_detect(String id, int codesSet) {
        Set<String> detectable = new LinkedHashSet<>(Set.of(Bench.PROMPT_NOT_ANSWERED));
        for (Transmission transmission : Transmission.values()) {
            DetectableConditions.of(UsualVehicle.of(4, transmission))
                    .forEach(condition -> detectable.add(condition.name()));
        }
        assertThat(list(id).rules()).allMatch(rule -> detectable.contains(rule.condition()));
        assertThat(list(id).rules().stream().map(CodeList.Rule::code).distinct().count())
                .isGreaterThanOrEqualTo(codesSet);
    }

    @Test
    void every_condition_of_an_engine_but_those_of_no_fault_sets_a_code_of_the_plank() {
        Set<String> used = new LinkedHashSet<>();
        list("plank").rules().forEach(rule -> used.add(rule.condition()));
        assertThat(DetectableConditions.of(UsualVehicle.of(4, Transmission.AUTOMATIC)))
                .allMatch(condition -> used.contains(condition.name()));
    }

    private static CodeList list(String id) {
        return LISTS.find(id).orElseThrow();
    }
}
