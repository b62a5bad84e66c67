package telltally.decoder.testkit.jqwik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectMethod;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import net.jqwik.api.AfterFailureMode;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import telltally.decoder.testkit.BrokenDecoders;
import telltally.decoder.testkit.DecoderAssertions;
import telltally.decoder.testkit.InventedFormat;
import telltally.decoder.testkit.MessageSession;
import telltally.decoder.testkit.Messages;
import telltally.decoder.testkit.Noise;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;

/** Runs properties that must fail, and looks at the counterexamples that jqwik ends with. */
class SessionsShrinkTest {
    private static FlashFormat shipped(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }

    /** Not run by itself: its name is none that a test is looked for by. */
    static class Fails {
        @Provide
        Arbitrary<MessageSession> spoiled() {
            return Sessions.spoiled(List.of(shipped("pair-loop")), 5, new Noise(115, 5, 0, 0, 5));
        }

        @Provide
        Arbitrary<Message> messages() {
            return Sessions.messages(shipped("triple-even"), 5);
        }

        @Property(seed = "5", afterFailure = AfterFailureMode.RANDOM_SEED)
        void counting_to_eight_will_do(@ForAll("spoiled") MessageSession session) {
            DecoderAssertions.assertReadsTold(BrokenDecoders.countingToEight(), session);
        }

        @Property(seed = "6", afterFailure = AfterFailureMode.RANDOM_SEED)
        void clocks_are_never_slow(@ForAll("spoiled") MessageSession session) {
            DecoderAssertions.assertReadsTold(BrokenDecoders.impatient(), session);
        }

        @Property(seed = "7", afterFailure = AfterFailureMode.RANDOM_SEED)
        void nobody_lists_two_codes(@ForAll("messages") Message message) {
            assertThat(new Messages(shipped("triple-even")).codes(message))
                    .as(Messages.text(message))
                    .isLessThan(2);
        }
    }

    static class FormatsFail {
        @Provide
        Arbitrary<InventedFormat> formats() {
            return Sessions.inventedFormats();
        }

        @Property(seed = "8", afterFailure = AfterFailureMode.RANDOM_SEED)
        void no_code_has_three_digits(@ForAll("formats") InventedFormat format) {
            assertThat(format.digits()).as(format.toString()).isLessThan(3);
        }
    }

    private static String failure(String property, Class<?> parameter) {
        return failure(Fails.class, property, parameter);
    }

    private static String failure(Class<?> properties, String property, Class<?> parameter) {
        AtomicReference<String> told = new AtomicReference<>("");
        LauncherDiscoveryRequest request = LauncherDiscoveryRequestBuilder.request()
                .selectors(selectMethod(properties, property, parameter.getName()))
                // Its report goes to the listener, who has no use for it, rather than into the build's output.
                .configurationParameter("jqwik.reporting.usejunitplatform", "true")
                .build();
        LauncherFactory.create().execute(request, new TestExecutionListener() {
            @Override
            public void executionFinished(TestIdentifier test, TestExecutionResult result) {
                result.getThrowable().ifPresent(error -> told.set(String.valueOf(error.getMessage())));
            }
        });
        return told.get();
    }

    @Test
    void a_session_shrinks_to_one_code_of_the_smallest_digits_and_no_noise() {
        assertThat(failure("counting_to_eight_will_do", MessageSession.class))
                .contains("pair-loop: codes 19; nothing spoiled");
    }

    @Test
    void noise_shrinks_to_the_one_kind_that_matters_as_weak_as_it_still_does() {
        assertThat(failure("clocks_are_never_slow", MessageSession.class))
                .contains("pair-loop: codes none; clock 111 %; seed ");
    }

    @Test
    void a_format_shrinks_to_the_simplest_that_fails() {
        assertThat(failure(FormatsFail.class, "no_code_has_three_digits", InventedFormat.class))
                .contains("invented-3-digits-500-ms-gaps-3-2-list-1");
    }

    @Test
    void a_message_shrinks_to_the_fewest_codes_that_fail() {
        assertThat(failure("nobody_lists_two_codes", Message.class))
                .containsPattern("(present|running|stored) (111 112|112 111)|present 111, stored 111");
    }
}
