/**
 * Runs a decoder over seed sets: which seeds, on how many threads, for which shard. Every block of seeds gives a card of its
 * own, and the card of a run is their sum, in whatever order they were done.
 */
@NullMarked
package telltally.decoder.card.run;

import org.jspecify.annotations.NullMarked;
