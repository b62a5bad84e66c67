package telltally.decoder.testkit.junit;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.AnnotationBasedArgumentsProvider;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.support.ParameterDeclarations;
import telltally.decoder.testkit.SeedSessions;
import telltally.simulator.document.ProblemException;

/** Reads what {@link SeedSets} asks for. */
final class SeedSetArguments extends AnnotationBasedArgumentsProvider<SeedSets> {
    @Override
    protected Stream<? extends Arguments> provideArguments(
            ParameterDeclarations parameters, ExtensionContext context, SeedSets asked) {
        try {
            SeedSessions all = asked.in().length == 0
                    ? SeedSessions.shipped()
                    : SeedSessions.in(Stream.of(asked.in()).map(Path::of).toList());
            return all.named(List.of(asked.value())).on(asked.lines()).first(asked.first()).stream()
                    .map(Arguments::of);
        } catch (ProblemException e) {
            throw new IllegalArgumentException(e.problems().toString(), e);
        }
    }
}
