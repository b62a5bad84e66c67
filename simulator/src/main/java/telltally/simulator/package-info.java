/**
 * The front door: a scenario and a seed go in, a recording comes out.
 */
@NullMarked
package telltally.simulator;

import org.jspecify.annotations.NullMarked;
