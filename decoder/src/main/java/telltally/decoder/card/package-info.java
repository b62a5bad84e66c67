/**
 * The score card: how one decoder did on seed sets, as counts that add up, as a file, and several shards of it as one. Runs
 * are made in {@code run}, set against an older card in {@code compare}, shown in {@code report}; {@code statistics} says
 * what the counts allow to be concluded.
 */
@NullMarked
package telltally.decoder.card;

import org.jspecify.annotations.NullMarked;
