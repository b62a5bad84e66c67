/**
 * The controller's self-test: what an operator does, what the controller does then, which codes come of it, and what
 * lamp and wire show meanwhile. Circuits and engine belong to the vehicle; how codes become flashes belongs to the
 * format.
 */
@NullMarked
package telltally.simulator.selftest;

import org.jspecify.annotations.NullMarked;
