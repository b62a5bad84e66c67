/**
 * The probabilistic decoder: it knows how sure it is. (The model is described below, at the end of the work.)
 */
@NullMarked
package telltally.decoder.lattice;

import org.jspecify.annotations.NullMarked;
