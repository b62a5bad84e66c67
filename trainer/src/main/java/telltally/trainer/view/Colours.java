package telltally.trainer.view;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import javafx.scene.paint.Color;
import telltally.trainer.settings.Theme;

/**
 * Colours by role, one table for all themes. The style sheet and what is drawn by hand name roles only. A test holds
 * every pair of text and ground to its contrast.
 */
final class Colours {
    /** Role, dark theme, light theme. */
    private static final String TABLE = """
            bench            #1a2127 #eceff1
            panel            #232c34 #fbfcfd
            raised           #2e3a44 #dfe5ea
            edge             #7e91a2 #66747f
            rule             #3b4854 #c3ccd3
            text             #e9edf0 #1a2127
            quiet            #a9b7c3 #47545e
            amber            #ffb84d #854a00
            on-amber         #1f1705 #ffffff
            focus            #7fd0ff #0a5c9e
            good             #8fdcae #17603a
            caution          #ffd27a #7d4400
            paper            #dcd2b9 #fbf5e6
            paper-raised     #e6ddc8 #fffdf7
            paper-rule       #b5a888 #cfc4a8
            ink              #23262b #23262b
            ink-quiet        #544c3b #5c5341
            ink-good         #17542f #17542f
            red-pencil       #951a10 #951a10
            focus-on-paper   #0b4f86 #0b4f86
            plate            #273139 #f4f6f8
            ground-black     #000000 #000000
            ground-grey      #6e757b #6e757b
            ground-pale      #dfe1dc #dfe1dc
            plate-edge       #3f4c57 #b7c1c9
            """;

    private final Map<String, Color> roles;
    private final String style;

    private Colours(Map<String, Color> roles, String style) {
        this.roles = Collections.unmodifiableMap(roles);
        this.style = style;
    }

    static Colours of(Theme theme) {
        Map<String, Color> roles = new LinkedHashMap<>();
        StringBuilder style = new StringBuilder();
        TABLE.lines().forEach(line -> {
            String role = line.substring(0, line.indexOf(' '));
            int dark = line.indexOf('#');
            int column = theme == Theme.DARK ? dark : line.indexOf('#', dark + 1);
            String colour = line.substring(column, column + 7);
            roles.put(role, Color.web(colour));
            style.append('-').append(role).append(": ").append(colour).append("; ");
        });
        return new Colours(roles, style.toString());
    }

    /** @throws NullPointerException if there is no such role */
    Color role(String name) {
        return Objects.requireNonNull(roles.get(name), name);
    }

    Map<String, Color> roles() {
        return roles;
    }

    /** As the style of a root: what the style sheet looks up. */
    String style() {
        return style;
    }
}
