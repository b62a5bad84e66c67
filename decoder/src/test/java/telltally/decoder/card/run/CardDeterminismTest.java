package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.Cards;

/** The same card to the byte in another locale, without the processor's own mathematics, and on a newer JDK. */
class CardDeterminismTest {
    private static final String NEWER_JDK = "TELLTALLY_NEWER_JDK";

    private static final List<String> FAR_AWAY = List.of(
            "-Duser.language=th",
            "-Duser.country=TH",
            "-Duser.variant=TH",
            "-Duser.timezone=Asia/Kathmandu",
            "-Dline.separator=|");

    /** Of another processor, as in the tests of the digests. */
    private static final List<String> WITHOUT_INTRINSICS = List.of(
            "-XX:+UnlockDiagnosticVMOptions", "-XX:DisableIntrinsic=_dexp,_dlog,_dlog10,_dpow,_dsin,_dcos,_dtan");

    private static String elsewhere(String javaHome, List<String> flags) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(javaHome, "bin", "java").toString());
        command.addAll(flags);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), CardsElsewhere.class.getName()));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }

    @Test
    void the_card_is_the_same_far_away_and_without_the_mathematics_of_the_processor() throws Exception {
        List<String> both = new ArrayList<>(FAR_AWAY);
        both.addAll(WITHOUT_INTRINSICS);
        assertThat(elsewhere(System.getProperty("java.home"), both)).isEqualTo(CardJson.text(Cards.forgetful()));
    }

    /** The environment names the home of a JDK that is newer than the one the tests run on. */
    @Test
    @EnabledIfEnvironmentVariable(named = NEWER_JDK, matches = ".+")
    void the_card_is_the_same_on_a_newer_jdk() throws Exception {
        assertThat(elsewhere(System.getenv(NEWER_JDK), FAR_AWAY)).isEqualTo(CardJson.text(Cards.forgetful()));
    }
}
