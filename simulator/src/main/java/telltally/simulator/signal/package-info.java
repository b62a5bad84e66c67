/**
 * Pulse trains, intervals and sampled signals: values only, no files and no meaning. Instants are nanoseconds
 * from the start of a recording.
 */
@NullMarked
package telltally.simulator.signal;

import org.jspecify.annotations.NullMarked;
