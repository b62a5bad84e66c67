/** Two score cards of the same cases, set against each other: what got better or worse, and whether that can be chance. */
@NullMarked
package telltally.decoder.card.compare;

import org.jspecify.annotations.NullMarked;
