/**
 * Seeds and named streams of randomness: the only source of random numbers in Telltally. What is drawn here is
 * the same on every machine and every JDK. No distributions of the trade belong here, only the few shapes they
 * are built from.
 */
@NullMarked
package telltally.simulator.chance;

import org.jspecify.annotations.NullMarked;
