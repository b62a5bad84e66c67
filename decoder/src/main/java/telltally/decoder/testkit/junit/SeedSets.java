package telltally.decoder.testkit.junit;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.params.provider.ArgumentsSource;
import telltally.decoder.score.Line;

/**
 * Feeds the recordings of seed sets to a parameterised test, each as a {@link telltally.decoder.testkit.Session}. A set
 * that cannot be read fails the test.
 */
@Documented
@Target({ElementType.METHOD, ElementType.ANNOTATION_TYPE})
@Retention(RetentionPolicy.RUNTIME)
@ArgumentsSource(SeedSetArguments.class)
public @interface SeedSets {
    /** The ids of the sets; none stands for all. */
    String[] value() default {};

    /** Files and folders that the sets stand in; none stands for those that ship. */
    String[] in() default {};

    /** How many seeds of each set; its first ones. */
    int first() default Integer.MAX_VALUE;

    /** Where the decoder listens. */
    Line[] lines() default {Line.LAMP, Line.PIN};
}
