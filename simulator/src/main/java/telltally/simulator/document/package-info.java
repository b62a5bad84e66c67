/**
 * A JSON file with the place of every value, and problems with how they are told. What a file means belongs to
 * the package that reads it.
 */
@NullMarked
package telltally.simulator.document;

import org.jspecify.annotations.NullMarked;
