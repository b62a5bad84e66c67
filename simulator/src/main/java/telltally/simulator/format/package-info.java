/**
 * A flash format, and how codes become pulses by its rules. What a code means belongs to the code list; what a
 * decoder makes of pulses belongs to the decoder.
 */
@NullMarked
package telltally.simulator.format;

import org.jspecify.annotations.NullMarked;
