package telltally.trainer.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.junit.jupiter.params.provider.FieldSource;

class ColoursTest {
    /** Each text with the grounds that it stands on. */
    private static final List<String> TEXTS = List.of(
            "-text on -bench -panel -raised",
            "-quiet on -bench -panel -raised",
            "-amber on -panel -raised -bench",
            "-on-amber on -amber",
            "-good on -bench",
            "-caution on -panel -raised -bench",
            "-ink on -paper -paper-raised",
            "-ink-quiet on -paper -paper-raised",
            "-ink-good on -paper -paper-raised",
            "-red-pencil on -paper -paper-raised",
            "-focus-on-paper on -paper -paper-raised");

    /** What tells a control from its surroundings, or where the keyboard is. */
    private static final List<String> EDGES =
            List.of("-edge on -bench -panel -raised", "-focus on -bench -panel -raised", "-focus-on-paper on -paper");

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
    @FieldSource("TEXTS")
    void every_text_can_be_read_on_every_ground_it_stands_on(String pairs) throws IOException {
        for (double contrast : contrasts(pairs)) {
            assertThat(contrast).isGreaterThanOrEqualTo(4.5);
        }
    }

    /** Success criterion 1.4.11: 3 to 1. */
    @ParameterizedTest
    @FieldSource("EDGES")
    void every_edge_that_matters_can_be_seen(String pairs) throws IOException {
        for (double contrast : contrasts(pairs)) {
            assertThat(contrast).isGreaterThanOrEqualTo(3);
        }
    }

    @Test
    void every_role_of_the_style_sheet_is_held_to_something_but_the_lines_that_only_divide() throws IOException {
        Set<String> roles = new TreeSet<>(roles().keySet());
        Stream.concat(TEXTS.stream(), EDGES.stream())
                .flatMap(pairs -> Stream.of(pairs.split(" ", -1)))
                .forEach(roles::remove);

        assertThat(roles).containsExactly("-paper-rule", "-rule");
    }

    @Test
    void the_lamp_is_never_saturated_red_however_bright_it_is() {
        for (int place = 0; place < Lamp.LIT.size(); place++) {
            for (int tenth = 0; tenth <= 10; tenth++) {
                Color between = Lamp.UNLIT.get(place).interpolate(Lamp.LIT.get(place), tenth / 10.0);
                assertThat(Luminance.redShare(between)).isLessThan(0.8);
            }
        }
    }

    @Test
    void lit_and_unlit_can_be_told_apart_from_across_the_bench() {
        for (int place = 0; place < Lamp.LIT.size(); place++) {
            assertThat(Luminance.contrast(Lamp.LIT.get(place), Lamp.UNLIT.get(place)))
                    .isGreaterThan(3);
        }
    }

    /** 25 % of the block of 341 by 256 pixels that the general flash threshold names. */
    @Test
    void all_that_flashes_is_smaller_than_a_quarter_of_ten_degrees_of_sight() {
        double areaPx = Math.PI * Lamp.WIDTH_PX * Lamp.WIDTH_PX / 4;

        assertThat(areaPx).isLessThan(0.25 * 341 * 256);
    }

    private static List<Double> contrasts(String pairs) throws IOException {
        String[] sides = pairs.split(" on ", 2);
        List<Double> contrasts = new ArrayList<>();
        for (String ground : sides[1].split(" ", -1)) {
            contrasts.add(Luminance.contrast(role(sides[0]), role(ground)));
        }
        return contrasts;
    }

    private static Color role(String name) throws IOException {
        return Objects.requireNonNull(roles().get(name), name);
    }

    private static Map<String, Color> roles() throws IOException {
        Map<String, Color> roles = new LinkedHashMap<>();
        Matcher role =
                Pattern.compile("(?m)^ {4}(-(?!fx-)[a-z-]+): (#[0-9a-f]{6});$").matcher(styleSheet());
        while (role.find()) {
            roles.put(role.group(1), Color.web(role.group(2)));
        }
        return roles;
    }

    private static String styleSheet() throws IOException {
        try (InputStream in = Objects.requireNonNull(TrainerWindow.class.getResourceAsStream("trainer.css"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
