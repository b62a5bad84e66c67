/**
 * What stands between the controller's output and the observer, and what spoils a pulse train on the way. Each
 * source of trouble draws from a stream of its own.
 */
@NullMarked
package telltally.simulator.channel;

import org.jspecify.annotations.NullMarked;
