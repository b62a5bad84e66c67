/**
 * What a simulation leaves, the truth included, and its files. Nothing that decodes may look in here.
 */
@NullMarked
package telltally.simulator.recording;

import org.jspecify.annotations.NullMarked;
