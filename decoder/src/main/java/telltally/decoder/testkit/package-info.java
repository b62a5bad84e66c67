/**
 * What the tests of another decoder's project call: sessions with known truth, from seed sets or made up without end;
 * an explicit order in which a failing session is made simpler; and assertions that print what was sent beside what was
 * read. No type of a test library occurs here: those are in {@code junit} and {@code jqwik} below, which a project needs
 * only if it uses these libraries.
 */
@NullMarked
package telltally.decoder.testkit;

import org.jspecify.annotations.NullMarked;
