/** Arbitraries for properties of jqwik, which the project that uses this brings itself. */
@NullMarked
package telltally.decoder.testkit.jqwik;

import org.jspecify.annotations.NullMarked;
