/** Seed sets for parameterised tests of JUnit 5, which the project that uses this brings itself. */
@NullMarked
package telltally.decoder.testkit.junit;

import org.jspecify.annotations.NullMarked;
