package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class InstalledDecodersTest {
    @Test
    void both_decoders_that_ship_are_installed() {
        InstalledDecoders installed = InstalledDecoders.find();
        assertThat(installed.ids()).containsExactly("plain", "lattice");
        assertThat(installed.find("lattice"))
                .get()
                .satisfies(each -> assertThat(each.id()).isEqualTo("lattice"));
        assertThat(installed.find("nobody")).isEmpty();
    }
}
