/**
 * Signals as files: edge CSV, sample CSV, value change dumps and sound, written and read. What the signals mean
 * belongs elsewhere.
 */
@NullMarked
package telltally.simulator.trace;

import org.jspecify.annotations.NullMarked;
