/**
 * What a count of right and wrong allows to be said: intervals, paired tests, many tests at once, and numbers as text.
 * Nothing here knows what was counted.
 */
@NullMarked
package telltally.decoder.card.statistics;

import org.jspecify.annotations.NullMarked;
