package telltally.trainer.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import telltally.trainer.settings.LampSize;
import telltally.trainer.settings.Theme;

class ColoursTest {
    /** Each text with the grounds that it stands on. */
    private static final List<String> TEXTS = List.of(
            "-text on -bench -panel -raised",
            "-quiet on -bench -panel -raised -plate",
            "-amber on -panel -raised -bench -plate",
            "-on-amber on -amber",
            "-good on -bench",
            "-caution on -panel -raised -bench",
            "-ink on -paper -paper-raised",
            "-ink-quiet on -paper -paper-raised",
            "-ink-good on -paper -paper-raised",
            "-red-pencil on -paper -paper-raised",
            "-focus-on-paper on -paper -paper-raised");

    /** What tells a control from its surroundings, or where the keyboard is. */
    private static final List<String> EDGES = List.of(
            "-edge on -bench -panel -raised",
            "-focus on -bench -panel -raised",
            "-focus-on-paper on -paper",
            "-red-pencil on -paper");

    private record Lens(String name, List<Color> lit, List<Color> unlit) {}

    static final List<Lens> LENSES = List.of(
            new Lens("lamp", Lamp.LIT, Lamp.UNLIT),
            new Lens("diode", Diode.LIT, Diode.UNLIT),
            new Lens("test light", TestLight.LIT, TestLight.UNLIT));

    /** Published values are rounded to four places. */
    private static final double ROUNDED = 5e-5;

    /** Worked from the definition in w3c/wcag, as listed with the guideline's own examples of passing and failing greys. */
    @ParameterizedTest
    @CsvSource({
        "#000000, #ffffff, 21",
        "#767676, #ffffff, 4.5422",
        "#777777, #ffffff, 4.4781",
        "#949494, #ffffff, 3.0335"
    })
    void contrast_is_computed_as_published(String one, String other, double ratio) {
        assertThat(Luminance.contrast(Color.web(one), Color.web(other))).isCloseTo(ratio, within(ROUNDED));
    }

    /** Worked from the definition of the red flash threshold. */
    @ParameterizedTest
    @CsvSource({"#FF0000, 1.000", "#FF4000, .9512", "#D55E00, .8560", "#FF8000, .8225", "#FFB000, .6973"})
    void the_share_of_red_is_computed_as_published(String colour, double share) {
        assertThat(Luminance.redShare(Color.web(colour))).isCloseTo(share, within(ROUNDED));
    }

    @Test
    void luminance_is_computed_as_published() {
        assertThat(Luminance.of(Color.web("#FFB000"))).isCloseTo(.5231, within(ROUNDED));
        assertThat(Luminance.of(Color.web("#202020"))).isCloseTo(.0144, within(ROUNDED));
    }

    /** Success criterion 1.4.3: text 4.5 to 1. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void every_text_can_be_read_on_every_ground_it_stands_on(Theme theme) {
        assertThat(belowContrast(theme, TEXTS, 4.5)).isEmpty();
    }

    /** Success criterion 1.4.11: 3 to 1. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void every_edge_that_matters_can_be_seen(Theme theme) {
        assertThat(belowContrast(theme, EDGES, 3)).isEmpty();
    }

    @Test
    void every_role_that_the_style_sheet_names_is_in_the_table_and_every_one_in_the_table_is_named()
            throws IOException {
        Matcher named = Pattern.compile("(?<![\\w-])-(?!fx-)([a-z][a-z-]*)").matcher(styleSheet());
        Set<String> roles = new TreeSet<>();
        while (named.find()) {
            roles.add(named.group(1));
        }

        assertThat(roles)
                .containsExactlyInAnyOrderElementsOf(
                        Colours.of(Theme.DARK).roles().keySet());
        assertThat(styleSheet()).as("colours have names").doesNotContain("#");
    }

    @Test
    void every_role_is_held_to_something_but_the_lines_that_only_divide() {
        Set<String> roles = new TreeSet<>();
        Colours.of(Theme.DARK).roles().keySet().forEach(role -> roles.add("-" + role));
        Stream.concat(TEXTS.stream(), EDGES.stream())
                .flatMap(pairs -> Stream.of(pairs.split(" ", -1)))
                .forEach(roles::remove);

        assertThat(roles)
                .containsExactly(
                        "-ground-black", "-ground-grey", "-ground-pale", "-paper-rule", "-plate-edge", "-rule");
    }

    @ParameterizedTest
    @FieldSource("LENSES")
    void what_flashes_is_never_saturated_red_however_bright_it_is(Lens lens) {
        for (int place = 0; place < lens.lit().size(); place++) {
            for (int tenth = 0; tenth <= 10; tenth++) {
                Color between = lens.unlit().get(place).interpolate(lens.lit().get(place), tenth / 10.0);
                assertThat(Luminance.redShare(between)).isLessThan(0.8);
            }
        }
    }

    @ParameterizedTest
    @FieldSource("LENSES")
    void lit_and_unlit_can_be_told_apart_from_across_the_bench(Lens lens) {
        for (int place = 0; place < lens.lit().size(); place++) {
            assertThat(Luminance.contrast(lens.lit().get(place), lens.unlit().get(place)))
                    .isGreaterThan(3);
        }
    }

    /** 25 % of the block of 341 by 256 pixels that the general flash threshold names. */
    @ParameterizedTest
    @EnumSource(LampSize.class)
    void all_that_flashes_is_smaller_than_a_quarter_of_ten_degrees_of_sight(LampSize size) {
        double areaPx = Math.PI * size.widthPx() * size.widthPx() / 4;

        assertThat(areaPx).isLessThan(0.25 * 341 * 256);
    }

    private static List<String> belowContrast(Theme theme, List<String> lines, double least) {
        Colours colours = Colours.of(theme);
        List<String> below = new ArrayList<>();
        for (String pairs : lines) {
            String[] sides = pairs.split(" on ", 2);
            for (String ground : sides[1].split(" ", -1)) {
                double contrast =
                        Luminance.contrast(colours.role(sides[0].substring(1)), colours.role(ground.substring(1)));
                if (contrast < least) {
                    below.add(sides[0] + " on " + ground + ": " + contrast);
                }
            }
        }
        return below;
    }

    private static String styleSheet() throws IOException {
        try (InputStream in = Objects.requireNonNull(TrainerWindow.class.getResourceAsStream("trainer.css"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
