/**
 * What the codes of a piece of equipment mean, as a file.
 */
@NullMarked
package telltally.simulator.codelist;

import org.jspecify.annotations.NullMarked;
