package telltally.simulator.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.assertj.core.api.AbstractListAssert;
import org.assertj.core.api.ObjectAssert;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;

/** What a reader told of a bad file, line by line. */
final class Traces {
    private Traces() {}

    static AbstractListAssert<?, java.util.List<? extends String>, String, ObjectAssert<String>> assertTold(
            ThrowingCallable reading) {
        ProblemException thrown = catchThrowableOfType(ProblemException.class, reading);
        assertThat(thrown).as("a problem was expected").isNotNull();
        return assertThat(thrown.problems()).extracting(Problem::toString);
    }
}
