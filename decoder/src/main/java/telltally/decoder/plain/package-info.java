/**
 * The simplest decoder that works: thresholds between the nominal lengths, a clock estimate, repeats merged. It
 * is the template to copy and the floor of every score.
 */
@NullMarked
package telltally.decoder.plain;

import org.jspecify.annotations.NullMarked;
